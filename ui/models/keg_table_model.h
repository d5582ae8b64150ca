// SPDX-License-Identifier: GPL-3.0-or-later
//
// The rows of the Kegs page. It keeps its own list of what is shown instead of
// a filter proxy: filtering and sorting 200 kegs is a pass over a plain vector.
#pragma once

#include <QAbstractTableModel>
#include <cstddef>
#include <optional>
#include <vector>

#include "ui/models/keg_listing.h"
#include "ui/models/keg_row.h"

namespace ullage::ui {

enum class KegColumn { tag, contents, left, co2, life, state };

// The column by which an order sorts; none has what to use next.
[[nodiscard]] std::optional<KegColumn> column_of(KegOrder);
inline constexpr int keg_column_count = 6;

class KegTableModel final : public QAbstractTableModel {
  Q_OBJECT
 public:
  explicit KegTableModel(QObject* parent = nullptr);

  // Shows the cellar as it stands, in the speaker's units. The sequence of kegs
  // shown decides whether views keep everything (dataChanged) or start anew.
  void show(const cellar::CellarStatus&, const report::Speaker&);
  void set_filter(KegFilter);
  void set_text(const QString&);
  void set_order(KegOrder);

  [[nodiscard]] KegFilter filter() const { return filter_; }
  [[nodiscard]] QString text() const { return text_; }
  [[nodiscard]] KegOrder order() const { return order_; }
  [[nodiscard]] cellar::Instant now() const { return now_; }
  [[nodiscard]] std::size_t count(KegFilter) const;
  [[nodiscard]] std::size_t kegs_in_all() const { return rows_.size(); }
  // Kegs of which nothing is known.
  [[nodiscard]] int uncounted() const;
  // The scale that all CO2 gauges share: from nothing to a round number of the
  // person's unit.
  struct Co2Scale {
    double top_volumes = 4;
    QString name;  // "0–4 vol"
  };
  [[nodiscard]] const Co2Scale& co2_scale() const { return co2_scale_; }

  [[nodiscard]] const KegRow& row_at(int row) const;
  [[nodiscard]] std::optional<int> row_of(cellar::KegId) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex&, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation, int role) const override;

 private:
  void show_again();

  std::vector<KegRow> rows_;        // all, by tag
  std::vector<std::size_t> shown_;  // indexes into rows_
  KegFilter filter_ = KegFilter::all;
  KegOrder order_ = KegOrder::tag;
  QString text_;
  cellar::Instant now_{};
  Co2Scale co2_scale_;
};

}  // namespace ullage::ui
