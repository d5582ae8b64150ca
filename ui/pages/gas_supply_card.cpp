// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/gas_supply_card.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <cmath>

#include "core/report/gas_grounds.h"
#include "core/units/present.h"
#include "ui/charts/gas_chart.h"
#include "ui/pages/bottle_tasks.h"
#include "ui/pages/drawn_supply.h"
#include "ui/pages/kegs_to_fill_part.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/card.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/gas_drawing.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {
namespace {

using cellar::GasAccount;
using BottleReasons = report::Grounds (*)(const GasAccount&, std::size_t, const report::Speaker&);
using GasReasons = report::Grounds (*)(const GasAccount&, const report::Speaker&);

QString per_cent(double share) { return QString::number(std::lround(share * 100)); }

// Never a bare ratio: "CO₂ 30 % / N₂ 70 %".
QString gas_words(const cellar::BottleRecord& bottle) {
  const double co2 = bottle.co2.count();
  if (co2 >= 0.995) return GasSupplyCard::tr("CO₂");
  return GasSupplyCard::tr("CO₂ %1 % / N₂ %2 %").arg(per_cent(co2), per_cent(1 - co2));
}

// Of all its bottles; named one by one only where they differ.
QString gas_of_all(const GasAccount& account) {
  QStringList kinds, named;
  for (const cellar::BottleRecord& b : account.bottles) {
    const QString words = gas_words(b);
    if (!kinds.contains(words)) kinds << words;
    named << GasSupplyCard::tr("%1: %2").arg(q(b.name), words);
  }
  return kinds.size() == 1 ? kinds.front() : named.join(QStringLiteral(", "));
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
  if (!account.alarm && loss.confidence.count() >= physics::loss_sure_from) {
    return GasSupplyCard::tr("%1 a day, %2, but less than this cellar wants to be warned of.")
        .arg(q(print.print(loss.per_day)), sureness(loss.confidence));
  }
  if (!account.alarm) {
    return GasSupplyCard::tr(
               "%1 a day: not enough to call it a loss. A steady loss of %2 a day would be called "
               "one 9 times in 10.")
        .arg(q(print.print(loss.per_day)), q(print.print(loss.smallest_visible_per_day)));
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

cellar::RetestDue retest_of(const cellar::ToldBottle& told, const report::Speaker& speaker) {
  return speaker.calendar
             ? cellar::retest_due(told.test_due, speaker.calendar->date_of(speaker.now))
             : cellar::RetestDue::not_yet;
}

QString retest_day(const cellar::ToldBottle& told, const report::Speaker& speaker) {
  QString day = q(report::say_date(present(told.test_due), speaker));
  switch (retest_of(told, speaker)) {
    case cellar::RetestDue::overdue:
      return GasSupplyCard::tr("%1: overdue").arg(day);
    case cellar::RetestDue::soon:
      return GasSupplyCard::tr("%1: soon").arg(day);
    case cellar::RetestDue::not_yet:
      break;
  }
  return day;
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
  left->addWidget(to_fill_ = new KegsToFillPart(context));
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
  card->column()->addLayout(notices_ = new QVBoxLayout);
  card->column()->addLayout(two);
  card->column()->addWidget(hunt_);
  card->column()->addLayout(tasks_ = new QVBoxLayout);
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

void GasSupplyCard::show_account(std::shared_ptr<const cellar::GasAccount> account) {
  account_ = std::move(account);
  const report::Speaker speaker = context_.speaker();
  setAccessibleName(q(account_->name));
  name_->setText(q(account_->name));
  gas_->setText(gas_of_all(*account_));
  drawing_->show_supply(drawn_supply(*account_, speaker.printer));
  show_loss(speaker);
  show_notices(speaker);
  show_facts(speaker);
  to_fill_->show_account(account_);
  show_hunt(speaker);
  const std::size_t bottles = account_->bottles.size();
  const auto tasks = keep_count<BottleTasks>(*tasks_, static_cast<qsizetype>(bottles),
                                             [this] { return new BottleTasks(context_); });
  for (std::size_t i = 0; i < bottles; ++i)
    tasks[i]->show_bottle(account_->bottles[i], bottles > 1);
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

// What a bottle itself asks for: its test, a cooler place.
void GasSupplyCard::show_notices(const report::Speaker& speaker) {
  using cellar::MessageKey;
  struct Notice {
    cellar::Severity severity;
    cellar::Message headline, detail;
  };
  std::vector<Notice> all;
  for (std::size_t i = 0; i < account_->told.size(); ++i) {
    const cellar::BottleRecord& bottle = account_->bottles[i];
    const cellar::ToldBottle& told = account_->told[i];
    const cellar::RetestDue due = retest_of(told, speaker);
    if (due != cellar::RetestDue::not_yet)
      all.push_back(
          {due == cellar::RetestDue::overdue ? cellar::Severity::warning : cellar::Severity::advice,
           cellar::retest_words(bottle.name, *told.test_due, due),
           cellar::message(MessageKey::adv_retest_detail)});
    if (told.too_warm)
      all.push_back({cellar::Severity::warning, cellar::warm_words(bottle, told),
                     cellar::message(MessageKey::adv_bottle_warm_detail)});
  }
  const auto banners = keep_count<Banner>(*notices_, static_cast<qsizetype>(all.size()),
                                          [] { return new Banner(cellar::Severity::advice, {}); });
  for (std::size_t i = 0; i < all.size(); ++i)
    banners[i]->set(all[i].severity, q(report::say(all[i].headline, speaker)),
                    q(report::say(all[i].detail, speaker)));
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
  show_bottle_facts(speaker, facts);
  facts_->show_facts(facts);
}

// Bottle by bottle, with its name where there are several.
void GasSupplyCard::show_bottle_facts(const report::Speaker& speaker,
                                      std::vector<ListedFact>& facts) const {
  const bool several = account_->bottles.size() > 1;
  for (std::size_t i = 0; i < account_->bottles.size(); ++i) {
    const cellar::BottleRecord& bottle = account_->bottles[i];
    const auto name = [&](const QString& plain) {
      return several ? tr("%1 %2").arg(q(bottle.name), plain) : plain;
    };
    const auto because = [account = account_, speaker, i](BottleReasons why) {
      return [=] { return why(*account, i, speaker); };
    };
    if (i < account_->told.size()) {
      const cellar::ToldBottle& told = account_->told[i];
      if (told.gauge)
        facts.push_back({name(several ? tr("gauge") : tr("Its gauge")),
                         q(report::say(*told.gauge, speaker)),
                         because(&report::gas_gauge_grounds)});
      if (told.liquid_full_at) {
        const QString at = q(speaker.printer.print(*told.liquid_full_at));
        facts.push_back({name(several ? tr("full of liquid at") : tr("Full of liquid at")),
                         told.too_warm ? tr("%1. Keep it cooler.").arg(at) : at,
                         because(&report::liquid_full_grounds)});
      }
      if (told.test_due)
        facts.push_back(
            {name(several ? tr("retest due") : tr("Retest due")), retest_day(told, speaker)});
    }
  }
}

void GasSupplyCard::show_hunt(const report::Speaker& speaker) {
  hunt_->setVisible(!account_->suspects.empty());
  std::vector<ListedTask> suspects, steps;
  for (const cellar::GasSuspect& s : account_->suspects)
    suspects.push_back({q(report::say(s.why, speaker)), tr("Leak test…")});
  for (const cellar::IsolationStep& s : account_->isolation) {
    steps.push_back({q(report::say(s.what, speaker)),
                     s.task.kind == cellar::GasOff::kind       ? tr("Gas off…")
                     : s.task.kind == cellar::LeakTested::kind ? tr("Leak test…")
                                                               : tr("Weigh…")});
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
