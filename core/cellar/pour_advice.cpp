// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/pour_advice.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/cellar/suggest.h"
#include "core/physics/gas_blend.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

constexpr double fastest_ml_s = 90;
constexpr double slowest_ml_s = 30;
constexpr double shrugged_off_psi = 2.0;
constexpr double dial_worth_saying = 0.15;  // volumes
constexpr double spoils_a_glass_litres = 0.03;
constexpr double shortest_hose_m = 0.5;
constexpr double longest_hose_m = 15;
constexpr double cooling_still_k = 1.5;
constexpr double rating_share = 0.8;
constexpr double altitude_worth_saying_psi = 1.0;
constexpr std::chrono::days idle_long{7};
constexpr std::chrono::hours cold_least{24};

class Adviser {
 public:
  Adviser(const PourSetting& s, const PourOutlook& o, const KegStatus* keg,
          std::optional<Instant> now)
      : s_(s), o_(o), keg_(keg), now_(now) {}

  PourAdvice all() {
    at_rest();
    course();
    speed();
    warm();
    untold_places();
    blend();
    rating();
    altitude();
    story();
    return std::move(out_);
  }

 private:
  Advice item(Severity severity, Message headline, std::optional<Message> detail,
              std::optional<SuggestedTask> action = {}) {
    Advice a;
    a.severity = severity;
    a.about = subject(s_.line_id);
    a.headline = std::move(headline);
    a.detail = std::move(detail);
    a.action = std::move(action);
    a.inputs.push_back({message(MessageKey::input_gas, s_.pressure.value()), s_.gas_since});
    a.inputs.push_back({message(MessageKey::input_beer_at, s_.beer), s_.place_read});
    if (s_.timed_pours > 0) {
      a.inputs.push_back({message(MessageKey::input_timed_pours, s_.timed_pours), s_.last_pour});
    } else {
      a.inputs.push_back({message(MessageKey::input_hose_untimed), {}});
    }
    return a;
  }
  void line(Advice a) { out_.of_line.push_back(std::move(a)); }
  void keg(Advice a) { out_.also_of_keg.push_back(std::move(a)); }

  SuggestedTask set_gas(GaugePressure to) const {
    GasSet g;
    g.pressure = to;
    g.purpose = GasPurpose::serving;
    return keg_task<GasSet>(s_.keg, g);
  }

  // No all-clear where nobody knows how warm it is.
  void untold_places() {
    if (o_.untold_places.empty()) return;
    std::optional<SuggestedTask> read;
    for (std::size_t i = 0; i < s_.line.pieces.size() && !read; ++i)
      if (const auto& place = s_.line.pieces[i].place; place && !s_.told(i))
        read = SuggestedTask{"temperature_read", subject(*place), {}, {}};
    line(item(Severity::info,
              message(MessageKey::adv_pour_untold, o_.untold_places, o_.standing_untold),
              message(MessageKey::adv_pour_untold_detail), std::move(read)));
  }

  // Where the beer stands as cold as in the keg. Warmer places are `warm`.
  void at_rest() {
    const physics::StandingPlace* worst = nullptr;
    for (const physics::StandingPlace& place : o_.places) {
      if (place.temperature.value() > s_.beer.value().value() + 2.0) continue;
      if (!worst || place.margin.value() < worst->margin.value()) worst = &place;
    }
    if (!worst || !s_.co2) return;
    const double surely = units::in_psi(worst->margin.value()) +
                          units::in_psi(units::pascals(worst->margin.half_width()));
    if (surely >= -shrugged_off_psi) return;
    // With no range to aim at: what keeps in what the beer has.
    const auto holds = units::propagate(
        [&](GaugePressure needed) -> GaugePressure {
          return s_.pressure.value() + (needed - worst->pressure);
        },
        worst->needed);
    const auto set = o_.should_be_known.value_or(holds);
    keg(item(Severity::advice,
             message(MessageKey::adv_pour_breaks_out, worst->pressure, worst->needed, *s_.co2),
             message(MessageKey::adv_pour_raise_detail, set), set_gas(set.value())));
  }

