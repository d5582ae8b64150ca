// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/registered.h"

#include <algorithm>

namespace ullage::ui {

using namespace cellar;

namespace {

template <class Record>
RegisteredThing thing(SubjectRef about, const Record& record) {
  return {about, Payload(boost::variant2::in_place_type<Record>, record)};
}

}  // namespace

std::vector<RegisteredThing> registered_things(const CellarStatus& status) {
  std::vector<RegisteredThing> all;
  all.reserve(status.kegs.size() + status.beers.size() + status.batches.size());
  for (const KegStatus& k : status.kegs) all.push_back(thing(subject(k.record.keg), k.record));
  for (const BeerRecord& b : status.beers) all.push_back(thing(subject(b.beer), b));
  for (const BatchRecord& b : status.batches) all.push_back(thing(subject(b.batch), b));
  for (const PlaceStatus& p : status.places)
    all.push_back(thing(subject(p.record.place), p.record));
  for (const LineStatus& l : status.lines) all.push_back(thing(subject(l.record.line), l.record));
  for (const BottleStatus& b : status.bottles)
    all.push_back(thing(subject(b.record.bottle), b.record));
  for (const RegulatorRecord& r : status.regulators) all.push_back(thing(subject(r.regulator), r));
  for (const InstrumentRecord& i : status.instruments)
    all.push_back(thing(subject(i.instrument), i));
  return all;
}

std::optional<Payload> record_of(const CellarStatus& status, const SubjectRef& about) {
  const std::vector<RegisteredThing> all = registered_things(status);
  const auto at = std::find_if(all.begin(), all.end(),
                               [&](const RegisteredThing& t) { return t.about == about; });
  return at == all.end() ? std::nullopt : std::optional(at->record);
}

bool in_use(const Payload& record) {
  return visit(
      [](const auto& r) {
        if constexpr (requires { r.in_use; }) return r.in_use;
        return true;
      },
      record);
}

std::optional<Payload> with_use(const Payload& record, bool in_use) {
  Payload changed = record;
  const bool can = visit(
      [in_use](auto& r) {
        if constexpr (requires { r.in_use; }) {
          r.in_use = in_use;
          return true;
        }
        return false;
      },
      changed);
  return can ? std::optional(std::move(changed)) : std::nullopt;
}

}  // namespace ullage::ui
