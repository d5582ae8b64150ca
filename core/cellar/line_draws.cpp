// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/line_draws.h"

#include <algorithm>

namespace ullage::cellar {

namespace {

constexpr std::chrono::days looked_back{120};
constexpr double full_error = 0.05;  // of a keg taken as full when put on
constexpr std::size_t most_kegs = 60;

// A keg's way from full to empty, as far as it went over one line.
class OneKeg {
 public:
  explicit OneKeg(Instant tapped) : tapped_(tapped) {}

  void take(const Entry& e) {
    at_ = e.header.happened_at;
    visit([this](const auto& p) { on(p); }, e.payload);
  }
  [[nodiscard]] std::optional<BeerDraw> drawn(Volume nominal) const {
    if (!emptied_ || *emptied_ <= tapped_ || opened_) return std::nullopt;
    const Volume full = filled_.value_or(nominal);
    if (full.value() <= 0) return std::nullopt;
    return BeerDraw{tapped_, *emptied_,
                    VolumeEstimate(full).with({"kegs taken as full"}, full_error * full.value())};
  }

 private:
  template <class Other>
  void on(const Other&) {}
  void on(const Filled& f) { begins(f.volume); }
  void on(const Received& r) { begins(r.volume); }
  void on(const Found& f) { begins(f.volume); }
  void on(const Tapped&) {
    if (at_ < tapped_) opened_ = true;  // it was on before: not full
  }
  void on(const Untapped&) {
    if (at_ > tapped_ && !emptied_) opened_ = true;
  }
  void on(const Emptied&) {
    if (at_ > tapped_ && !emptied_) emptied_ = at_;
  }
  void begins(const std::optional<Volume>& volume) {
    if (at_ > tapped_) {
      if (!emptied_) opened_ = true;  // nobody logged when it ran empty
      return;
    }
    filled_ = volume;
    opened_ = false;
  }

  Instant tapped_;
  Instant at_{};
  std::optional<Volume> filled_;
  std::optional<Instant> emptied_;
  bool opened_ = false;
};

}  // namespace

std::vector<BeerDraw> draws_on_line(LineId line, Instant until, Lookup& lookup) {
  std::vector<BeerDraw> out;
  const std::span<const Entry* const> story = lookup.story(subject(line));
  for (auto e = story.rbegin(); e != story.rend() && out.size() < most_kegs; ++e) {
    const Instant at = (*e)->header.happened_at;
    if (at < until - looked_back) break;
    const auto* tapped = get_if<Tapped>(&(*e)->payload);
    if (!tapped || at >= until) continue;
    OneKeg keg(at);
    for (const Entry* each : lookup.story(subject(tapped->keg))) keg.take(*each);
    const auto record = lookup.find(tapped->keg);
    if (auto drawn = keg.drawn(record ? record->nominal : Volume{})) out.push_back(*drawn);
  }
  std::reverse(out.begin(), out.end());
  return out;
}

}  // namespace ullage::cellar
