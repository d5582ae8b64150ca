// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/gas_supply_card.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "core/report/gas_grounds.h"
#include "ui/charts/gas_chart.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/card.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/gas_drawing.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

using cellar::GasAccount;
using GasReasons = report::Grounds (*)(const GasAccount&, const report::Speaker&);

QString per_cent(double share) { return QString::number(std::lround(share * 100)); }

// Never a bare ratio: "CO₂ 30 % / N₂ 70 %".
QString gas_words(const cellar::BottleRecord& bottle) {
  const double co2 = bottle.co2.count();
  if (co2 >= 0.995) return GasSupplyCard::tr("CO₂");
  return GasSupplyCard::tr("CO₂ %1 % / N₂ %2 %").arg(per_cent(co2), per_cent(1 - co2));
}

DrawnSupply drawn(const GasAccount& account, const units::Printer& print) {
  DrawnSupply out;
  for (const cellar::BottleRecord& b : account.bottles) out.bottles.push_back(q(b.name));
  const auto kegs = [&](const std::vector<cellar::BranchKeg>& from) {
    std::vector<DrawnKeg> to;
    for (const cellar::BranchKeg& k : from) to.push_back({q(k.tag), q(print.print(k.set))});
    return to;
  };
  for (const cellar::GasBranch& b : account.branches)
    out.branches.push_back({q(b.regulator.name), kegs(b.kegs)});
  if (!account.unassigned.empty())
    out.branches.push_back({GasSupplyCard::tr("no regulator named"), kegs(account.unassigned)});
  return out;
}

// "99 % sure", never more than can be said.
QString sureness(units::Fraction f) {
  const double p = f.count();
  if (p > 0.999) return GasSupplyCard::tr("more than 99.9 % sure");
  if (p >= 0.5) return GasSupplyCard::tr("%1 % sure").arg(std::floor(p * 100));
  return GasSupplyCard::tr("as likely as not none at all");
}

QString loss_words(const GasAccount& account, const report::Speaker& speaker) {
  if (!account.loss)
    return account.cant_tell ? q(report::say(*account.cant_tell, speaker)) : QString();
  const physics::UnexplainedLoss& loss = *account.loss;
  const units::Printer& print = speaker.printer;
  if (!account.alarm) {
    return GasSupplyCard::tr("none to be seen. More than %1 a day would show.")
        .arg(q(print.print(loss.smallest_visible_per_day)));
  }
  QString words = GasSupplyCard::tr("%1 a day, %2")
                      .arg(q(print.print(loss.per_day)), sureness(loss.confidence));
  if (loss.steady && account.weighings.size() > 2) {
    words += GasSupplyCard::tr(", steady since %1")
                 .arg(q(report::say_day(account.weighings.front().at, speaker)));
  } else if (account.loss_from && account.loss_to) {
    words += GasSupplyCard::tr(", most between %1 and %2")
                 .arg(q(report::say_day(*account.loss_from, speaker)),
                      q(report::say_day(*account.loss_to, speaker)));
  }
  if (!loss.steady) words += GasSupplyCard::tr(". It began, ended or changed in between");
  return words;
}

QString lasts_words(const GasAccount& account, const report::Speaker& speaker) {
  if (!account.runs_out) return {};
  const cellar::Window& w = *account.runs_out;
  const QString day = q(report::say_day(w.likely, speaker));
  const auto days = [&](cellar::Instant t) {
    return static_cast<int>(std::lround(units::in_days(cellar::between(speaker.now, t))));
  };
  if (!w.latest) return GasSupplyCard::tr("%1, %2 days or more").arg(day).arg(days(w.earliest));
  return GasSupplyCard::tr("%1, %2 to %3 days").arg(day).arg(days(w.earliest)).arg(days(*w.latest));
}

QString planned_words(const GasAccount& account, const units::Printer& print) {
  if (account.planned.value().value() <= 0) return {};
  QString words = GasSupplyCard::tr("about %1").arg(q(print.print(account.planned)));
  if (!account.planned_enough) return words;
  const double p = account.planned_enough->count();
  words += p > 0.95   ? GasSupplyCard::tr(": enough")
           : p < 0.05 ? GasSupplyCard::tr(": not enough")
                      : GasSupplyCard::tr(": enough with %1 % certainty").arg(per_cent(p));
  return words;
}

