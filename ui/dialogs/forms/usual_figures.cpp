// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/usual_figures.h"

#include "core/cellar/presets.h"

namespace ullage::ui {

using namespace cellar;

std::optional<std::size_t> kind_chosen(const Payload& payload) {
  if (const auto* keg = get_if<KegRecord>(&payload)) return static_cast<std::size_t>(keg->keg_kind);
  if (const auto* instrument = get_if<InstrumentRecord>(&payload)) {
    return static_cast<std::size_t>(instrument->instrument_kind);
  }
  return std::nullopt;
}

Payload with_usual_figures(const Payload& payload) {
  if (const auto* keg = get_if<KegRecord>(&payload)) {
    KegRecord usual = keg_from_preset(keg->keg_kind);
    usual.keg = keg->keg;
    usual.tag = keg->tag;
    usual.owner = keg->owner;
    usual.deposit_minor = keg->deposit_minor;
    usual.place = keg->place;
    usual.in_use = keg->in_use;
    return Payload(boost::variant2::in_place_type<KegRecord>, std::move(usual));
  }
  if (const auto* instrument = get_if<InstrumentRecord>(&payload)) {
    InstrumentRecord usual = instrument_from_preset(instrument->instrument_kind);
    usual.instrument = instrument->instrument;
    usual.name = instrument->name;
    usual.checked_on = instrument->checked_on;
    usual.check_note = instrument->check_note;
    usual.in_use = instrument->in_use;
    return Payload(boost::variant2::in_place_type<InstrumentRecord>, std::move(usual));
  }
  return payload;
}

}  // namespace ullage::ui
