// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/kegs_to_fill_part.h"

#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/report/gas_grounds.h"
#include "core/units/present.h"
#include "ui/theme/theme.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr std::int64_t most_kegs_to_fill = 500;

// "40 to 60 days", "40 days or more".
QString work_words(const physics::DaysLeft& d) {
  const auto days = [](units::Duration t) {
    return static_cast<int>(std::lround(units::in_days(t)));
  };
  const int least = days(d.earliest ? *d.earliest : present(d.likely));
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

// "K04, K07 and K11", the first few of many.
QString some_of(const std::vector<std::string>& names) {
  constexpr std::size_t most = 4;
  QStringList each;
  for (std::size_t i = 0; i < std::min(names.size(), most); ++i) each << q(names[i]);
  const QString listed = each.join(QStringLiteral(", "));
  return names.size() > most ? KegsToFillPart::tr("%1 and others").arg(listed) : listed;
}

QString known_words(const cellar::KegsWaiting& waiting) {
  if (waiting.empty.empty()) return {};
  const QString kegs = KegsToFillPart::tr("Standing empty (%1): %2.")
                           .arg(waiting.empty.size())
                           .arg(some_of(waiting.empty));
  const QString beer =
      waiting.batches.empty()
          ? KegsToFillPart::tr("No batch is logged that waits for them.")
          : KegsToFillPart::tr("Not in a keg yet: %1.").arg(some_of(waiting.batches));
  return kegs + QLatin1Char(' ') + beer;
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
  known_ = new InkLabel({}, TextRole::small, Ink::secondary);
  known_->setObjectName(QStringLiteral("kegs_to_fill_known"));
  known_->setWordWrap(true);
  answer_ = new FactList;
  column->addWidget(form);
  column->addWidget(known_);
  column->addWidget(answer_);
  connect(count_, &QuantityEdit::changed, this, [this] {
    count_typed_ = true;
    show_answer();
  });
  connect(each_, &QuantityEdit::changed, this, [this] {
    each_typed_ = true;
    show_answer();
  });
}

// What was typed stays as it was typed.
void KegsToFillPart::show_known() {
  const auto status = context_.cellar.status();
  const cellar::KegsWaiting waiting = cellar::kegs_waiting(*status, context_.cellar.journal());
  if (!count_typed_) {
    const QSignalBlocker quiet(count_);
    const std::int64_t count = std::min(waiting.kegs.count, most_kegs_to_fill);
    count_->set_value(count > 0 ? std::optional(count) : std::nullopt);
  }
  if (!each_typed_) {
    const QSignalBlocker quiet(each_);
    each_->set_value(waiting.kegs.each);
  }
  const QString words = known_words(waiting);
  known_->setText(words);
  known_->setVisible(!words.isEmpty());
}

void KegsToFillPart::show_account(std::shared_ptr<const cellar::GasAccount> account) {
  account_ = std::move(account);
  show_known();
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
