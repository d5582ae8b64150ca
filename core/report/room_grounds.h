// SPDX-License-Identifier: GPL-3.0-or-later
//
// The grounds of what the Safety page shows: the air of a place if its bottles
// emptied into it, and published figures beside it. Each answers empty grounds
// where there is no such number.
#pragma once

#include "core/cellar/room_safety.h"
#include "core/report/grounds.h"
#include "core/report/say.h"

namespace ullage::report {

using RoomReasons = Grounds (*)(const cellar::PlaceSafety&, const Speaker&);
[[nodiscard]] Grounds room_co2_grounds(const cellar::PlaceSafety&, const Speaker&);
[[nodiscard]] Grounds room_oxygen_grounds(const cellar::PlaceSafety&, const Speaker&);
[[nodiscard]] Grounds room_flowing_grounds(const cellar::PlaceSafety&, const Speaker&);
[[nodiscard]] Grounds room_wanted_grounds(const cellar::PlaceSafety&, const Speaker&);
[[nodiscard]] Grounds room_leak_grounds(const cellar::PlaceSafety&, const Speaker&);
[[nodiscard]] Grounds limit_grounds(const physics::ExposureLimit&, const cellar::PlaceSafety&,
                                    const Speaker&);

// A share of the air, to two figures; a published one as it was published.
[[nodiscard]] std::string say_share(units::MoleFraction, const Speaker&);
[[nodiscard]] std::string say_published_share(units::MoleFraction, const Speaker&);

}  // namespace ullage::report
