// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/property/status_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/cellar/field_walk.h"
#include "core/units/magnitude.h"

namespace ullage::testing {

namespace {

using namespace cellar;  // NOLINT(google-build-using-namespace): the whole file is about it

std::string txt(const std::string& s) { return s; }
std::string txt(bool b) { return b ? "yes" : "no"; }
std::string txt(std::int64_t n) { return std::to_string(n); }
// Nine digits: sums of errors may be taken in another order.
std::string txt(double v) { return fmt::format("{:.9g}", v); }
std::string txt(Instant t) { return fmt::format("@{}", t.time_since_epoch().count()); }
std::string txt(Date d) { return fmt::format("day {}", d.time_since_epoch().count()); }
template <class Tag>
std::string txt(const Id<Tag>& id) {
  return to_text(id.uuid);
}
std::string txt(const SubjectRef& s) {
  return fmt::format("{}:{}", static_cast<int>(s.kind), to_text(s.uuid));
}
template <class E>
  requires std::is_enum_v<E>
std::string txt(E e) {
  return std::to_string(static_cast<int>(e));
}
template <class Q>
  requires(units::Quantity<Q> && !std::is_arithmetic_v<Q>)
std::string txt(Q q) {
  return txt(units::to_magnitude(q));
}
// An error of one entry alone is named by the entry's sequence, which says
// nothing about the cellar.
std::string without_number(const std::string& source) {
  const auto last = source.find_last_not_of("0123456789");
  const bool numbered =
      last != std::string::npos && last + 1 < source.size() && source[last] == ' ';
  return numbered ? source.substr(0, last) : source;
}
template <class Q>
std::string txt(const units::Estimate<Q>& e) {
  std::vector<std::string> causes;
  for (const auto& c : e.contributions()) {
    causes.push_back(fmt::format("{} {}", without_number(c.source.name), txt(c.half_width)));
  }
  std::sort(causes.begin(), causes.end());
  std::string out = txt(e.value());
  for (const std::string& cause : causes) out += " [" + cause + "]";
  return out;
}
template <class T>
std::string txt(const std::optional<T>& o);
template <class T>
std::string txt(const std::vector<T>& all);

std::string txt(const Window& w) {
  return fmt::format("{}..{}..{}", txt(w.earliest), txt(w.likely), txt(w.latest));
}
// The same in a sentence that names such an error: "Serving dial: reading 36".
std::string said(const std::string& words) {
  const std::string shorter = without_number(words);
  return shorter.ends_with(": reading") ? shorter : words;
}
std::string said(const auto& value) { return txt(value); }
std::string txt(const Message& m) {
  std::string out = fmt::format("m{}(", static_cast<int>(m.key));
  for (const MessageArg& a : m.args) {
    out += visit([](const auto& v) { return said(v); }, a) + "; ";
  }
  return out + ")";
}
std::string txt(const Payload& payload) {
  std::string out = std::string(kind_of(payload)) + "{";
  for_each_field(payload, [&](std::string_view name, const auto& field) {
    out += fmt::format("{}={} ", name, txt(field));
  });
  return out + "}";
}
template <class P>
  requires requires { P::kind; }
std::string txt(const P& payload) {
  return txt(Payload(payload));
}
std::string txt(const InputUsed& i) { return txt(i.what) + " " + txt(i.read); }
std::string txt(const SuggestedTask& t) {
  return t.kind + " " + txt(t.about) + " " + txt(t.prefill);
}
std::string txt(const Advice& a) {
  return fmt::format("advice {} {} {} {} {} {} {}", txt(a.severity), txt(a.about), txt(a.headline),
                     txt(a.detail), txt(a.inputs), txt(a.action), txt(a.because_of));
}
std::string txt(const LifeSpan& s) {
  return fmt::format("{}-{} {} {}", txt(s.from), txt(s.to), txt(s.phase), txt(s.forecast));
}
std::string txt(const DoesntFit& d) { return txt(d.entry) + " " + txt(d.why); }
std::string txt(const PreparationStep& s) {
  return fmt::format("{} {} {} {} {} {}", s.kind, txt(s.entry), txt(s.done_at), txt(s.still_counts),
                     txt(s.result), txt(s.goes_on_from));
}
std::string txt(const Contents& c) {
  return fmt::format("{} {} {} {} {} {} {} {}", txt(c.batch), txt(c.batch_record), txt(c.beer),
                     txt(c.filled_by_us), txt(c.found), txt(c.since), txt(c.abv), txt(c.best_by));
}
std::string txt(const Level& l) {
  return fmt::format("{} {} {} {} {}", txt(l.left), txt(l.measured_at), txt(l.of_brimful),
                     txt(l.runs_out), txt(l.cant_tell));
}
std::string txt(const UptakeBand& b) {
  return fmt::format("{} {} {}", txt(b.low), txt(b.likely), txt(b.high));
}
std::string txt(const UptakeRate& r) {
  return fmt::format("{} {} {} {}", txt(r.usual), txt(r.learned), txt(r.readings),
                     txt(r.readings_fit));
}
std::string txt(const Co2State& c) {
  return fmt::format("{} {} {} {} {} {} {} {} {}", txt(c.now), txt(c.target_low),
                     txt(c.target_high), txt(c.verdict), txt(c.in_range), txt(c.overshoots),
                     txt(c.settles_at), txt(c.uptake), txt(c.cant_tell));
}
std::string txt(const GasOnKeg& g) {
  return fmt::format("{} {} {} {} {} {} {} {}", txt(g.on), txt(g.set), txt(g.since),
                     txt(g.regulator), txt(g.co2), txt(g.should_be), txt(g.should_be_half_width()),
                     txt(g.unvented));
}
std::string txt(const LineLock& l) {
  return fmt::format("{} {} {} {} {} {} {}", txt(l.line), l.line_name, l.agent, txt(l.agent_kind),
                     txt(l.since), l.by, txt(l.entry));
}
std::string txt(const Readiness& r) {
  return fmt::format("{} {} {} {} {}", txt(r.kind), txt(r.when), txt(r.headline), txt(r.reasons),
                     txt(r.to_do));
}
std::string txt(const KegStatus& k) { return text_of(k); }
std::string txt(const LineStatus& l) {
  return fmt::format("{} keg {} lock {} cleaned {} due {} {} state {} advice {}", txt(l.record),
                     txt(l.keg), txt(l.lock), txt(l.last_cleaned), txt(l.clean_due), txt(l.overdue),
                     txt(l.state), txt(l.advice));
}
std::string txt(const PlaceStatus& p) {
  return fmt::format("{} {} {} kegs {}", txt(p.record), txt(p.temperature), txt(p.read_at), p.kegs);
}
std::string txt(const BottleStatus& b) {
  return fmt::format("{} {} {} {}", txt(b.record), txt(b.gas_left), txt(b.weighed_at),
                     txt(b.feeds));
}

template <class T>
std::string txt(const std::optional<T>& o) {
  return o ? txt(*o) : std::string("-");
}
template <class T>
std::string txt(const std::vector<T>& all) {
  std::string out = "[";
  for (const T& one : all) out += txt(one) + ", ";
  return out + "]";
}

class Lines {
 public:
  template <class T>
  void add(const char* name, const T& value) {
    text_ += fmt::format("{}: {}\n", name, txt(value));
  }
  std::string take() && { return std::move(text_); }