  void course() {
    if (!o_.settles || !s_.target_low || !s_.target_high || !o_.should_be_known) return;
    const auto& should_be = *o_.should_be_known;
    if (o_.settles->low() > *s_.target_high) {
      Message headline = message(MessageKey::adv_pour_over_gasses, s_.pressure.value(), *o_.settles,
                                 *s_.target_high);
      if (const auto over = keg_ ? over_gassed(s_, *keg_) : std::nullopt) {
        headline = message(MessageKey::adv_pour_over_gasses_by, s_.pressure.value(), over->then,
                           *s_.target_high, over->in);
      }
      keg(item(Severity::advice, std::move(headline),
               message(MessageKey::adv_pour_lower_detail, should_be), set_gas(should_be.value())));
    } else if (o_.settles->high() < *s_.target_low) {
      keg(item(
          Severity::advice,
          message(MessageKey::adv_pour_goes_flat, s_.pressure.value(), *o_.settles, *s_.target_low),
          message(MessageKey::adv_pour_raise_detail, should_be), set_gas(should_be.value())));
    } else if (o_.settles->half_width() > dial_worth_saying &&
               (o_.settles->value() < *s_.target_low || o_.settles->value() > *s_.target_high)) {
      cant_tell(should_be);
    }
  }
  // By what makes most of the width: a better dial helps only where it is the dial.
  void cant_tell(const units::Estimate<GaugePressure>& should_be) {
    const auto& settles = present(o_.settles);
    const units::Contribution* widest = settles.largest();
    const auto is_of = [&](const auto& estimate) {
      const auto& parts = estimate.contributions();
      return std::any_of(parts.begin(), parts.end(),
                         [&](const units::Contribution& c) { return c.source == widest->source; });
    };
    const MessageKey narrow = is_of(s_.pressure) ? MessageKey::adv_pour_cant_tell_detail
                              : is_of(s_.beer)   ? MessageKey::adv_pour_cant_tell_warmth_detail
                                                 : MessageKey::adv_pour_cant_tell_else_detail;
    keg(item(
        Severity::info,
        message(MessageKey::adv_pour_cant_tell, settles.low(), settles.high(), widest->source.name),
        message(narrow, should_be)));
  }

  void speed() {
    if (s_.pour_contradicts) {
      line(item(Severity::advice, message(MessageKey::adv_pour_contradicts, s_.line_name),
                message(MessageKey::adv_pour_contradicts_detail)));
      return;
    }
    if (!o_.flow) {
      if (o_.cant_tell)
        line(item(Severity::advice, *o_.cant_tell,
                  o_.should_be ? std::optional(message(MessageKey::adv_pour_no_run_detail))
                               : std::nullopt));
      return;
    }
    const bool fast = units::in_litres_per_second(o_.flow->low()) * 1e3 > fastest_ml_s;
    const bool slow = units::in_litres_per_second(o_.flow->high()) * 1e3 < slowest_ml_s;
    if (!fast && !slow) return;
    const physics::PourTime& glass = present(o_.glass_time);
    const Message headline = message(fast ? MessageKey::adv_pour_fast : MessageKey::adv_pour_slow,
                                     s_.glass, glass.likely, glass.low, glass.high);
    line(item(Severity::advice, headline, speed_detail(fast), change_line()));
  }
  // Its form has the pieces of the hose with it.
  std::optional<SuggestedTask> change_line() const {
    return SuggestedTask{"line_record", subject(s_.line_id), {}, {}};
  }
  // The length that would be right; where that is no hose anybody lays, the bore;
  // a long slow line wants more pressure, and with it a blend.
  std::optional<Message> speed_detail(bool fast) const {
    const bool fits = o_.right_length && units::in_metres(*o_.right_length) >= shortest_hose_m &&
                      units::in_metres(*o_.right_length) <= longest_hose_m;
    if (fits && o_.at_hand && o_.at_hand_time)
      return message(
          fast ? MessageKey::adv_pour_length_detail : MessageKey::adv_pour_shorten_detail,
          *o_.right_length, *o_.at_hand, *o_.at_hand_time,
          o_.shortest_right.value_or(*o_.right_length),
          o_.longest_right.value_or(*o_.right_length));
    if (!fast && o_.right_pressure && o_.should_be && *o_.right_pressure > *o_.should_be) {
      const auto share = physics::blend_for(*o_.should_be, *o_.right_pressure, s_.ambient.value());
      if (share && s_.co2_share.count() == 1)
        return message(MessageKey::adv_pour_blend_detail, *o_.right_pressure,
                       units::fraction(share->count()));
    }
    if (o_.right_bore) return message(MessageKey::adv_pour_bore_detail, *o_.right_bore);
    return std::nullopt;
  }

