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

// A share of the air with its error ("6.2 ± 0.7 %"), the plain value where the error
// is not known; what a leak settles at in ppm, or at most that where it may be none.
[[nodiscard]] std::string say_share(const std::optional<cellar::ShareEstimate>&,
                                    units::MoleFraction plain, const Speaker&);
[[nodiscard]] std::string say_leak_share(const cellar::ShareEstimate&, const Speaker&);
[[nodiscard]] std::string say_room(const cellar::VolumeEstimate&, const Speaker&);  // "41 m³ ± 5 %"

// A share of the air, to two figures; a published one as it was published.
[[nodiscard]] std::string say_share(units::MoleFraction, const Speaker&);
[[nodiscard]] std::string say_published_share(units::MoleFraction, const Speaker&);

}  // namespace ullage::report
