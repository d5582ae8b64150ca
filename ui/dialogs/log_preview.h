// SPDX-License-Identifier: GPL-3.0-or-later
//
// A log book over a period, or a list of now, before it is printed or saved.
#pragma once

#include "core/report/log_book.h"
#include "ui/dialogs/paper_preview.h"

class QDate;
class QDateEdit;

namespace ullage::ui {

class LogPreview final : public PaperPreview {
  Q_OBJECT
 public:
  // Of the last 30 days to begin with; a recall list starts with the batch
  // recalled last; what is due, with the next two weeks. A list of what the cellar owns
  // lets the others be chosen.
  LogPreview(const Context& context, report::LogBook which, QWidget* parent = nullptr);

  [[nodiscard]] const report::TableSheet& sheet() const { return sheet_; }
  void set_period(const QDate& from, const QDate& to);
  void set_batch(cellar::BatchId);  // of a recall list

 protected:
  [[nodiscard]] std::unique_ptr<Pages> make_pages() override;
  [[nodiscard]] std::optional<std::string> csv() const override;

 private:
  void add_period();
  QDateEdit* add_day(const QString& label, const QDate& at);
  [[nodiscard]] QDate today() const;
  void add_batches();
  void add_register();
  [[nodiscard]] report::Period period() const;
  [[nodiscard]] report::TableSheet make_sheet() const;

  report::LogBook which_;
  QDateEdit* from_ = nullptr;
  QDateEdit* to_ = nullptr;
  QComboBox* batch_ = nullptr;
  std::vector<cellar::BatchId> batches_;
  report::TableSheet sheet_;
};

[[nodiscard]] QString title_of(report::LogBook);

}  // namespace ullage::ui
