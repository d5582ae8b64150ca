// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_work_out.h"

#include <QPushButton>

#include "core/report/slate/prefill.h"
#include "ui/context.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"

namespace ullage::ui {

KegPanelWorkOut::KegPanelWorkOut(QWidget* parent)
    : QWidget(parent), buttons_(new FlowLayout(this, space::s)) {
  setObjectName(QStringLiteral("work_out"));
  buttons_->setContentsMargins(0, 0, 0, 0);
}

void KegPanelWorkOut::show_keg(const PanelSubject& subject) {
  keg_ = subject.keg.record.keg;
  const auto offers = report::slate::offers_for({subject.cellar, subject.keg, subject.speaker});
  QStringList labels;
  for (const report::slate::Offer& offer : offers) labels << q(offer.label);
  if (labels == shown_) return;
  shown_ = labels;
  while (QLayoutItem* item = buttons_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  for (const report::slate::Offer& offer : offers) {
    auto* button = new QPushButton(q(offer.label), this);
    button->setObjectName(QStringLiteral("work_out_") + q(std::string(offer.computation)));
    set_role(button, ButtonRole::quiet);  // ways on, less pressing than the tasks above
    connect(button, &QPushButton::clicked, this, [this, key = std::string(offer.computation)] {
      if (keg_) emit wanted(key, *keg_);
    });
    buttons_->addWidget(button);
  }
}

}  // namespace ullage::ui
