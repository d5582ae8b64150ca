// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/values.h"

#include <cmath>
#include <type_traits>

#include "core/units/magnitude.h"
#include "core/units/number_text.h"
#include "core/units/shown.h"

namespace ullage::report::slate {
namespace {

using units::DisplayUnits;
using units::Printer;

constexpr double parts_shown_as_percent = 0.01;

struct PrintValue {
  const Printer& p;
  std::string operator()(Count c) const { return units::write_number(c.number, {0, 2}, p.style); }
  std::string operator()(Choice c) const { return std::to_string(c.index + 1); }
  std::string operator()(units::MoleFraction y) const {
    if (y.count() >= parts_shown_as_percent) {
      return units::write_number(y.count() * 100, {0, 1}, p.style) + " %";
    }
    const double parts = y.count() * 1e6;
    return units::write_to_place(parts, parts >= 1000 ? 1 : 0, p.style) + " ppm";
  }
  std::string operator()(physics::OxygenConcentration c) const {
    return units::write_number(c.count(), {2, 2}, p.style) + " mg/L";
  }
  template <class Q>
  std::string operator()(Q q) const {
    return p.print(q);
  }
};

template <class Q>
concept Ranged = requires(const Printer& p, Q q) { p.print_range(q, q); };

struct DrawNumber {
  const DisplayUnits& u;
  double operator()(Count c) const { return c.number; }
  double operator()(Choice c) const { return c.index; }
  double operator()(units::MoleFraction y) const { return y.count() * 1e6; }
  double operator()(physics::OxygenConcentration c) const { return c.count(); }
  double operator()(units::Duration d) const { return units::in_days(d); }
  double operator()(units::Mass m) const { return units::shown(u, units::kilograms(1)).in(m); }
  double operator()(units::Volume v) const { return units::shown(u, units::litres(10)).in(v); }
  template <class Q>
  double operator()(Q q) const {
    return units::shown(u, q).in(q);
  }
};

struct DrawUnit {
  const DisplayUnits& u;
  std::string operator()(Count) const { return {}; }
  std::string operator()(Choice) const { return {}; }
  std::string operator()(units::MoleFraction) const { return "ppm"; }
  std::string operator()(physics::OxygenConcentration) const { return "mg/L"; }
  std::string operator()(units::Duration) const { return "days"; }
  std::string operator()(units::Mass) const { return units::shown(u, units::kilograms(1)).unit; }
  std::string operator()(units::Volume) const { return units::shown(u, units::litres(10)).unit; }
  template <class Q>
  std::string operator()(Q q) const {
    return units::shown(u, q).unit;
  }
};

struct ValueMagnitude {
  double operator()(Count c) const { return c.number; }
  double operator()(Choice c) const { return c.index; }
  template <class Q>
  double operator()(Q q) const {
    return units::to_magnitude(q);
  }
};

struct SameKind {
  double magnitude;
  Value operator()(Count) const { return Count{magnitude}; }
  Value operator()(Choice) const { return Choice{static_cast<int>(magnitude)}; }
  template <class Q>
  Value operator()(Q) const {
    return units::from_magnitude<Q>(magnitude);
  }
};

}  // namespace

double magnitude_of(const Value& value) { return visit(ValueMagnitude{}, value); }
bool is_finite(const Value& value) { return std::isfinite(magnitude_of(value)); }
Value with_magnitude(const Value& like, double magnitude) {
  return visit(SameKind{magnitude}, like);
}

std::string print(const Value& value, const Printer& printer) {
  return visit(PrintValue{printer}, value);
}

std::string print_share(const units::Estimate<units::MoleFraction>& e, const Printer& printer) {
  if (!(e.half_width() > 0)) return print(Value(e.value()), printer);
  const bool percent = e.value().count() >= parts_shown_as_percent;
  const double scale = percent ? 100 : 1e6;
  return units::value_with_error(e.value().count() * scale, e.half_width() * scale, printer.style) +
         (percent ? " %" : " ppm");
}

std::string print_bore(const Value& value, const Printer& printer) {
  const auto* length = get_if<units::Length>(&value);
  return length ? printer.print_bore(*length) : print(value, printer);
}

std::string print_range(const Value& low, const Value& high, const Printer& printer) {
  return visit(
      [&](auto from) -> std::string {
        using Q = decltype(from);
        const Q* to = get_if<Q>(&high);
        if constexpr (Ranged<Q>) {
          if (to) return printer.print_range(from, *to);
        }
        std::string first = print(low, printer);
        const std::string last = print(high, printer);
        if (first == last) return first;
        // "835 to 4490 ppm": the unit once where both have it.
        const auto unit = first.rfind(' ');
        const bool same = unit != std::string::npos && last.rfind(' ') != std::string::npos &&
                          first.substr(unit) == last.substr(last.rfind(' '));
        return (same ? first.substr(0, unit) : first) + " to " + last;
      },
      low);
}

double drawn_number(const Value& value, const DisplayUnits& u) {
  return visit(DrawNumber{u}, value);
}
std::string drawn_unit(const Value& value, const DisplayUnits& u) {
  return visit(DrawUnit{u}, value);
}

}  // namespace ullage::report::slate
