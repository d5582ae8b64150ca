// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/kegs_to_fill_part.h"

#include <QLineEdit>
#include <QVBoxLayout>
#include <cmath>

#include "core/report/gas_grounds.h"
#include "ui/theme/theme.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/form_section.h"

namespace ullage::ui {
namespace {

constexpr std::int64_t most_kegs_to_fill = 500;

// "40 to 60 days", "40 days or more".
QString work_words(const physics::DaysLeft& d) {
  const auto days = [](units::Duration t) {
    return static_cast<int>(std::lround(units::in_days(t)));
  };
  const int least = days(d.earliest.value_or(*d.likely));
  return d.latest ? KegsToFillPart::tr("%1 to %2 days").arg(least).arg(days(*d.latest))
                  : KegsToFillPart::tr("%1 days or more").arg(least);
}

QString enough_words(const cellar::GasForKegs& gas) {
  if (!gas.enough) return KegsToFillPart::tr("can’t tell: how much is in it is not known");
  const double p = gas.enough->count();
  if (p > 0.95) return KegsToFillPart::tr("enough");
  if (p < 0.05) return KegsToFillPart::tr("not enough");
  return KegsToFillPart::tr("enough with %1 % certainty").arg(std::lround(p * 100));
}

}  // namespace

KegsToFillPart::KegsToFillPart(const Context& context, QWidget* parent)
    : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("kegs_to_fill"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::s);
  count_ = new WholeNumberEdit(context.preferences);
  count_->setObjectName(QStringLiteral("kegs_to_fill_count"));
  count_->set_range(0, most_kegs_to_fill);
  each_ = new VolumeEdit(context.preferences);
  each_->setObjectName(QStringLiteral("kegs_to_fill_each"));
  each_->set_range(units::litres(1), units::litres(200));
  each_->set_value(cellar::KegsToFill{}.each);
  auto* form = new FormSection;
  form->add(tr("Kegs still to fill"), count_);
  form->add(tr("Each of"), each_);
  answer_ = new FactList;
  column->addWidget(form);
  column->addWidget(answer_);
  connect(count_, &QuantityEdit::changed, this, &KegsToFillPart::show_answer);
  connect(each_, &QuantityEdit::changed, this, &KegsToFillPart::show_answer);
}

void KegsToFillPart::show_account(std::shared_ptr<const cellar::GasAccount> account) {
  account_ = std::move(account);
  show_answer();
}

void KegsToFillPart::show_answer() {
  std::vector<ListedFact> facts;
  const cellar::KegsToFill kegs{count_->value().value_or(0),
                                each_->value().value_or(units::litres(0))};
  const auto gas = account_ ? cellar::gas_for(kegs, *account_) : std::nullopt;
  if (gas) {
    const report::Speaker speaker = context_.speaker();
    const auto why = [account = account_, kegs, speaker] {
      return report::gas_for_kegs_grounds(kegs, *account, speaker);
    };
    facts.push_back(
        {tr("They take"), tr("about %1").arg(q(speaker.printer.print(gas->for_them))), why});
    facts.push_back(
        {tr("With the kegs on it"),
         tr("about %1: %2").arg(q(speaker.printer.print(gas->in_all)), enough_words(*gas)), why});
    if (gas->work_for)
      facts.push_back({tr("At the use so far that is"), work_words(*gas->work_for), why});
  }
  answer_->setVisible(!facts.empty());
  answer_->show_facts(facts);
}

}  // namespace ullage::ui
