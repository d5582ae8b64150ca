// SPDX-License-Identifier: GPL-3.0-or-later
//
// Feeds arbitrary bytes to every parser of core/units. The first byte chooses
// the units shown and the decimal mark; the rest is what is typed. Beside not
// crashing, an accepted quantity must be finite, a refused one must have a
// sentence, and what is accepted must print.
//
// Built only with -DULLAGE_FUZZ=ON and clang 19 (see README.md beside this):
//   ./parser_fuzz -max_total_time=60 -max_len=120
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/units/magnitude.h"
#include "core/units/parsing.h"
#include "core/units/printing.h"

namespace {

using namespace ullage::units;

DisplayUnits units_for(std::uint8_t choice) {
  DisplayUnits units = choice % 3 == 0   ? DisplayUnits::metric()
                       : choice % 3 == 1 ? DisplayUnits::us()
                                         : DisplayUnits::british();
  if ((choice & 0x40) != 0) units.volume = VolumeUnit::imperial_gallon;
  return units;
}

void require(bool holds) {
  if (!holds) std::abort();
}

template <class Q>
void judge(const Parsed<Q>& parsed, const Printer& printer) {
  if (!parsed) {
    require(!describe(parsed.error(), "Field").empty());
    return;
  }
  if constexpr (std::is_same_v<Q, double>) {
    require(std::isfinite(*parsed));
    require(!printer.number(*parsed, 2).empty());
  } else {
    require(std::isfinite(to_magnitude(*parsed)));
    require(printer.print(*parsed) != "–");
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const DisplayUnits units = units_for(data[0]);
  const NumberStyle style{(data[0] & 0x80) != 0 ? ',' : '.'};
  const std::string_view typed(reinterpret_cast<const char*>(data) + 1, size - 1);
  const Parser parser{.units = units, .style = style};
  const Printer printer{.units = units, .style = style};
  judge(parser.gauge_pressure(typed), printer);
  judge(parser.pressure_difference(typed), printer);
  judge(parser.temperature(typed), printer);
  judge(parser.temperature_difference(typed), printer);
  judge(parser.volume(typed), printer);
  judge(parser.mass(typed), printer);
  judge(parser.length(typed), printer);
  judge(parser.bore(typed), printer);
  judge(parser.co2(typed), printer);
  judge(parser.gravity(typed), printer);
  judge(parser.fraction(typed), printer);
  judge(parser.duration(typed), printer);
  judge(parser.number(typed), printer);
  return 0;
}
