// SPDX-License-Identifier: GPL-3.0-or-later
//
// The pieces of a line's hose as a table that is edited in its form: a row each,
// from the keg to the tap, with length, bore, material, the place it runs through
// and how far its end is above its beginning. Rows are added, changed, taken out
// and moved by their buttons, or by Alt+Up and Alt+Down from any of their fields.
// Nothing is logged here: `changes` are the records that make it so.
#pragma once

#include <QWidget>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/cellar/records_dispense.h"
#include "ui/context.h"

class QGridLayout;
class QPushButton;

namespace ullage::ui {

class InkLabel;

class HosePieces final : public QWidget {
  Q_OBJECT
 public:
  // `first` is what the first piece starts from: the line's own hose.
  HosePieces(const Context&, cellar::LineId, std::function<cellar::SegmentRecord()> first,
             QWidget* parent = nullptr);
  ~HosePieces() override;

  // New and changed pieces as they are to be, and removed ones out of use.
  [[nodiscard]] std::vector<cellar::SegmentRecord> changes() const;
  // The pieces on show, in their order.
  [[nodiscard]] std::vector<cellar::SegmentRecord> pieces() const;
  // Shows every fault; true when there is one. The first takes the focus.
  bool show_faults();
  // Puts a sentence at the column of the change of that index.
  void refuse(std::size_t change, const std::string& column, const QString& sentence);

 signals:
  void changed();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Row;
  void build();
  void keep_room();
  void add(const cellar::SegmentRecord& piece, bool registered);
  void connect_row(Row&);
  void add_new();
  void move(const Row*, int by);
  void remove(const Row*);
  void lay_out();
  void name_row(Row&, int number);
  [[nodiscard]] std::size_t index_of(const Row*) const;
  [[nodiscard]] cellar::SegmentRecord record_of(const Row&, std::int64_t position) const;

  Context context_;
  cellar::LineId line_;
  std::function<cellar::SegmentRecord()> first_;
  std::vector<std::unique_ptr<Row>> rows_;
  std::vector<cellar::SegmentRecord> removed_;
  QGridLayout* grid_ = nullptr;
  std::vector<InkLabel*> headings_;
  InkLabel* about_ = nullptr;
  QPushButton* add_ = nullptr;
};

}  // namespace ullage::ui
