// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/gas_draws.h"

#include <algorithm>
#include <span>
#include <utility>

#include "core/cellar/keg_story.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

bool begins_filling(const Entry& e) {
  const auto* found = get_if<Found>(&e.payload);
  return holds_alternative<Filled>(e.payload) || holds_alternative<Received>(e.payload) ||
         (found && found->contents == FoundContents::beer);
}
bool ends_filling(const Entry& e) {
  return holds_alternative<Emptied>(e.payload) || holds_alternative<Filled>(e.payload) ||
         holds_alternative<Received>(e.payload) || holds_alternative<Found>(e.payload);
}
// Found with beer still in it was not emptied: somebody looked again.
std::optional<Instant> emptied_by(const Entry& end) {
  const auto* found = get_if<Found>(&end.payload);
  if (found && found->contents == FoundContents::beer) return std::nullopt;
  return end.header.happened_at;
}

// Where draws within a filling are cut, its beginning included where the grid
// begins later.
std::vector<Instant> moments_within(const std::vector<Instant>& grid, Instant begin, Instant end) {
  std::vector<Instant> out{std::max(begin, grid.front())};
  for (const Instant m : grid) {
    if (m > begin && m < end) out.push_back(m);
  }
  return out;
}

}  // namespace

// One keg's story on its way, and the fold that tells how past fillings were.
class KegDraws::Walk {
 public:
  Walk(const KegTimeline& now, const Journal& journal, const PlaceLookup& places,
       SourceTable& sources)
      : now_(now), journal_(journal), places_(places), sources_(sources), lookup_(journal) {
    story_ = lookup_.story(subject(now.record.keg));
  }

  [[nodiscard]] const KegTimeline& now() const { return now_; }
  [[nodiscard]] std::span<const Entry* const> story() const { return story_; }
  [[nodiscard]] Lookup& lookup() { return lookup_; }
  [[nodiscard]] const Journal& journal() const { return journal_; }
  [[nodiscard]] SourceTable& sources() { return sources_; }
  // The entry that ends the filling begun by the i-th; the story's size: none yet.
  [[nodiscard]] std::size_t end_of(std::size_t i) const {
    for (++i; i < story_.size() && !ends_filling(*story_[i]);) ++i;
    return i;
  }
  // The filling that the `end`-th entry ends, as it was.
  [[nodiscard]] KegStory::Past past(std::size_t end) {
    if (!fold_ || taken_ > end) {
      folded_ = KegTimeline{};
      fold_.emplace(now_.record.keg, journal_, fold_lookup_.emplace(journal_), folded_, places_);
      taken_ = 0;
    }
    for (; taken_ < end; ++taken_) fold_->take(*story_[taken_]);
    return fold_->until(story_[end]->header.happened_at);
  }
  [[nodiscard]] const Reliance& past_relies_on() const { return present(fold_lookup_).relies_on(); }

 private:
  const KegTimeline& now_;
  const Journal& journal_;
  const PlaceLookup& places_;
  SourceTable& sources_;
  Lookup lookup_;
  std::span<const Entry* const> story_;
  KegTimeline folded_;
  std::optional<Lookup> fold_lookup_;
  std::optional<KegStory> fold_;
  std::size_t taken_ = 0;
};

// A filling that is over before the grid's end, from its first entry to its end:
// as it was kept, or worked out.
void KegDraws::pass_over(Walk& walk, GasDrawStory& draws, std::size_t begin, std::size_t end,
                         const std::map<EntryId, Over>& known) {
  const auto story = walk.story();
  const Instant from = story[begin]->header.happened_at, over = story[end]->header.happened_at;
  Over fresh{story[end]->header.id, moments_within(grid_, from, over), draws.state(), {}, {}, {}};
  const auto kept = known.find(story[begin]->header.id);
  if (kept != known.end() && kept->second.end == fresh.end &&
      kept->second.moments == fresh.moments && same(kept->second.before, fresh.before) &&
      kept->second.relies_on.holds(walk.journal())) {
    draws.go_on_from(kept->second.after);
    draws_.push_back(kept->second.draws);
    over_.insert(*kept).first->second.relies_on.renew(walk.journal());
    return;
  }
  // Of no interest where it was over before the grid begins.
  KegStory::Past past;
  if (over >= grid_.front()) past = walk.past(end);
  draws.next_filling(over >= grid_.front() ? &past.keg : nullptr, emptied_by(*story[end]));
  for (std::size_t i = begin; i < end; ++i) draws.take(*story[i]);
  draws.end_filling(over);
  fresh.after = draws.state();
  fresh.draws = std::make_shared<const PlainDraws>(draws.take_draws());
  fresh.relies_on = walk.lookup().relies_on();
  if (over >= grid_.front()) fresh.relies_on.add(walk.past_relies_on());
  if (!past.reaches_later) fresh.relies_on = fresh.relies_on.until(over);
  draws_.push_back(fresh.draws);
  over_.emplace(story[begin]->header.id, std::move(fresh));
}

