// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/place_safety_card.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/units/paper_text.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/card.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

using Facts = std::vector<std::pair<QString, QString>>;
constexpr double sensor_high_from = 0.6;  // m: no longer low

// Two figures: nothing here is known better.
QString share_words(units::MoleFraction share, const units::Printer& print) {
  const double percent = share.count() * 100;
  const int decimals = percent >= 9.95 ? 0 : percent >= 0.995 ? 1 : 2;
  return PlaceSafetyCard::tr("%1 %").arg(q(print.number(percent, decimals)));
}

// A published figure as it was published: 0.5 %, 19.5 %.
QString published_words(units::MoleFraction share, const units::Printer& print) {
  const double percent = share.count() * 100;
  int decimals = 0;
  for (double scaled = percent; decimals < 2 && std::abs(scaled - std::round(scaled)) > 1e-6;
       scaled *= 10) {
    ++decimals;
  }
  return PlaceSafetyCard::tr("%1 %").arg(q(print.number(percent, decimals)));
}

QString limit_kind(physics::LimitKind kind) {
  using physics::LimitKind;
  switch (kind) {
    case LimitKind::working_day:
      return PlaceSafetyCard::tr("over a working day");
    case LimitKind::short_time:
      return PlaceSafetyCard::tr("for a short time");
    case LimitKind::immediate_danger:
      return PlaceSafetyCard::tr("immediate danger to life");
    case LimitKind::alarm:
      return {};  // its name says so
    case LimitKind::high_alarm:
      return {};
    case LimitKind::room_size:
      return PlaceSafetyCard::tr("all gas mixed, at most");
    case LimitKind::symptoms:
      return PlaceSafetyCard::tr("symptoms");
    case LimitKind::oxygen_below:
      return PlaceSafetyCard::tr("at least this much oxygen");
  }
  return {};
}

}  // namespace

PlaceSafetyCard::PlaceSafetyCard(const Context& context, QWidget* parent)
    : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("place_safety"));
  auto* card = new Card(this);
  auto* outside = new QVBoxLayout(this);
  outside->setContentsMargins(0, 0, 0, 0);
  outside->addWidget(card);
  name_ = new InkLabel({}, TextRole::heading);
  air_ = new Banner(cellar::Severity::warning, {});
  air_->setObjectName(QStringLiteral("air"));
  facts_ = new FactList;
  limits_ = new FactList;
  limits_part_ = new QWidget;
  auto* limits = new QVBoxLayout(limits_part_);
  limits->setContentsMargins(0, 0, 0, 0);
  limits->setSpacing(space::s);
  limits->addWidget(new InkLabel(tr("Published figures beside it"), TextRole::strong));
  limits->addWidget(limits_);
  limits->addStretch(1);
  auto* left = new QVBoxLayout;
  left->addWidget(facts_);
  left->addStretch(1);
  auto* two = new QHBoxLayout;
  two->setSpacing(space::xl);
  two->addLayout(left, 1);
  two->addWidget(limits_part_, 1);
  alarm_ = new QPushButton(tr("Alarm checked…"));
  alarm_->setObjectName(QStringLiteral("alarm_checked"));
  edit_ = new QPushButton(tr("Edit the place…"));
  edit_->setObjectName(QStringLiteral("edit_place"));
  import_ = new QPushButton(tr("Import temperatures…"));
  import_->setObjectName(QStringLiteral("import_temperatures"));
  auto* buttons = new QHBoxLayout;
  for (QPushButton* b : {alarm_, edit_, import_}) buttons->addWidget(b);
  buttons->addStretch(1);
  card->column()->setSpacing(space::m);
  card->column()->addWidget(name_);
  card->column()->addWidget(air_);
  card->column()->addLayout(two);
  card->column()->addLayout(buttons);
  const auto about = [this] { return cellar::subject(place_.place.place); };
  connect(alarm_, &QPushButton::clicked, this, [this, about] {
    cellar::AlarmChecked checked{.place = place_.place.place};
    context_.navigator.open_task({"alarm_checked", about(), cellar::Payload(checked), {}});
  });
  connect(edit_, &QPushButton::clicked, this, [this, about] {
    context_.navigator.open_task({"place_record", about(), cellar::Payload(place_.place), {}});
  });
  connect(import_, &QPushButton::clicked, this,
          [this, about] { context_.navigator.open_task({"logger_import", about(), {}, {}}); });
}

QString PlaceSafetyCard::room_words(units::Volume v) const {
  return q(units::print_room(v, context_.printer()));
}

QString PlaceSafetyCard::bottle_words(const report::Speaker& speaker) const {
  QStringList words;
  for (const cellar::BottleInRoom& b : place_.bottles) {
    QString one = q(b.record.name);
    one += !b.gas   ? tr(" (content not known)")
           : b.full ? tr(" (%1 when full)").arg(q(speaker.printer.print(*b.gas)))
                    : tr(" (%1 in it)").arg(q(speaker.printer.print(*b.gas)));
    words << one;
  }
  return words.isEmpty() ? tr("none") : words.join(QStringLiteral(", "));
}

