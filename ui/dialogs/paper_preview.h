// SPDX-License-Identifier: GPL-3.0-or-later
//
// Something before it is printed: its pages as they will come out, and the ways
// on: print, save as PDF, save as CSV where it is a table. The pages are the same
// objects that are printed. Each kind of paper is a class of its own that makes
// the pages and puts its choices into the bar.
#pragma once

#include <QDialog>
#include <memory>
#include <optional>
#include <string>

#include "ui/context.h"
#include "ui/print/pages.h"
#include "ui/print/paper.h"

class QComboBox;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace ullage::ui {

class PaperPreview : public QDialog {
  Q_OBJECT
 public:
  ~PaperPreview() override;

  [[nodiscard]] Paper paper() const;
  [[nodiscard]] const Pages& pages() const { return *pages_; }
  // Each writes what is shown, and tells at the foot what became of it.
  bool save_pdf(const QString& path);
  bool save_csv(const QString& path);

 protected:
  PaperPreview(const Context& context, const QString& title, QWidget* parent);

  [[nodiscard]] virtual std::unique_ptr<Pages> make_pages() = 0;
  [[nodiscard]] virtual std::optional<std::string> csv() const { return std::nullopt; }
  // A choice in the bar; the label is the widget's name for screen readers too.
  void add_choice(const QString& label, QWidget* choice);
  void offer_csv();

  [[nodiscard]] const Context& context() const { return context_; }
  void lay_out();  // makes the pages anew and shows them
  void resizeEvent(QResizeEvent* event) override;

 private:
  void build();
  void show_pages();
  void ask_and_save();
  void ask_and_save_csv();
  void ask_and_print();
  bool write_file(const QString& path, const std::string& text);

  Context context_;
  std::unique_ptr<Pages> pages_;
  QComboBox* paper_ = nullptr;
  QHBoxLayout* choices_ = nullptr;
  QPushButton* csv_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  QVBoxLayout* stack_ = nullptr;
  QLabel* outcome_ = nullptr;
};

}  // namespace ullage::ui