// The loss is known to some per cent, and what it costs no better.
QString cost_words(const GasAccount& account, const report::Speaker& speaker) {
  if (!account.alarm || !account.loss || !account.cost_minor_per_30_days) return {};
  const units::Estimate<units::Mass>& loss = account.loss->per_day;
  const double cost = static_cast<double>(*account.cost_minor_per_30_days);
  const double share = std::abs(loss.half_width() / loss.value().value());
  return GasSupplyCard::tr("%1 ± %2 every 30 days at the bottle’s price")
      .arg(q(report::say_money(cost, speaker)), q(report::say_money(cost * share, speaker)));
}

}  // namespace

GasSupplyCard::GasSupplyCard(const Context& context, QWidget* parent)
    : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("gas_supply"));
  auto* card = new Card(this);
  auto* outside = new QVBoxLayout(this);
  outside->setContentsMargins(0, 0, 0, 0);
  outside->addWidget(card);
  name_ = new InkLabel({}, TextRole::heading);
  gas_ = new InkLabel({}, TextRole::small, Ink::secondary);
  auto* head = new QHBoxLayout;
  head->addWidget(name_);
  head->addWidget(gas_);
  head->addStretch(1);
  loss_ = new Banner(cellar::Severity::warning, {});
  loss_->setObjectName(QStringLiteral("gas_loss"));
  drawing_ = new GasDrawing;
  facts_ = new FactList;
  auto* left = new QVBoxLayout;
  left->setSpacing(space::m);
  left->addWidget(drawing_);
  left->addWidget(facts_);
  left->addStretch(1);
  auto* two = new QHBoxLayout;
  two->setSpacing(space::xl);
  two->addLayout(left, 1);
  two->addWidget(chart_part_ = build_chart(), 1);
  suspects_ = new TaskList;
  suspects_->setObjectName(QStringLiteral("suspects"));
  isolation_title_ = new Figure(TextRole::strong);
  isolation_title_->setObjectName(QStringLiteral("isolation_wait"));
  isolation_ = new TaskList;
  isolation_->setObjectName(QStringLiteral("isolation"));
  hunt_ = new QWidget;
  auto* hunt = new QVBoxLayout(hunt_);
  hunt->setContentsMargins(0, 0, 0, 0);
  hunt->setSpacing(space::s);
  hunt->addWidget(new InkLabel(tr("Where to look first"), TextRole::strong));
  hunt->addWidget(suspects_);
  hunt->addWidget(isolation_title_);
  hunt->addWidget(isolation_);
  card->column()->setSpacing(space::m);
  card->column()->addLayout(head);
  card->column()->addWidget(loss_);
  card->column()->addLayout(two);
  card->column()->addWidget(hunt_);
  card->column()->addWidget(build_tasks());
  connect(suspects_, &TaskList::chosen, this, [this](int i) {
    context_.navigator.open_task(account_->suspects.at(static_cast<std::size_t>(i)).check);
  });
  connect(isolation_, &TaskList::chosen, this, [this](int i) {
    context_.navigator.open_task(account_->isolation.at(static_cast<std::size_t>(i)).task);
  });
}

QWidget* GasSupplyCard::build_chart() {
  auto* part = new QWidget;
  auto* column = new QVBoxLayout(part);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::xs);
  chart_title_ = new InkLabel({}, TextRole::strong);
  chart_words_ = new InkLabel({}, TextRole::small, Ink::secondary);
  chart_words_->setWordWrap(true);
  chart_ = new GasChart;
  column->addWidget(chart_title_);
  column->addWidget(chart_words_);
  column->addWidget(chart_, 1);
  return part;
}

