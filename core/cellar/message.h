// SPDX-License-Identifier: GPL-3.0-or-later
//
// Something to tell a person, before it is put into words: which message, and
// the quantities it speaks of. Words, units and time zone are chosen where it is
// shown (core/report/say.h), so switching units changes every sentence.
#pragma once

#include <boost/variant2/variant.hpp>
#include <string>
#include <utility>
#include <vector>

#include "core/cellar/message_keys.h"
#include "core/cellar/time.h"
#include "core/units/estimate.h"
#include "core/units/scales.h"

namespace ullage::cellar {

// A stretch of time in which something will be reached; latest is absent when
// part of the likely range never reaches it.
struct Window {
  Instant earliest{};
  Instant likely{};
  std::optional<Instant> latest;
};

using MessageArg =
    boost::variant2::variant<std::string, std::int64_t, Instant, Date, Window, units::Duration,
                             units::GaugePressure, units::PressureDifference, units::Temperature,
                             units::TemperatureDifference, units::Volume, units::Mass,
                             units::Length, units::Co2Volumes, units::SpecificGravity, units::Abv,
                             units::Fraction, units::Estimate<units::Co2Volumes>,
                             units::Estimate<units::Volume>, units::Estimate<units::GaugePressure>,
                             units::Estimate<units::Temperature>, units::Estimate<units::Mass>>;

struct Message {
  MessageKey key{};
  std::vector<MessageArg> args;
};

template <class... Args>
[[nodiscard]] Message message(MessageKey key, Args&&... args) {
  Message m{key, {}};
  (m.args.emplace_back(std::forward<Args>(args)), ...);
  return m;
}

// Why something typed or asked for was refused: the field (its column name in
// the payload, empty when it is about the act as a whole), which draft of the
// act, and the sentence.
struct Fault {
  std::size_t draft = 0;
  std::string field;
  Message why;
};

}  // namespace ullage::cellar
