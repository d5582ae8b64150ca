// SPDX-License-Identifier: GPL-3.0-or-later
//
// The journal as a table, newest happening first, struck entries included and
// readable. Entries are put into words only when they are shown or searched,
// and a search runs in slices of a few milliseconds, so that typing in the
// filter of a cellar with a hundred thousand entries never stops the window.
#pragma once

#include <QAbstractTableModel>
#include <QTimer>
#include <memory>
#include <vector>

#include "ui/context.h"
#include "ui/models/log_filter.h"

namespace ullage::ui {

class LogTable : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { when, about, what, by, standing, columns };
  enum Role { struck_role = Qt::UserRole, correction_role };

  explicit LogTable(const Context& context, QObject* parent = nullptr);

  void set_filter(const LogFilter& filter);
  [[nodiscard]] const LogFilter& filter() const { return filter_; }
  [[nodiscard]] bool searching() const { return slice_.isActive(); }
  // The entry in a row; null for an invalid index.
  [[nodiscard]] const cellar::Entry* entry_at(const QModelIndex& index) const;
  [[nodiscard]] QModelIndex index_of(cellar::EntryId id) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

  void reload();  // the journal, the units or the words changed

 signals:
  void search_finished();

 private:
  void sort_entries();
  void search_slice();
  [[nodiscard]] QString text(const cellar::Entry& entry, Column column) const;
  [[nodiscard]] QString whole_line(const cellar::Entry& entry) const;
  [[nodiscard]] QString standing_words(const cellar::Entry& entry) const;

  Context context_;
  report::Speaker speaker_;
  std::shared_ptr<const cellar::CellarStatus> names_;
  LogFilter filter_;
  std::vector<std::size_t> newest_first_;  // of the journal's entries
  std::vector<std::size_t> shown_;
  std::size_t next_to_search_ = 0;
  QTimer slice_;
};

}  // namespace ullage::ui
