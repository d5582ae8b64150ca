// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/backups.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {

namespace {
constexpr QSize backups_size(600, 440);
constexpr int backup_row_height = 36;
}  // namespace

BackupsDialog::BackupsDialog(std::vector<BackupRow> rows, QWidget* parent)
    : QDialog(parent), table_(new QTableWidget(static_cast<int>(rows.size()), 3, this)) {
  setObjectName(QStringLiteral("backups"));
  setWindowTitle(tr("Restore a backup"));
  auto* sentence = new InkLabel(
      tr("The chosen backup takes the place of the cellar. What the cellar is now is put aside "
         "among the backups; nothing is thrown away."),
      TextRole::body, Ink::secondary, this);
  sentence->setWordWrap(true);

  table_->setAccessibleName(tr("Backups, newest first"));
  table_->setHorizontalHeaderLabels({tr("Day"), tr("Made"), tr("Size")});
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setTabKeyNavigation(false);
  table_->setShowGrid(false);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setDefaultSectionSize(backup_row_height);
  table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
  table_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
  table_->horizontalHeader()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const int row = static_cast<int>(i);
    table_->setItem(row, 0, new QTableWidgetItem(rows[i].day));
    table_->setItem(row, 1, new QTableWidgetItem(rows[i].reason));
    table_->setItem(row, 2, new QTableWidgetItem(rows[i].size));
  }

  auto* buttons = new QDialogButtonBox(this);
  restore_ = buttons->addButton(tr("&Restore this one"), QDialogButtonBox::AcceptRole);
  restore_->setObjectName(QStringLiteral("restore_backup"));
  set_role(restore_, ButtonRole::primary);
  buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(table_, &QTableWidget::itemSelectionChanged, this,
          [this] { restore_->setEnabled(chosen().has_value()); });
  if (!rows.empty()) table_->selectRow(0);
  restore_->setEnabled(chosen().has_value());

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(space::xl, space::xl, space::xl, space::l);
  column->setSpacing(space::m);
  column->addWidget(new InkLabel(tr("Restore a backup"), TextRole::heading, Ink::text, this));
  column->addWidget(sentence);
  column->addWidget(table_, 1);
  column->addWidget(buttons);
  resize_within_screen(*this, backups_size);
}

std::optional<std::size_t> BackupsDialog::chosen() const {
  const auto rows = table_->selectionModel()->selectedRows();
  return rows.isEmpty() ? std::nullopt
                        : std::optional(static_cast<std::size_t>(rows.front().row()));
}

}  // namespace ullage::ui
