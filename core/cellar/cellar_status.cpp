// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/cellar_status.h"

#include <algorithm>
#include <cctype>
#include <tuple>

#include "core/cellar/suggest.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

bool digit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }

bool usable(const KegStatus& keg) {
  if (!keg.registered_now || !keg.contents || keg.phase == Phase::on_tap) return false;
  return keg.readiness.kind == ReadinessKind::ready_now ||
         keg.readiness.kind == ReadinessKind::ready_at;
}

auto use_order(const KegStatus& keg) {
  const auto& contents = present(keg.contents);
  const bool later = keg.readiness.kind == ReadinessKind::ready_at;
  const Date none = Date::max();
  const Instant since = keg.readiness.when ? keg.readiness.when->likely : contents.since;
  const double left = keg.level.left ? keg.level.left->value().value() : 1e9;
  return std::tuple(later, contents.best_by.value_or(none), since, left);
}

bool says_recalled(const KegStatus& keg) {
  return std::any_of(keg.advice.begin(), keg.advice.end(),
                     [](const Advice& a) { return a.headline.key == MessageKey::adv_recalled; });
}

// Whatever may not be served locks the line it is on until it is cleared, mended or off.
void lock_by_keg(LineStatus& line, const KegStatus& keg) {
  const std::optional<Message> why = why_not_served(keg);
  if (!why) return;
  const bool leaks_only = keg.leaks && why->key == keg.leaks->key;
  line.keg_lock = KegLock{keg.record.keg, keg.record.tag, *why, leaks_only};
  if (!line.lock) line.state = message(MessageKey::line_keg_locked, keg.record.tag);
  Advice a;
  a.severity = Severity::danger;
  a.about = subject(line.record.line);
  a.headline = message(MessageKey::adv_line_keg_locked, line.record.name, keg.record.tag);
  a.detail = *why;
  // Mended, it is served on: a leak test that finds none says so.
  a.action = leaks_only
                 ? keg_task<LeakTested>(keg.record.keg)
                 : SuggestedTask{
                       keg.quarantined ? "cleared" : "untapped", subject(keg.record.keg), {}, {}};
  line.advice.insert(line.advice.begin(), std::move(a));
}

}  // namespace

std::optional<Message> why_not_served(const KegStatus& keg) {
  if (keg.quarantined) return keg.quarantined;
  if (says_recalled(keg)) return message(MessageKey::keg_lock_recalled);
  return keg.leaks;
}

bool natural_less(std::string_view a, std::string_view b) {
  std::size_t i = 0, j = 0;
  while (i < a.size() && j < b.size()) {
    if (digit(a[i]) && digit(b[j])) {
      const auto number = [](std::string_view s, std::size_t& at) {
        while (at < s.size() && s[at] == '0') ++at;
        const std::size_t from = at;
        while (at < s.size() && digit(s[at])) ++at;
        return s.substr(from, at - from);
      };
      const std::string_view x = number(a, i), y = number(b, j);
      if (x.size() != y.size()) return x.size() < y.size();
      if (x != y) return x < y;
    } else {
      const int x = std::tolower(static_cast<unsigned char>(a[i++]));
      const int y = std::tolower(static_cast<unsigned char>(b[j++]));
      if (x != y) return x < y;
    }
  }
  if (a.size() - i != b.size() - j) return a.size() - i < b.size() - j;
  return a < b;
}

void join_lines_and_kegs(CellarStatus& cellar) {
  for (LineStatus& line : cellar.lines) {
    const KegStatus* on = nullptr;
    for (const KegStatus& keg : cellar.kegs) {
      if (keg.phase != Phase::on_tap || !keg.line || keg.line->line != line.record.line) continue;
      // Of several the one put on last; the others carry advice about it.
      if (!on || present(keg.phase_since) > present(on->phase_since)) on = &keg;
    }
    if (!on) continue;
    line.keg = on->record.keg;
    lock_by_keg(line, *on);
    if (!line.lock && !line.keg_lock && !line.overdue) {
      line.state = message(MessageKey::line_serving, on->record.tag);
    }
  }
}

void rank_use_next(CellarStatus& cellar) {
  std::vector<KegStatus*> usable_kegs;
  for (KegStatus& keg : cellar.kegs) {
    if (usable(keg)) usable_kegs.push_back(&keg);
  }
  std::stable_sort(usable_kegs.begin(), usable_kegs.end(),
                   [](const auto* a, const auto* b) { return use_order(*a) < use_order(*b); });
  std::int64_t rank = 0;
  for (KegStatus* keg : usable_kegs) keg->use_next_rank = ++rank;
}

void gather_attention(CellarStatus& cellar, const std::vector<Advice>& others) {
  std::vector<Advice>& all = cellar.attention;
  const auto take = [&](const std::vector<Advice>& from) {
    std::copy_if(from.begin(), from.end(), std::back_inserter(all),
                 [](const Advice& a) { return a.severity >= Severity::advice; });
  };
  for (const KegStatus& keg : cellar.kegs) take(keg.advice);
  for (const LineStatus& line : cellar.lines) take(line.advice);
  take(others);
  std::stable_sort(all.begin(), all.end(),
                   [](const Advice& a, const Advice& b) { return a.severity > b.severity; });
}

}  // namespace ullage::cellar
