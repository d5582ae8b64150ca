// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bottle_tasks.h"

#include <QHBoxLayout>
#include <QPushButton>

#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

BottleTasks::BottleTasks(const Context& context, QWidget* parent)
    : QWidget(parent), context_(context) {
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 0, 0, 0);
  name_ = new InkLabel({}, TextRole::small, Ink::secondary);
  line->addWidget(name_);
  const auto task = [&](const QString& words, const char* kind, auto fill) {
    auto* button = new QPushButton(words);
    button->setObjectName(QStringLiteral("supply_") + QLatin1String(kind));
    connect(button, &QPushButton::clicked, this, [this, kind, fill] {
      context_.navigator.open_task({kind, cellar::subject(bottle_.bottle), fill(bottle_), {}});
    });
    line->addWidget(button);
    buttons_.push_back(button);
  };
  task(tr("Weigh…"), "bottle_weighed", [](const cellar::BottleRecord& b) {
    return cellar::Payload(cellar::BottleWeighed{.bottle = b.bottle});
  });
  task(tr("Read its gauge…"), "gauge_read", [](const cellar::BottleRecord& b) {
    return cellar::Payload(cellar::GaugeRead{.bottle = b.bottle});
  });
  task(tr("Edit the bottle…"), "bottle_record",
       [](const cellar::BottleRecord& b) { return cellar::Payload(b); });
  line->addStretch(1);
}

void BottleTasks::show_bottle(const cellar::BottleRecord& bottle, bool of_several) {
  bottle_ = bottle;
  name_->setVisible(of_several);
  name_->setText(q(bottle.name));
  for (QPushButton* b : buttons_)
    b->setAccessibleName(of_several ? tr("%1 %2").arg(b->text(), q(bottle.name)) : b->text());
}

}  // namespace ullage::ui
