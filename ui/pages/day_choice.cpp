// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/day_choice.h"

#include <QRadioButton>
#include <QVBoxLayout>

#include "core/report/cleaning_words.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

DayChoice::DayChoice(const Context& context, const cellar::PlannedDay& day, bool chosen,
                     std::function<void()> choose, std::size_t number, QWidget* parent)
    : Card(parent) {
  const report::Speaker speaker = context.speaker();
  auto* pick = new QRadioButton(QStringLiteral("%1: %2").arg(q(report::say_date(day.day, speaker)),
                                                             q(report::say_reason(day, speaker))));
  pick->setObjectName(QStringLiteral("day_%1").arg(number));
  pick->setFont(font_of(TextRole::strong));
  pick->setAutoExclusive(false);  // its neighbour stands in another card
  pick->setChecked(chosen);
  QStringList costs;
  for (const std::string& line : report::say_cost(day, speaker)) costs << q(line);
  auto* cost = new InkLabel(costs.join(QStringLiteral(" · ")), TextRole::small, Ink::secondary);
  cost->setWordWrap(true);
  pick->setAccessibleDescription(cost->text());
  column()->setSpacing(space::xs);
  column()->addWidget(pick);
  column()->addWidget(cost);
  connect(pick, &QRadioButton::clicked, this, [pick, choose = std::move(choose)] {
    pick->setChecked(true);
    choose();
  });
}

}  // namespace ullage::ui
