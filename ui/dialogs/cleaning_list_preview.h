// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cleaning day's list before it is printed: its pages as they will come out,
// A4 or Letter, and the ways on: print, save as PDF with real text.
#pragma once

#include <QDialog>
#include <memory>

#include "core/cellar/cleaning_plan.h"
#include "ui/context.h"
#include "ui/print/paper.h"

class QComboBox;
class QLabel;
class QScrollArea;
class QTextDocument;
class QVBoxLayout;

namespace ullage::ui {

class CleaningListPreview : public QDialog {
  Q_OBJECT
 public:
  CleaningListPreview(const Context& context, cellar::PlannedDay day, QWidget* parent = nullptr);
  ~CleaningListPreview() override;

  [[nodiscard]] Paper paper() const;
  void set_paper(Paper paper);
  // Writes the list; tells at the foot what became of it.
  bool save_pdf(const QString& path);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void build();
  void lay_out();
  void show_pages();
  void ask_and_save();
  void ask_and_print();

  Context context_;
  cellar::PlannedDay day_;
  std::unique_ptr<QTextDocument> text_;
  QComboBox* paper_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  QVBoxLayout* stack_ = nullptr;
  QLabel* outcome_ = nullptr;
};

}  // namespace ullage::ui
