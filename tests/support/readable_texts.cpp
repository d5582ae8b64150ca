// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/readable_texts.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <cstdlib>

#include "tests/support/painted_text.h"

namespace ullage::testing {
namespace {

void add_rows(const QAbstractItemModel& model, const QModelIndex& below, QStringList& into) {
  for (int row = 0; row < model.rowCount(below); ++row) {
    for (int column = 0; column < model.columnCount(below); ++column) {
      const QModelIndex at = model.index(row, column, below);
      into << at.data(Qt::AccessibleTextRole).toString() << at.data().toString()
           << at.data(Qt::ToolTipRole).toString();
    }
    add_rows(model, model.index(row, 0, below), into);
  }
}

void add_view(const QAbstractItemView& view, QStringList& into) {
  const QAbstractItemModel* model = view.model();
  if (!model) return;
  for (int column = 0; column < model->columnCount(); ++column) {
    into << model->headerData(column, Qt::Horizontal).toString();
  }
  add_rows(*model, {}, into);
}

void add_widget(const QWidget& widget, QStringList& into) {
  into << widget.accessibleName() << widget.accessibleDescription() << widget.toolTip();
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) into << label->text();
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) into << button->text();
  if (const auto* edit = qobject_cast<const QLineEdit*>(&widget)) {
    into << edit->text() << edit->placeholderText();
  }
  if (const auto* edit = qobject_cast<const QPlainTextEdit*>(&widget)) {
    into << edit->toPlainText() << edit->placeholderText();
  }
  if (const auto* combo = qobject_cast<const QComboBox*>(&widget)) {
    for (int i = 0; i < combo->count(); ++i) into << combo->itemText(i);
  }
  if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget)) add_view(*view, into);
}

// An underlined letter is painted apart from the rest of its word.
void add_painted(const std::vector<PaintedText>& pieces, QStringList& into) {
  const PaintedText* before = nullptr;
  for (const PaintedText& piece : pieces) {
    const bool goes_on = before && before->area.top() == piece.area.top() &&
                         std::abs(piece.area.left() - before->area.right()) <= 3;
    if (goes_on) {
      into.last() += piece.text;
    } else if (piece.text.size() > 1) {
      into << piece.text;
    } else {
      continue;  // the underlined letter itself; the whole word is its button's text
    }
    before = &piece;
  }
}

}  // namespace

QStringList readable_texts(QWidget& window) {
  QStringList all;
  add_widget(window, all);
  for (const QWidget* widget : window.findChildren<QWidget*>()) {
    if (widget->isVisible()) add_widget(*widget, all);
  }
  scroll_through(window, [&] { add_painted(painted_texts(window), all); });
  all.removeAll(QString());
  all.removeDuplicates();
  return all;
}

}  // namespace ullage::testing
