// SPDX-License-Identifier: GPL-3.0-or-later
//
// What each typed picker offers: which rows of the status, under which name.
#include "ui/preferences.h"
#include "ui/widgets/entity_picker.h"

namespace ullage::ui {

namespace {

template <class Row, class InUse, class MakeChoice>
std::vector<Choice> choices_among(const std::vector<Row>& rows, const Shows<Row>& shows,
                                  const InUse& in_use, const MakeChoice& make) {
  std::vector<Choice> choices;
  for (const Row& row : rows) {
    if (in_use(row) && (!shows || shows(row))) choices.push_back(make(row));
  }
  return choices;
}

}  // namespace

std::vector<Choice> offered(const Context& context, const Shows<cellar::KegStatus>& shows) {
  const auto speaker = context.speaker();
  return choices_among(
      context.cellar.status()->kegs, shows,
      [](const cellar::KegStatus& keg) { return keg.registered_now && keg.record.in_use; },
      [&](const cellar::KegStatus& keg) {
        const QString state = q(report::say(keg.state, speaker));
        const QString beer = keg.contents ? q(keg.contents->beer.name) : QString();
        return Choice{keg.record.keg.uuid, q(keg.record.tag),
                      beer.isEmpty() ? state : QStringLiteral("%1, %2").arg(beer, state)};
      });
}

std::vector<Choice> offered(const Context& context, const Shows<cellar::BeerRecord>& shows) {
  return choices_among(
      context.cellar.status()->beers, shows, [](const cellar::BeerRecord&) { return true; },
      [](const cellar::BeerRecord& beer) {
        return Choice{beer.beer.uuid, q(beer.name), q(beer.style)};
      });
}

std::vector<Choice> offered(const Context& context, const Shows<cellar::BatchRecord>& shows) {
  const auto status = context.cellar.status();
  return choices_among(
      status->batches, shows, [](const cellar::BatchRecord&) { return true; },
      [&](const cellar::BatchRecord& batch) {
        QString beer;
        for (const cellar::BeerRecord& record : status->beers) {
          if (record.beer == batch.beer) beer = q(record.name);
        }
        return beer.isEmpty() ? Choice{batch.batch.uuid, q(batch.name), {}}
                              : Choice{batch.batch.uuid, beer, q(batch.name)};
      });
}

std::vector<Choice> offered(const Context& context, const Shows<cellar::PlaceStatus>& shows) {
  const auto printer = context.printer();
  return choices_among(
      context.cellar.status()->places, shows,
      [](const cellar::PlaceStatus& place) { return place.record.in_use; },
      [&](const cellar::PlaceStatus& place) {
        return Choice{place.record.place.uuid, q(place.record.name),
                      place.temperature ? q(printer.print(*place.temperature)) : QString()};
      });
}

std::vector<Choice> offered(const Context& context, const Shows<cellar::LineStatus>& shows) {
  const auto speaker = context.speaker();
  return choices_among(
      context.cellar.status()->lines, shows,
      [](const cellar::LineStatus& line) { return line.record.in_use; },
      [&](const cellar::LineStatus& line) {
        return Choice{line.record.line.uuid, q(line.record.name),
                      q(report::say(line.state, speaker))};
      });
}

std::vector<Choice> offered(const Context& context, const Shows<cellar::BottleStatus>& shows) {
  const auto printer = context.printer();
  return choices_among(
      context.cellar.status()->bottles, shows,
      [](const cellar::BottleStatus& bottle) { return bottle.record.in_use; },
      [&](const cellar::BottleStatus& bottle) {
        return Choice{bottle.record.bottle.uuid, q(bottle.record.name),
                      bottle.gas_left ? q(printer.print(*bottle.gas_left)) : QString()};
      });
}

std::vector<Choice> offered(const Context& context, const Shows<cellar::RegulatorRecord>& shows) {
  return choices_among(
      context.cellar.status()->regulators, shows,
      [](const cellar::RegulatorRecord& regulator) { return regulator.in_use; },
      [](const cellar::RegulatorRecord& regulator) {
        return Choice{regulator.regulator.uuid, q(regulator.name), {}};
      });
}

std::vector<Choice> offered(const Context& context, const Shows<cellar::InstrumentRecord>& shows) {
  return choices_among(
      context.cellar.status()->instruments, shows,
      [](const cellar::InstrumentRecord& instrument) { return instrument.in_use; },
      [](const cellar::InstrumentRecord& instrument) {
        return Choice{instrument.instrument.uuid, q(instrument.name), {}};
      });
}

}  // namespace ullage::ui