// Entries from next_ on that happened by `until`; fillings that end later are as
// they are now, or as they will have been.
void KegDraws::go_on(Walk& walk, GasDrawStory& draws, Instant until,
                     const std::map<EntryId, Over>* known) {
  const auto story = walk.story();
  const auto put_by = [&] {
    draws_.push_back(std::make_shared<const PlainDraws>(draws.take_draws()));
  };
  for (; next_ < story.size() && story[next_]->header.happened_at <= until; ++next_) {
    const Entry& entry = *story[next_];
    const Instant at = entry.header.happened_at;
    if (draws.state().filling && ends_filling(entry)) draws.end_filling(at);
    if (begins_filling(entry)) {
      const std::size_t end = walk.end_of(next_);
      if (end < story.size() && known && story[end]->header.happened_at <= until) {
        put_by();
        pass_over(walk, draws, next_, end, *known);
        next_ = end - 1;
        continue;
      }
      if (end < story.size()) then_.push_back(std::make_shared<KegTimeline>(walk.past(end).keg));
      draws.next_filling(end < story.size() ? then_.back().get() : &walk.now(),
                         end < story.size() ? emptied_by(*story[end]) : std::nullopt);
    }
    draws.take(entry);
  }
  draws.flush(until);
  put_by();
}

void KegDraws::bring_up(const KegTimeline& now, const Journal& journal, const PlaceLookup& places,
                        const std::vector<Instant>& grid, Instant to, SourceTable& sources) {
  Walk walk(now, journal, places, sources);
  if (grid != grid_ || !relies_on_.holds(journal)) {
    grid_ = grid;
    const std::map<EntryId, Over> known = std::exchange(over_, {});
    draws_.clear();
    then_.clear();
    next_ = 0;
    GasDrawStory draws(now.record, walk.lookup(), sources, grid.front(), grid_, {});
    go_on(walk, draws, grid.back(), &known);
    at_grid_end_ = draws.state();
    next_closed_ = next_;
    closed_ = draws_.size();
    then_closed_ = then_.size();
    relies_on_ = walk.lookup().relies_on();
    relies_on_.add(now.relies_on);
    for (const auto& [begun_by, over] : over_) relies_on_.add(over.relies_on);
  } else {
    relies_on_.renew(journal);
  }
  draws_.resize(closed_);
  then_.resize(then_closed_);
  next_ = next_closed_;
  if (to <= grid.back()) return;
  const std::vector<Instant> open{grid.back(), to};
  GasDrawStory draws(now.record, walk.lookup(), sources, grid.front(), open, at_grid_end_);
  go_on(walk, draws, to, nullptr);
}

std::vector<GasDraw> gas_draws(const KegTimeline& now, const Journal& journal,
                               const std::vector<Instant>& moments) {
  SourceTable sources;
  KegDraws draws;
  draws.bring_up(now, journal, places_of(journal), moments, moments.back(), sources);
  std::vector<GasDraw> out;
  for (const auto& part : draws.draws()) {
    for (const PlainDraws::Row& row : part->rows()) {
      std::vector<units::Contribution> errors;
      for (const PlainPart& p : part->parts(row))
        errors.push_back({sources.source(p.source), p.half_width});
      out.push_back({row.from, row.to, now.record.keg, row.work, row.regulator,
                     MassEstimate(units::kilograms(row.kilograms), std::move(errors))});
    }
  }
  return out;
}

}  // namespace ullage::cellar
