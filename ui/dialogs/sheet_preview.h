// SPDX-License-Identifier: GPL-3.0-or-later
//
// The status sheet before it is printed: its pages as they will come out, and
// the ways on: print, save as PDF. The pages are the same objects that are
// printed.
#pragma once

#include <QDialog>
#include <memory>
#include <optional>

#include "ui/context.h"
#include "ui/print/status_sheet_pages.h"

class QComboBox;
class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace ullage::ui {

class SheetPreview : public QDialog {
  Q_OBJECT
 public:
  // Of now, or of a past moment.
  explicit SheetPreview(const Context& context, QWidget* parent = nullptr,
                        const std::optional<cellar::AsOf>& as_of = {});
  ~SheetPreview() override;

  [[nodiscard]] Paper paper() const;
  // Writes the shown sheet; tells at the foot what became of it.
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
  std::optional<cellar::AsOf> as_of_;
  std::unique_ptr<StatusSheetPages> pages_;
  QComboBox* paper_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  QVBoxLayout* stack_ = nullptr;
  QLabel* outcome_ = nullptr;
};

}  // namespace ullage::ui
