// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/gas_sums.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string_view>

namespace ullage::cellar {

namespace {

constexpr std::size_t named_at_most = 48;
constexpr double next_to_nothing = 1e-9;  // kg
constexpr std::string_view smaller_causes = "smaller causes";

}  // namespace

GasSums::GasSums(std::vector<Instant> moments, const SourceTable& sources)
    : moments_(std::move(moments)), table_(sources), value_(moments_.size(), 0.0) {}

std::size_t GasSums::local(std::uint32_t source) {
  if (index_.size() < table_.size()) index_.resize(table_.size(), -1);
  std::int32_t& at = index_[source];
  if (at < 0) {
    at = static_cast<std::int32_t>(all_.size());
    all_.push_back({table_.source(source), false, 0, {}});
  }
  return static_cast<std::size_t>(at);
}

void GasSums::add(const PlainDraws& draws, const PlainDraws::Row& row) {
  const auto at = std::lower_bound(moments_.begin(), moments_.end(), row.to);
  if (at == moments_.end()) return;
  const auto moment = static_cast<std::size_t>(at - moments_.begin());
  value_[moment] += row.kilograms;
  for (const PlainPart& p : draws.parts(row)) {
    Source& s = all_[local(p.source)];
    if (s.half_width.empty()) s.first = moment;
    if (moment < s.first) {
      s.half_width.insert(s.half_width.begin(), s.first - moment, 0.0);
      s.first = moment;
    }
    if (moment - s.first >= s.half_width.size()) s.half_width.resize(moment - s.first + 1, 0.0);
    s.half_width[moment - s.first] += p.half_width;
  }
}

void GasSums::keep_names_of(const MassEstimate& m) {
  for (const units::Contribution& c : m.contributions()) kept_.push_back(c.source.name);
}

void GasSums::finish(const std::vector<Instant>& asked) {
  for (const Instant t : asked) {
    asked_.push_back(static_cast<std::size_t>(
        std::lower_bound(moments_.begin(), moments_.end(), t) - moments_.begin()));
  }
  std::partial_sum(value_.begin(), value_.end(), value_.begin());
  name_the_widest();
  gather_rest();
  for (Source& s : all_)
    std::partial_sum(s.half_width.begin(), s.half_width.end(), s.half_width.begin());
  factor_asked();
}

double GasSums::Source::by(std::size_t moment) const {
  if (half_width.empty() || moment < first) return 0;
  return half_width[std::min(moment - first, half_width.size() - 1)];
}

void GasSums::name_the_widest() {
  std::sort(kept_.begin(), kept_.end());
  std::vector<std::pair<double, std::size_t>> widths;
  for (std::size_t i = 0; i < all_.size(); ++i) {
    Source& s = all_[i];
    s.named = std::binary_search(kept_.begin(), kept_.end(), s.name.name);
    const double sum = std::accumulate(s.half_width.begin(), s.half_width.end(), 0.0);
    widths.emplace_back(-std::abs(sum), i);
  }
  // Of a few none goes without its name.
  const std::size_t most =
      all_.size() <= 2 * named_at_most ? all_.size() : std::min(named_at_most, all_.size());
  std::partial_sort(widths.begin(), widths.begin() + static_cast<std::ptrdiff_t>(most),
                    widths.end());
  for (std::size_t i = 0; i < most; ++i) all_[widths[i].second].named = true;
}

// Covariance of what is added by one moment and another, then of the sums by then.
void GasSums::gather_rest() {
  const std::size_t n = moments_.size();
  rest_.assign(n * n, 0.0);
  for (const Source& s : all_) {
    if (s.named) continue;
    for (std::size_t a = 0; a < s.half_width.size(); ++a) {
      if (s.half_width[a] == 0) continue;
      for (std::size_t b = 0; b < s.half_width.size(); ++b)
        rest(s.first + a, s.first + b) += s.half_width[a] * s.half_width[b];
    }
  }
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) {
      rest(i, j) += (i > 0 ? rest(i - 1, j) : 0) + (j > 0 ? rest(i, j - 1) : 0) -
                    (i > 0 && j > 0 ? rest(i - 1, j - 1) : 0);
    }
  }
}

// A moment by which nothing new was added leaves a row of nothing.
void GasSums::factor_asked() {
  const std::size_t n = asked_.size();
  root_.assign(n, std::vector<double>(n, 0.0));
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j <= i; ++j) {
      double sum = rest(asked_[i], asked_[j]);
      for (std::size_t k = 0; k < j; ++k) sum -= root_[i][k] * root_[j][k];
      if (i == j) {
        root_[i][i] = sum > next_to_nothing * next_to_nothing ? std::sqrt(sum) : 0.0;
      } else if (root_[j][j] > 0) {
        root_[i][j] = sum / root_[j][j];
      }
    }
  }
}

GasSums::Left GasSums::left(const MassEstimate& start, std::size_t moment) const {
  double square = rest(moment, moment);
  const auto of_start = [&](const units::ErrorSource& source) {
    const auto& own = start.contributions();
    const auto at =
        std::find_if(own.begin(), own.end(), [&](const auto& c) { return c.source == source; });
    return at == own.end() ? 0.0 : at->half_width;
  };
  for (const units::Contribution& c : start.contributions()) {
    square += c.half_width * c.half_width;
  }
  for (const Source& s : all_) {
    if (!s.named) continue;
    const double sum = s.by(moment);
    square += sum * sum - 2 * sum * of_start(s.name);
  }
  return {units::in_kilograms(start.value()) - value_[moment], std::sqrt(std::max(square, 0.0))};
}

MassEstimate GasSums::drawn(std::size_t asked) const {
  const std::size_t moment = asked_[asked];
  std::vector<units::Contribution> errors;
  for (const Source& s : all_) {
    if (!s.named || s.half_width.empty() || s.first > moment) continue;
    errors.push_back({s.name, s.by(moment)});
  }
  for (std::size_t j = 0; j <= asked; ++j) {
    if (root_[asked][j] != 0)
      errors.push_back({{std::string(smaller_causes) + " " + std::to_string(j)}, root_[asked][j]});
  }
  return MassEstimate(units::kilograms(value_[moment]), std::move(errors));
}

MassEstimate smaller_causes_together(const MassEstimate& m) {
  std::vector<units::Contribution> out;
  double square = 0;
  for (const units::Contribution& c : m.contributions()) {
    if (c.source.name.starts_with(smaller_causes)) {
      square += c.half_width * c.half_width;
    } else {
      out.push_back(c);
    }
  }
  if (square > 0) out.push_back({{std::string(smaller_causes)}, std::sqrt(square)});
  return MassEstimate(m.value(), std::move(out));
}

}  // namespace ullage::cellar
