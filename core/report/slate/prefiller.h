// SPDX-License-Identifier: GPL-3.0-or-later
//
// Puts a keg's figures into the fields that a computation has. What the keg does not
// tell is never left looking like its own figure: a field in full view is left empty, a
// further one keeps what is assumed, and both are said with the offer.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/report/slate/prefill.h"

namespace ullage::report::slate {

class Prefiller {
 public:
  Prefiller(std::string_view key, const KegSubject& subject);

  // A figure that the keg should have.
  Prefiller& put(std::string_view field, const std::optional<Value>& value, InputOrigin origin,
                 std::optional<cellar::Instant> at = {});
  // A figure that it may have: without it the usual one is as good.
  Prefiller& put_known(std::string_view field, const std::optional<Value>& value,
                       InputOrigin origin, std::optional<cellar::Instant> at = {});
  Prefiller& blank(std::string_view field);

  // What nearly every computation about a keg asks for.
  Prefiller& keg();
  Prefiller& temperature_error();  // how far off the beer's temperature may be
  Prefiller& gas();
  Prefiller& dial_error();  // how far off the dial of its gas may be
  Prefiller& range();
  // Its CO2 with the ± it has, in the fields of these names.
  Prefiller& co2_now(std::string_view field, std::string_view error);
  // How fast this keg is, by its readings where it has any.
  Prefiller& pace();
  [[nodiscard]] std::optional<Value> middle_of_range() const;

  [[nodiscard]] Offer offer(std::string label) const;

 private:
  [[nodiscard]] const Field* find(std::string_view field) const;
  [[nodiscard]] std::string label(const Field& f) const;
  Prefiller& fill(const Field& f, const Value& value, InputOrigin origin,
                  std::optional<cellar::Instant> at);

  const Computation& computation_;
  const KegSubject& s_;
  Inputs in_;
  std::vector<std::string> to_fill_in_, assumed_;
};

// Offers about the line of a keg on tap, its level and the kegs on its regulator: what
// the journal knows enough for (prefill_lines.cpp).
void add_level_offers(const KegSubject&, std::vector<Offer>&);
void add_line_offers(const KegSubject&, std::vector<Offer>&);

}  // namespace ullage::report::slate
