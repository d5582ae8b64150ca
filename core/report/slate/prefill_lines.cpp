// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg on tap: how long it lasts, what glasses leave in it, its line, and what stands on
// the same regulator. Each where the journal knows what is asked.
#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <string>
#include <utility>

#include "core/cellar/pour_state.h"
#include "core/report/slate/prefiller.h"
#include "core/units/present.h"

namespace ullage::report::slate {
namespace {

using cellar::KegStatus;
using cellar::LevelTold;

// --- level

const auto least_drawn = units::litres(0.05);

// The first that was told of what it held, as the start of what was drawn.
const LevelTold* first_told(const KegStatus& keg) {
  const auto& told = keg.level.told;
  const auto at = std::find_if(told.begin(), told.end(), [](const LevelTold& t) {
    return t.what == LevelTold::What::in_it_at_first || t.what == LevelTold::What::left;
  });
  return at == told.end() ? nullptr : &*at;
}

// Since when beer was drawn: put on tap, or told of later than that.
std::optional<cellar::Instant> drawn_since(const KegSubject& s, const LevelTold& first) {
  if (!s.keg.phase_since) return std::nullopt;
  return std::max(*s.keg.phase_since, first.at);
}

std::optional<Value> weekday_of(const Speaker& speaker) {
  if (speaker.calendar == nullptr) return std::nullopt;
  const std::chrono::weekday day(speaker.calendar->date_of(speaker.now));
  return Value(Choice{static_cast<int>(day.iso_encoding()) - 1});  // Monday first
}

void add_run_out(const KegSubject& s, std::vector<Offer>& offers) {
  const LevelTold* first = first_told(s.keg);
  const auto& left = s.keg.level.left;
  const auto since = first ? drawn_since(s, *first) : std::nullopt;
  if (!left || !since) return;
  // Of which nothing was drawn yet, nobody can tell how long it lasts.
  const units::Volume drawn = first->amount.value() - left->value();
  if (drawn < least_drawn) return;
  Prefiller p("run_out", s);
  p.put("left", Value(left->value()), InputOrigin::worked_out, s.keg.level.measured_at)
      .put("drawn", Value(drawn), InputOrigin::worked_out, first->at)
      .put("over", Value(cellar::between(*since, s.speaker.now)), InputOrigin::worked_out, since)
      .put_known("weekday", weekday_of(s.speaker), InputOrigin::worked_out)
      .put_known("left_error", Value(left->error()), InputOrigin::worked_out)
      .put_known(
          "drawn_error",
          Value(units::cubic_metres(std::hypot(left->half_width(), first->amount.half_width()))),
          InputOrigin::worked_out);
  offers.push_back(p.offer("When it runs out"));
}

// From what is in it now; the glasses are the person's to count.
void add_glasses(const KegSubject& s, std::vector<Offer>& offers) {
  Prefiller p("left_by_glasses", s);
  p.keg().put("glasses", std::nullopt, InputOrigin::typed);
  offers.push_back(p.offer("What glasses leave in it"));
}

// --- its line

Choice material_choice(cellar::LineMaterial m) {
  using cellar::LineMaterial;
  constexpr std::array in_the_field{LineMaterial::vinyl, LineMaterial::barrier,
                                    LineMaterial::polyethylene, LineMaterial::stainless,
                                    LineMaterial::other};
  const auto at = std::find(in_the_field.begin(), in_the_field.end(), m);
  return {static_cast<int>(at - in_the_field.begin())};
}

// A line as the computations have it: hoses in a row, all that rises, all fittings.
struct LineFigures {
  std::vector<physics::Hose> hoses;
  units::Length rise = units::metres(0);
  units::PressureDifference fittings = units::psi(0);
};
LineFigures figures_of(const cellar::LineSetUp& line) {
  LineFigures out;
  for (const physics::LinePart& part : line.parts) {
    if (const auto* hose = get_if<physics::Hose>(&part)) {
      out.hoses.push_back(*hose);
      out.rise += hose->rise;
    } else {
      out.fittings += get<physics::Fitting>(part).loss;
    }
  }
  return out;
}

class LineOffers {
 public:
  LineOffers(const KegSubject& s, const cellar::PourSetting& setting, std::vector<Offer>& offers)
      : s_(s), setting_(setting), line_(figures_of(setting.line)), offers_(offers) {}

  void add() {
    constexpr std::size_t most_pieces = 3;
    if (line_.hoses.size() == 1) {
      offers_.push_back(one_hose("pour").offer("How fast its line pours"));
      offers_.push_back(one_hose("line_length").offer("How long its hose must be"));
      offers_.push_back(one_hose("line_pressure").offer("What pressure its line needs"));
      // The watch is the person's to read.
      offers_.push_back(one_hose("timed_pour")
                            .put("seconds", std::nullopt, InputOrigin::typed)
                            .offer("Its hose’s bore by a timed pour"));
    } else if (line_.hoses.size() <= most_pieces) {
      offers_.push_back(pieces().offer("How fast its line pours"));
    }
    add_foaming();
  }

