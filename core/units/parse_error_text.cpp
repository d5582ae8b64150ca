// SPDX-License-Identifier: GPL-3.0-or-later
#include <string>

#include "core/units/parsing.h"

namespace ullage::units {

namespace {

// "psi, bar, kPa" -> "psi, bar or kPa"
std::string as_choice(const std::string& list) {
  const std::size_t last = list.rfind(", ");
  if (last == std::string::npos) return list;
  return list.substr(0, last) + " or " + list.substr(last + 2);
}

std::string use_one_of(const ParseError& error) {
  return error.accepted_units.empty() ? " Type the number alone."
                                      : " Use " + as_choice(error.accepted_units) + ".";
}

}  // namespace

std::string describe(const ParseError& error, std::string_view field) {
  const std::string quoted = "“" + error.typed + "”";
  switch (error.fault) {
    case ParseFault::empty:
      return (field.empty() ? std::string("A value") : std::string(field)) + " is missing.";
    case ParseFault::not_a_number:
      return quoted + " is not a number I can read.";
    case ParseFault::ambiguous_number:
    case ParseFault::ambiguous_unit:
      return quoted + " can be read two ways. Type " + error.reading + ".";
    case ParseFault::unknown_unit:
      return quoted + " has a unit I don't know." + use_one_of(error);
    case ParseFault::missing_unit:
      return quoted + " needs a unit." + use_one_of(error);
    case ParseFault::wrong_dimension:
      return quoted + " is " + error.reading + "." + use_one_of(error);
    case ParseFault::out_of_range:
      return quoted + " is outside what is possible here.";
  }
  return quoted + " is not a value I can read.";
}

}  // namespace ullage::units
