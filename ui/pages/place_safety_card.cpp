// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/place_safety_card.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <memory>

#include "core/report/room_grounds.h"
#include "core/units/paper_text.h"
#include "core/units/present.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/card.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr double sensor_high_from = 0.6;  // m: no longer low

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
    case LimitKind::high_alarm:
      return {};  // its name says so
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
  elsewhere_words_ = new InkLabel({}, TextRole::small, Ink::secondary);
  elsewhere_words_->setObjectName(QStringLiteral("limits_elsewhere"));
  elsewhere_words_->setWordWrap(true);
  elsewhere_ = new FactList;
  limits_part_ = new QWidget;
  auto* limits = new QVBoxLayout(limits_part_);
  limits->setContentsMargins(0, 0, 0, 0);
  limits->setSpacing(space::s);
  limits->addWidget(new InkLabel(tr("Published figures beside it"), TextRole::strong));
  limits->addWidget(limits_);
  limits->addWidget(elsewhere_words_);
  limits->addWidget(elsewhere_);
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
  const auto& air = place_.outcome;
  air_->setVisible(!place_.bottles.empty());
  if (air) {
    air_->set(cellar::Severity::warning,
              air->more_than_the_room
                  ? tr("The gas in here could fill the whole room")
                  : tr("If all of it escapes: %1 carbon dioxide, if evenly mixed")
                        .arg(q(report::say_share(place_.co2, air->co2, speaker))),
              tr("Low spots far higher. %1")
                  .arg(place_.holds_nitrogen
                           ? tr("Oxygen would fall from 20.9 % to %1; nitrogen gives no warning "
                                "at all.")
                                 .arg(q(report::say_share(place_.oxygen, air->oxygen, speaker)))
                           : tr("Oxygen would fall from 20.9 % to %1.")
                                 .arg(q(report::say_share(place_.oxygen, air->oxygen, speaker)))));
  } else if (!place_.bottles.empty()) {
    air_->set(cellar::Severity::warning, tr("Can’t tell what would be in the air"),
              place_.place.name.empty()
                  ? tr("Say where these bottles stand.")
                  : tr("State the room’s net volume, without kegs and stock, and the bottles’ "
                       "content."));
  }
  show_facts(speaker);
}

void PlaceSafetyCard::show_facts(const report::Speaker& speaker) {
  const auto& air = place_.outcome;
  const auto kept = std::make_shared<const cellar::PlaceSafety>(place_);
  std::vector<ListedFact> facts;
  const auto fact = [&](const QString& name, const QString& value,
                        report::RoomReasons why = nullptr) {
    std::function<report::Grounds()> reasons;
    if (why) reasons = [kept, speaker, why] { return why(*kept, speaker); };
    facts.push_back({name, value, std::move(reasons)});
  };
  fact(tr("Bottles"), bottle_words(speaker));
  if (place_.place.net_air_volume)
    fact(tr("Net volume"), q(units::print_room(*place_.place.net_air_volume, speaker.printer)));
  if (air) {
    fact(tr("If all escapes"),
         tr("%1 carbon dioxide, if evenly mixed")
             .arg(q(report::say_share(place_.co2, air->co2, speaker))),
         &report::room_co2_grounds);
    fact(tr("Oxygen then"), q(report::say_share(place_.oxygen, air->oxygen, speaker)),
         &report::room_oxygen_grounds);
  }
  if (place_.room_for_three_percent) {
    fact(tr("For 3 % at most"),
         tr("%1 would be wanted (a German insurer’s rule)")
             .arg(q(report::say_room(*place_.room_for_three_percent, speaker))),
         &report::room_wanted_grounds);
  }
  if (air && !air->more_than_the_room) {
    fact(tr("If air can leave"),
         tr("%1 carbon dioxide, when mixed air leaves as the gas comes")
             .arg(q(report::say_share(place_.co2_flowing, air->co2_flowing, speaker))),
         &report::room_flowing_grounds);
  }
  if (place_.place.air_changes_per_hour) {
    fact(tr("Air changes"),
         tr("%1 an hour").arg(q(speaker.printer.number(*place_.place.air_changes_per_hour, 1))));
  }
  if (place_.leak_settles_at) {
    const QString share = q(report::say_leak_share(*place_.leak_settles_at, speaker));
    fact(place_.leak_called_one ? tr("The loss logged now") : tr("What may be lost now"),
         tr("settles at %1, if evenly mixed").arg(share), &report::room_leak_grounds);
  }
  if (place_.place.below_ground.value_or(false))
    fact(tr("Below ground"), tr("yes: some codes ask for detection at any amount"));
  if (!place_.place.name.empty()) fact(tr("Alarm"), alarm_words(speaker));
  facts_->show_facts(facts);
}

QString PlaceSafetyCard::limit_words(const physics::ExposureLimit& l) const {
  const auto text = [](std::string_view s) {
    return QString::fromUtf8(s.data(), static_cast<qsizetype>(s.size()));
  };
  QString words =
      l.country.empty() ? text(l.name) : text(l.country) + QStringLiteral(": ") + text(l.name);
  if (l.kind != physics::LimitKind::symptoms) {
    const QString kind = limit_kind(l.kind);
    if (!kind.isEmpty()) words += QStringLiteral(", ") + kind;
    if (!l.averaging.empty()) words += QStringLiteral(", ") + text(l.averaging);
  }
  if (!l.source.empty()) words += QStringLiteral(", ") + text(l.source);
  words += l.certainty == physics::SourceCertainty::verified ? tr(" (seen in print)")
                                                             : tr(" (from memory)");
  if (cellar::reaches(present(place_.outcome), l)) {
    words += l.kind == physics::LimitKind::oxygen_below ? tr(". It would fall below this")
                                                        : tr(". It would rise above this");
  }
  return words;
}

// What the list lacks for the country, and whose figures follow instead.
QString PlaceSafetyCard::lacking_words(const cellar::LimitsOfCountry& limits,
                                       const std::optional<std::string>& country) {
  if (!country || country->empty())
    return tr("No country is stated in This cellar…: these are of every country.");
  if (limits.elsewhere.empty()) return {};
  const QString of = q(*country);
  if (limits.co2_here)
    return tr("The list has no figure for oxygen of %1. Of other countries:").arg(of);
  if (limits.oxygen_here)
    return tr("The list has no figure for carbon dioxide of %1. Of other countries:").arg(of);
  return tr("The list has no figure of %1 at all. Of other countries:").arg(of);
}

void PlaceSafetyCard::show_limits(const report::Speaker& speaker,
                                  const std::optional<std::string>& country) {
  limits_part_->setVisible(place_.outcome.has_value());
  if (!place_.outcome) return;
  const auto kept = std::make_shared<const cellar::PlaceSafety>(place_);
  // The figure stands first and what it is of beside it; the words open the reasons.
  const auto show = [&](FactList& list, const std::vector<physics::ExposureLimit>& limits) {
    std::vector<ListedFact> rows;
    rows.reserve(limits.size());
    for (const physics::ExposureLimit& l : limits) {
      rows.push_back({q(report::say_published_share(l.value, speaker)), limit_words(l),
                      [kept, speaker, l] { return report::limit_grounds(l, *kept, speaker); }});
    }
    list.show_facts(rows);
    list.setVisible(!rows.empty());
  };
  const cellar::LimitsOfCountry limits = cellar::limits_for(country);
  show(*limits_, limits.here);
  show(*elsewhere_, limits.elsewhere);
  const QString lacking = lacking_words(limits, country);
  elsewhere_words_->setText(lacking);
  elsewhere_words_->setVisible(!lacking.isEmpty());
}

}  // namespace ullage::ui