 private:
  std::string text_;
};

}  // namespace

std::string text_of(const KegStatus& k) {
  Lines out;
  out.add("record", k.record);
  out.add("registered", k.registered_now);
  out.add("place", k.place);
  out.add("phase", k.phase);
  out.add("phase since", k.phase_since);
  out.add("contents", k.contents);
  out.add("level", k.level);
  out.add("co2", k.co2);
  out.add("temperature", k.beer_temperature);
  out.add("gas", k.gas);
  out.add("line", k.line);
  out.add("lock", k.lock);
  out.add("quarantined", k.quarantined);
  out.add("quarantined since", k.quarantined_since);
  out.add("lent to", k.lent_to);
  out.add("cold since", k.cold_since);
  out.add("preparation", k.preparation);
  out.add("hold", k.hold_result);
  out.add("hold failed", k.hold_failed);
  out.add("leaks", k.leaks);
  out.add("readiness", k.readiness);
  out.add("state", k.state);
  out.add("next step", k.next_step);
  out.add("advice", k.advice);
  out.add("life", k.life);
  out.add("does not fit", k.doesnt_fit);
  out.add("rank", k.use_next_rank);
  return std::move(out).take();
}

std::string text_of(const CellarStatus& s) {
  Lines out;
  out.add("now", s.now);
  out.add("cellar", s.cellar);
  out.add("kegs", s.kegs);
  out.add("lines", s.lines);
  out.add("places", s.places);
  out.add("bottles", s.bottles);
  out.add("beers", s.beers);
  out.add("batches", s.batches);
  out.add("regulators", s.regulators);
  out.add("instruments", s.instruments);
  out.add("attention", s.attention);
  return std::move(out).take();
}

std::string difference(const std::string& a, const std::string& b) {
  if (a == b) return {};
  const auto at = std::mismatch(a.begin(), a.end(), b.begin(), b.end()).first - a.begin();
  const auto from = static_cast<std::size_t>(std::max<std::ptrdiff_t>(at - 150, 0));
  return a.substr(from, 300) + "\nagainst\n" + b.substr(from, 300);
}

}  // namespace ullage::testing
