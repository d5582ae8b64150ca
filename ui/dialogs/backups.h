// SPDX-License-Identifier: GPL-3.0-or-later
//
// The backups of a cellar, to choose one that takes the cellar's place.
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

class QPushButton;
class QTableWidget;

namespace ullage::ui {

struct BackupRow {
  QString day;     // "24 November 2026"
  QString reason;  // "daily"
  QString size;    // "1.2 MB"
};

class BackupsDialog : public QDialog {
  Q_OBJECT
 public:
  // Newest first.
  explicit BackupsDialog(std::vector<BackupRow> rows, QWidget* parent = nullptr);
  [[nodiscard]] std::optional<std::size_t> chosen() const;

 private:
  QTableWidget* table_;
  QPushButton* restore_;
};

}  // namespace ullage::ui