QString PlaceSafetyCard::alarm_words(const report::Speaker& speaker) const {
  QString words;
  if (place_.place.sensor_height) {
    const bool high = units::in_metres(*place_.place.sensor_height) > sensor_high_from;
    words = tr("sensor at %1").arg(q(speaker.printer.print(*place_.place.sensor_height)));
    if (high) words += tr(", but carbon dioxide gathers low: is that right for this gas?");
    words += QStringLiteral(". ");
  } else {
    words =
        tr("no sensor height stated. For carbon dioxide it stands low, where a sleeper’s head "
           "would be; maker and code decide. ");
  }
  if (place_.alarm_checked) {
    words +=
        place_.alarm_passed
            ? tr("Checked %1.").arg(q(report::say_age(*place_.alarm_checked, speaker)))
            : tr("It failed its check %1.").arg(q(report::say_age(*place_.alarm_checked, speaker)));
  } else {
    words += tr("No check is logged.");
  }
  return words;
}

void PlaceSafetyCard::show_place(cellar::PlaceSafety place,
                                 const std::optional<std::string>& country) {
  place_ = std::move(place);
  const report::Speaker speaker = context_.speaker();
  const bool somewhere = !place_.place.name.empty();
  const QString name = somewhere ? q(place_.place.name) : tr("Bottles without a place");
  name_->setText(name);
  setAccessibleName(name);
  for (QPushButton* b : {alarm_, edit_, import_}) {
    b->setVisible(somewhere);
    b->setAccessibleName(tr("%1 %2").arg(b->text(), name));
  }
  show_air(speaker);
  show_limits(speaker, country);
}

void PlaceSafetyCard::show_air(const report::Speaker& speaker) {
  const units::Printer& print = speaker.printer;
  const auto& air = place_.outcome;
  air_->setVisible(!place_.bottles.empty());
  if (air) {
    air_->set(cellar::Severity::warning,
              air->more_than_the_room
                  ? tr("The gas in here could fill the whole room")
                  : tr("If all of it escapes: %1 carbon dioxide, if evenly mixed")
                        .arg(share_words(air->co2, print)),
              tr("Low spots far higher. %1")
                  .arg(place_.holds_nitrogen
                           ? tr("Oxygen would fall from 20.9 % to %1; nitrogen gives no warning "
                                "at all.")
                                 .arg(share_words(air->oxygen, print))
                           : tr("Oxygen would fall from 20.9 % to %1.")
                                 .arg(share_words(air->oxygen, print))));
  } else if (!place_.bottles.empty()) {
    air_->set(cellar::Severity::warning, tr("Can’t tell what would be in the air"),
              place_.place.name.empty()
                  ? tr("Say where these bottles stand.")
                  : tr("State the room’s net volume, without kegs and stock, and the bottles’ "
                       "content."));
  }
  Facts facts;
  facts.emplace_back(tr("Bottles"), bottle_words(speaker));
  if (place_.place.net_air_volume)
    facts.emplace_back(tr("Net volume"), room_words(*place_.place.net_air_volume));
  if (place_.room_for_three_percent) {
    facts.emplace_back(tr("For 3 % at most"), tr("%1 would be wanted (a German insurer’s rule)")
                                                  .arg(room_words(*place_.room_for_three_percent)));
  }
  if (air && !air->more_than_the_room) {
    facts.emplace_back(tr("If air can leave"),
                       tr("%1 carbon dioxide, when mixed air leaves as the gas comes")
                           .arg(share_words(air->co2_flowing, print)));
  }
  if (place_.place.air_changes_per_hour) {
    facts.emplace_back(
        tr("Air changes"),
        tr("%1 an hour").arg(q(print.number(*place_.place.air_changes_per_hour, 1))));
  }
  if (place_.leak_settles_at) {
    facts.emplace_back(tr("The loss logged now"),
                       tr("settles at %1 ppm, if evenly mixed")
                           .arg(std::lround(place_.leak_settles_at->count() * 1e6)));
  }
  if (place_.place.below_ground.value_or(false))
    facts.emplace_back(tr("Below ground"), tr("yes: some codes ask for detection at any amount"));
  if (!place_.place.name.empty()) facts.emplace_back(tr("Alarm"), alarm_words(speaker));
  facts_->show_facts(facts);
}

void PlaceSafetyCard::show_limits(const report::Speaker& speaker,
                                  const std::optional<std::string>& country) {
  limits_part_->setVisible(place_.outcome.has_value());
  if (!place_.outcome) return;
  Facts rows;
  for (const physics::ExposureLimit& l : cellar::limits_for(country)) {
    QString words = QString::fromUtf8(l.country.data(), static_cast<qsizetype>(l.country.size())) +
                    QStringLiteral(": ") +
                    QString::fromUtf8(l.name.data(), static_cast<qsizetype>(l.name.size()));
    if (l.kind != physics::LimitKind::symptoms) {
      const QString kind = limit_kind(l.kind);
      if (!kind.isEmpty()) words += QStringLiteral(", ") + kind;
      if (!l.averaging.empty())
        words += QStringLiteral(", ") +
                 QString::fromUtf8(l.averaging.data(), static_cast<qsizetype>(l.averaging.size()));
    }
    if (!l.source.empty())
      words += QStringLiteral(", ") +
               QString::fromUtf8(l.source.data(), static_cast<qsizetype>(l.source.size()));
    words += l.certainty == physics::SourceCertainty::verified ? tr(" (seen in print)")
                                                               : tr(" (from memory)");
    if (cellar::reaches(*place_.outcome, l)) {
      words += l.kind == physics::LimitKind::oxygen_below ? tr(". It would fall below this")
                                                          : tr(". It would rise above this");
    }
    rows.emplace_back(published_words(l.value, speaker.printer), words);
  }
  limits_->show_facts(rows);
}

}  // namespace ullage::ui