QWidget* GasSupplyCard::build_tasks() {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  const auto task = [&](const QString& words, const char* kind, auto fill) {
    auto* button = new QPushButton(words);
    button->setObjectName(QStringLiteral("supply_") + QLatin1String(kind));
    connect(button, &QPushButton::clicked, this, [this, kind, fill] {
      const cellar::BottleRecord& bottle = account_->bottles.front();
      context_.navigator.open_task({kind, cellar::subject(bottle.bottle), fill(bottle), {}});
    });
    line->addWidget(button);
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
  return row;
}

void GasSupplyCard::show_account(std::shared_ptr<const cellar::GasAccount> account) {
  account_ = std::move(account);
  const report::Speaker speaker = context_.speaker();
  setAccessibleName(q(account_->name));
  name_->setText(q(account_->name));
  gas_->setText(gas_words(account_->bottles.front()));
  drawing_->show_supply(drawn(*account_, speaker.printer));
  show_loss(speaker);
  show_facts(speaker);
  show_hunt(speaker);
  chart_->show_account(account_, speaker);
  chart_part_->setVisible(chart_->has_curve());  // what is missing stands in the facts
  chart_title_->setText(tr("Gas left, %1").arg(q(units::unit_name(speaker.printer.units.mass))));
  chart_words_->setText(
      tr("Circles: weighed. Dashes and band: what should be left by the work of the kegs."));
}

void GasSupplyCard::show_loss(const report::Speaker& speaker) {
  loss_->setVisible(account_->alarm);
  if (!account_->alarm) return;
  using cellar::MessageKey;
  loss_->set(cellar::Severity::warning,
             q(report::say(
                 cellar::message(MessageKey::adv_gas_loss, account_->name, account_->loss->per_day),
                 speaker)),
             tr("This is %1. %2")
                 .arg(sureness(account_->loss->confidence),
                      q(report::say(cellar::message(MessageKey::adv_gas_loss_detail), speaker))));
}

void GasSupplyCard::show_facts(const report::Speaker& speaker) {
  const units::Printer& print = speaker.printer;
  const GasAccount& a = *account_;
  std::vector<ListedFact> facts;
  const auto fact = [&](const QString& name, const QString& value, GasReasons why = nullptr) {
    if (value.isEmpty()) return;
    std::function<report::Grounds()> reasons;
    if (why) reasons = [account = account_, speaker, why] { return why(*account, speaker); };
    facts.push_back({name, value, std::move(reasons)});
  };
  fact(tr("In it now"),
       a.gas_now && a.gas_now->value().value() > 0 ? tr("about %1").arg(q(print.print(*a.gas_now)))
       : a.gas_now                                 ? tr("it should be empty")
       : !a.tare_known                             ? tr("its empty weight is not registered")
                                                   : QString(),
       a.gas_now ? &report::gas_now_grounds : nullptr);
  fact(tr("Lasts until"), lasts_words(a, speaker), &report::gas_lasts_grounds);
  if (a.use_per_day)
    fact(tr("Used by the kegs"), tr("%1 a day").arg(q(print.print(*a.use_per_day))),
         &report::gas_use_grounds);
  fact(tr("Unexplained"), loss_words(a, speaker), &report::gas_loss_grounds);
  fact(tr("Costs"), cost_words(a, speaker), &report::gas_cost_grounds);
  fact(tr("For the kegs on it"), planned_words(a, print), &report::gas_planned_grounds);
  if (a.gauge) fact(tr("Its gauge"), q(report::say(*a.gauge, speaker)), &report::gas_gauge_grounds);
  if (a.liquid_full_at)
    fact(tr("Full of liquid at"), tr("%1. Keep it cooler.").arg(q(print.print(*a.liquid_full_at))),
         &report::liquid_full_grounds);
  for (const cellar::BottleRecord& b : a.bottles) {
    if (b.retest_due) fact(tr("Retest due"), q(report::say_date(*b.retest_due, speaker)));
  }
  facts_->show_facts(facts);
}

void GasSupplyCard::show_hunt(const report::Speaker& speaker) {
  hunt_->setVisible(!account_->suspects.empty());
  std::vector<ListedTask> suspects, steps;
  for (const cellar::GasSuspect& s : account_->suspects)
    suspects.push_back({q(report::say(s.why, speaker)), tr("Leak test…")});
  for (const cellar::IsolationStep& s : account_->isolation) {
    steps.push_back({q(report::say(s.what, speaker)),
                     s.task.kind == cellar::GasOff::kind ? tr("Gas off…") : tr("Weigh…")});
  }
  suspects_->show_tasks(suspects);
  isolation_->show_tasks(steps);
  isolation_title_->setVisible(account_->isolation_wait.has_value());
  if (account_->isolation_wait) {
    isolation_title_->show_number({},
                                  tr("If soapy water finds nothing: one branch at a time, %1 each")
                                      .arg(q(speaker.printer.print(*account_->isolation_wait))),
                                  [account = account_, speaker] {
                                    return report::isolation_wait_grounds(*account, speaker);
                                  });
  }
}

}  // namespace ullage::ui
