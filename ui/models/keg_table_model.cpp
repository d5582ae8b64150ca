// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/keg_table_model.h"

#include <algorithm>
#include <cmath>

#include "core/units/shown.h"
#include "ui/context.h"

namespace ullage::ui {

std::optional<KegColumn> column_of(KegOrder order) {
  switch (order) {
    case KegOrder::tag:
      return KegColumn::tag;
    case KegOrder::level:
      return KegColumn::left;
    case KegOrder::ready_time:
      return KegColumn::life;
    case KegOrder::state:
      return KegColumn::state;
    case KegOrder::use_next:
      break;
  }
  return std::nullopt;
}

namespace {

// Even numbers, and never less than 4 volumes, so that the scale stays put while
// kegs come and go.
KegTableModel::Co2Scale scale_of(const std::vector<KegRow>& rows, const report::Speaker& speaker) {
  double top = 4;
  for (const KegRow& row : rows) {
    if (row.co2.now) top = std::max(top, row.co2.now->high);
    if (row.co2.band) top = std::max(top, row.co2.band->high);
  }
  const units::Co2Volumes one = units::volumes_of_co2(1);
  const units::Shown<units::Co2Volumes> shown = units::shown(speaker.printer.units, one);
  const double in_unit = std::ceil(top * shown.in(one) / 2) * 2;
  return {in_unit / shown.in(one),
          QStringLiteral("0–%1 %2").arg(q(speaker.printer.number(in_unit, 0)), q(shown.unit))};
}

QString joined(const QString& a, const QString& b) {
  return b.isEmpty() ? a : a + QStringLiteral(", ") + b;
}

QString cell_text(const KegRow& row, KegColumn column) {
  switch (column) {
    case KegColumn::tag:
      return row.tag;
    case KegColumn::contents:
      return joined(row.contents, row.whereabouts);
    case KegColumn::left:
      return row.level_words;
    case KegColumn::co2:
      return row.co2_words;
    case KegColumn::life:
      return row.life_words;
    case KegColumn::state:
      break;
  }
  return row.stopped ? joined(row.caution.whole(), row.state) : joined(row.state, row.next_step);
}

}  // namespace

KegTableModel::KegTableModel(QObject* parent) : QAbstractTableModel(parent) {}

void KegTableModel::show(const cellar::CellarStatus& status, const report::Speaker& speaker) {
  std::vector<KegRow> rows;
  rows.reserve(status.kegs.size());
  for (const cellar::KegStatus& keg : status.kegs) {
    if (keg.registered_now) rows.push_back(keg_row(keg, speaker));
  }
  std::vector<std::size_t> shown = shown_kegs(rows, filter_, text_, order_);
  const bool same_kegs =
      std::equal(shown.begin(), shown.end(), shown_.begin(), shown_.end(),
                 [&](std::size_t a, std::size_t b) { return rows[a].keg == rows_[b].keg; });
  if (!same_kegs) beginResetModel();
  rows_ = std::move(rows);
  shown_ = std::move(shown);
  now_ = status.now;
  co2_scale_ = scale_of(rows_, speaker);
  if (!same_kegs) {
    endResetModel();
  } else if (!shown_.empty()) {
    emit dataChanged(index(0, 0), index(rowCount() - 1, keg_column_count - 1));
  }
}

void KegTableModel::set_filter(KegFilter filter) {
  filter_ = filter;
  show_again();
}
void KegTableModel::set_text(const QString& text) {
  text_ = text;
  show_again();
}
void KegTableModel::set_order(KegOrder order) {
  order_ = order;
  show_again();
}

void KegTableModel::show_again() {
  std::vector<std::size_t> shown = shown_kegs(rows_, filter_, text_, order_);
  if (shown == shown_) return;
  beginResetModel();
  shown_ = std::move(shown);
  endResetModel();
}

int KegTableModel::uncounted() const {
  return static_cast<int>(std::count_if(rows_.begin(), rows_.end(), [](const KegRow& r) {
    return r.phase == cellar::Phase::unknown;
  }));
}

std::size_t KegTableModel::count(KegFilter filter) const { return count_of(rows_, filter); }

const KegRow& KegTableModel::row_at(int row) const {
  return rows_[shown_[static_cast<std::size_t>(row)]];
}

std::optional<int> KegTableModel::row_of(cellar::KegId keg) const {
  const auto at = std::find_if(shown_.begin(), shown_.end(),
                               [&](std::size_t i) { return rows_[i].keg == keg; });
  if (at == shown_.end()) return std::nullopt;
  return static_cast<int>(at - shown_.begin());
}

int KegTableModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}
int KegTableModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : keg_column_count;
}

QVariant KegTableModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const KegRow& row = row_at(index.row());
  const auto column = static_cast<KegColumn>(index.column());
  switch (role) {
    case Qt::DisplayRole:
      return cell_text(row, column);
    case Qt::AccessibleTextRole:
      return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() +
             QStringLiteral(": ") + cell_text(row, column);
    default:
      return {};
  }
}

QVariant KegTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (static_cast<KegColumn>(section)) {
    case KegColumn::tag:
      return tr("Keg");
    case KegColumn::contents:
      return tr("Contents");
    case KegColumn::left:
      return tr("Left");
    case KegColumn::co2:
      return tr("CO₂");
    case KegColumn::life:
      return tr("Two weeks back, two ahead");
    case KegColumn::state:
      return tr("State and next step");
  }
  return {};
}

}  // namespace ullage::ui