  void warm() {
    if (units::in_litres(o_.standing_warm.value()) < spoils_a_glass_litres || !o_.warmest) return;
    const bool breaks =
        std::any_of(o_.places.begin(), o_.places.end(), [&](const physics::StandingPlace& p) {
          return p.verdict == physics::AtRest::breaks_out &&
                 p.temperature.value() == o_.warmest->value();
        });
    line(item(breaks ? Severity::advice : Severity::info,
              message(MessageKey::adv_pour_warm, o_.standing_warm, *o_.warmest, o_.warmest_place),
              message(MessageKey::adv_pour_warm_detail)));
  }

  void blend() {
    if (s_.co2_share.count() >= 0.999 || !o_.settles || !s_.target_low || !o_.right_blend) return;
    const bool off =
        o_.settles->high() < *s_.target_low || o_.settles->low() > present(s_.target_high);
    if (!off) return;
    line(item(Severity::advice,
              message(MessageKey::adv_pour_blend, units::fraction(s_.co2_share.count()),
                      s_.pressure.value(), *o_.settles),
              message(MessageKey::adv_pour_right_blend_detail, s_.pressure.value(),
                      units::fraction(o_.right_blend->value().count()),
                      units::fraction(std::max(0.0, o_.right_blend->low().count())),
                      units::fraction(std::min(1.0, o_.right_blend->high().count())))));
  }

  void rating() {
    if (!s_.rated || units::in_pascals(*s_.rated) <= 0) return;
    if (units::in_pascals(s_.pressure.value()) <= rating_share * units::in_pascals(*s_.rated))
      return;
    keg(item(s_.pressure.value() > *s_.rated ? Severity::danger : Severity::warning,
             message(MessageKey::bad_near_rated, s_.pressure.value(), *s_.rated),
             message(MessageKey::bad_near_rated_detail)));
  }

  void altitude() {
    const double above = units::pascals_per_atmosphere - units::in_pascals(s_.ambient.value());
    if (above < altitude_worth_saying_psi * units::pascals_per_psi) return;
    line(item(Severity::info,
              message(MessageKey::adv_pour_altitude, s_.altitude, units::pascals(above)),
              std::nullopt));
  }

  // What only the journal knows.
  void story() {
    if (!keg_ || !now_) return;
    const bool rested = !keg_->cold_since || *now_ - *keg_->cold_since >= cold_least;
    if (keg_->contents && !keg_->contents->filled_by_us && !rested) {
      line(item(Severity::advice,
                message(MessageKey::adv_pour_not_cold_long, s_.keg_tag, *keg_->cold_since),
                message(MessageKey::adv_pour_not_cold_detail)));
    } else {
      still_cooling();
    }
    const Instant moved =
        std::max({s_.last_pour.value_or(Instant{}), s_.last_drawn.value_or(Instant{}),
                  keg_->phase_since.value_or(Instant{})});
    if (moved != Instant{} && *now_ - moved > idle_long) {
      line(item(Severity::info, message(MessageKey::adv_pour_idle, moved),
                message(MessageKey::adv_pour_idle_detail, o_.contents)));
    }
  }
  // Against the place as it is, read or set: a box that never gets as cold as it is
  // set to is no keg still warm.
  void still_cooling() {
    if (!s_.keg_place) return;
    const auto above = units::propagate(
        [](Temperature beer, Temperature place) -> units::TemperatureDifference {
          return beer - place;
        },
        s_.beer, *s_.keg_place);
    if (units::in_kelvin(above.low()) <= cooling_still_k) return;
    line(item(Severity::advice,
              message(MessageKey::adv_pour_still_warm, s_.keg_tag, s_.beer, *s_.keg_place),
              message(MessageKey::adv_pour_not_cold_detail)));
  }

  const PourSetting& s_;
  const PourOutlook& o_;
  const KegStatus* keg_;
  std::optional<Instant> now_;
  PourAdvice out_;
};

}  // namespace

PourAdvice pour_advice(const PourSetting& s, const PourOutlook& o, const KegStatus* keg,
                       std::optional<Instant> now) {
  return Adviser(s, o, keg, now).all();
}

}  // namespace ullage::cellar
