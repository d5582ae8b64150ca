// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/text_edit.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextDocument>
#include <QVBoxLayout>

#include "ui/context.h"
#include "ui/theme/theme.h"
#include "ui/widgets/child_edit.h"
#include "ui/widgets/field_message.h"

namespace ullage::ui {

namespace {
constexpr int lines_shown = 3;
}

TextEdit::TextEdit(std::size_t limit, Lines lines, QWidget* parent)
    : QWidget(parent), limit_(static_cast<int>(limit)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  if (lines == Lines::one) {
    line_ = new QLineEdit(this);
    connect(line_, &QLineEdit::textEdited, this, &TextEdit::on_typed);
    connect(line_, &QLineEdit::editingFinished, this, &TextEdit::show_fault);
  } else {
    box_ = new QPlainTextEdit(this);
    box_->setTabChangesFocus(true);
    box_->document()->setDocumentMargin(space::s);
    box_->setFixedHeight(box_->fontMetrics().lineSpacing() * lines_shown + 2 * space::m);
    connect(box_, &QPlainTextEdit::textChanged, this, &TextEdit::on_typed);
  }
  below_ = new FieldMessage(focus_widget(), this);
  column->addWidget(focus_widget());
  column->addWidget(below_);
  setFocusProxy(focus_widget());
}

TextEdit::~TextEdit() { stop_listening(line_, this); }

QWidget* TextEdit::focus_widget() const {
  return line_ ? static_cast<QWidget*>(line_) : static_cast<QWidget*>(box_);
}

QString TextEdit::text() const { return line_ ? line_->text() : box_->toPlainText(); }
std::string TextEdit::value() const { return s(text().trimmed()); }

void TextEdit::set_value(const std::string& value) {
  if (line_) {
    line_->setText(q(value));
    on_typed();
  } else {
    box_->setPlainText(q(value));  // tells on_typed itself
  }
}

void TextEdit::set_placeholder(const QString& text) {
  if (line_) {
    line_->setPlaceholderText(text);
  } else {
    box_->setPlaceholderText(text);
  }
}

// The limit counts characters as people do, close enough: code points, not
// UTF-16 halves.
QString TextEdit::fault() const {
  if (!refusal_.isEmpty()) return refusal_;
  const auto length = static_cast<int>(text().trimmed().toUcs4().size());
  if (length > limit_) {
    return tr("Too long by %1: the most is %2 characters.").arg(length - limit_).arg(limit_);
  }
  return required_ && length == 0 ? tr("Fill this in.") : QString();
}

void TextEdit::show_fault() {
  fault_on_show_ = !fault().isEmpty();
  say();
}

void TextEdit::set_refusal(const QString& sentence) {
  refusal_ = sentence;
  show_fault();
}

void TextEdit::on_typed() {
  refusal_.clear();
  // Being over the limit is told at once: there is nothing half-typed about it.
  fault_on_show_ = !fault().isEmpty() && (fault_on_show_ || !text().trimmed().isEmpty());
  say();
  emit changed();
}

void TextEdit::say() { below_->fault(fault_on_show_ ? fault() : QString()); }

}  // namespace ullage::ui