 private:
  Prefiller of_line(std::string_view key) const {
    Prefiller p(key, s_);
    const auto typed = InputOrigin::typed;
    p.gas()
        .put("material", Value(material_choice(setting_.line.hose_piece().material)), typed)
        .put("rise", Value(line_.rise), typed)
        .put("fittings", Value(line_.fittings), typed)
        .put("temperature", Value(setting_.beer.value()), InputOrigin::worked_out)
        .put_known("glass", Value(setting_.glass), typed)
        .temperature_error()
        .dial_error();
    return p;
  }
  Prefiller one_hose(std::string_view key) const {
    const physics::Hose& hose = line_.hoses.front();
    return of_line(key)
        .put("length", Value(hose.length), InputOrigin::typed)
        .put("bore", Value(hose.bore), InputOrigin::typed);
  }
  Prefiller pieces() const {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 3> keys{
        {{"length", "bore"}, {"length2", "bore2"}, {"length3", "bore3"}}};
    Prefiller p = of_line("line_pieces");
    for (std::size_t i = 0; i < keys.size(); ++i) {
      const auto& [length, bore] = keys.at(i);
      if (i < line_.hoses.size()) {
        p.put(length, Value(line_.hoses[i].length), InputOrigin::typed)
            .put(bore, Value(line_.hoses[i].bore), InputOrigin::typed);
      } else {
        p.blank(length).blank(bore);
      }
    }
    return p;
  }

  // At the warmest place that somebody told of; how high that is is where its hose ends.
  void add_foaming() const {
    std::optional<std::size_t> warmest;
    units::Length height = units::metres(0), up = units::metres(0);
    for (std::size_t i = 0; i < setting_.line.parts.size(); ++i) {
      const auto* hose = get_if<physics::Hose>(&setting_.line.parts[i]);
      if (hose == nullptr) continue;
      up += hose->rise;
      const bool warmer =
          !warmest || setting_.standing[i].value() > setting_.standing[*warmest].value();
      if (!setting_.told(i) || !warmer) continue;
      warmest = i;
      height = up;
    }
    if (!warmest || !setting_.co2) return;
    Prefiller p("break_out", s_);
    p.keg().gas().dial_error();
    p.co2_now("co2", "co2_error");
    p.put("place", Value(setting_.standing[*warmest].value()), InputOrigin::read,
          setting_.place_read);
    p.put("rise", Value(height), InputOrigin::typed);
    p.put_known("thermometer", Value(setting_.standing[*warmest].error()), InputOrigin::worked_out);
    offers_.push_back(p.offer("Whether it foams in its line"));
  }

  const KegSubject& s_;
  const cellar::PourSetting& setting_;
  LineFigures line_;
  std::vector<Offer>& offers_;
};

// --- kegs on one regulator

void add_shared(const KegSubject& s, std::vector<Offer>& offers) {
  constexpr std::array<std::string_view, 4> beers{"", "2", "3", "4"};
  std::vector<const KegStatus*> kegs{&s.keg};
  for (const KegStatus* other : cellar::fed_with(s.keg, s.cellar)) {
    if (other->co2.target_low && other->co2.target_high && other->beer_temperature)
      kegs.push_back(other);
  }
  const bool known = s.keg.co2.target_low && s.keg.co2.target_high && s.keg.beer_temperature;
  if (!known || kegs.size() < 2 || kegs.size() > beers.size()) return;
  Prefiller p("one_regulator", s);
  p.keg().dial_error();
  for (std::size_t i = 0; i < beers.size(); ++i) {
    const auto key = [&](const char* name) { return name + std::string(beers.at(i)); };
    if (i >= kegs.size()) {
      for (const char* name : {"low", "high", "temperature"}) p.blank(key(name));
      continue;
    }
    const KegStatus& k = *kegs[i];
    p.put(key("low"), Value(present(k.co2.target_low)), InputOrigin::typed)
        .put(key("high"), Value(present(k.co2.target_high)), InputOrigin::typed)
        .put(key("temperature"), Value(present(k.beer_temperature).value()),
             InputOrigin::worked_out);
    if (k.co2.now) p.put_known(key("now"), Value(k.co2.now->value()), InputOrigin::worked_out);
  }
  offers.push_back(p.offer("One regulator for what hangs on it"));
}

}  // namespace

void add_level_offers(const KegSubject& s, std::vector<Offer>& offers) {
  if (s.keg.phase != cellar::Phase::on_tap) return;
  add_run_out(s, offers);
  if (s.keg.level.left) add_glasses(s, offers);
}

void add_line_offers(const KegSubject& s, std::vector<Offer>& offers) {
  add_shared(s, offers);
  const cellar::LineStatus* line = s.keg.line ? s.cellar.find(s.keg.line->line) : nullptr;
  if (line == nullptr || !line->pour) return;
  LineOffers(s, line->pour->setting, offers).add();
}

}  // namespace ullage::report::slate
