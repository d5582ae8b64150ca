// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/when_edit.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/context.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/child_edit.h"
#include "ui/widgets/field_message.h"
#include "ui/widgets/when_text.h"

namespace ullage::ui {

namespace {
constexpr int when_field_width = 190;
constexpr int date_field_width = 150;
}  // namespace

WhenEdit::WhenEdit(const cellar::Facade& cellar, QWidget* parent)
    : QWidget(parent),
      cellar_(cellar),
      edit_(new QLineEdit(tr("now"), this)),
      below_(new FieldMessage(edit_, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  auto* row = new QHBoxLayout;
  row->setSpacing(space::xs);
  edit_->setMinimumWidth(when_field_width);
  row->addWidget(edit_, 1);
  const std::initializer_list<std::pair<QString, QString>> offers = {
      {tr("Now"), QStringLiteral("now")},
      {tr("1 h ago"), QStringLiteral("1 h ago")},
      {tr("Yesterday evening"), QStringLiteral("yesterday 20:00")}};
  for (const auto& [word, typed] : offers) {
    auto* button = new QPushButton(word, this);
    set_role(button, ButtonRole::quiet);
    button->setAutoDefault(false);
    row->addWidget(button);
    connect(button, &QPushButton::clicked, this, [this, text = typed] { offer(text); });
  }
  column->addLayout(row);
  column->addWidget(below_);
  setFocusProxy(edit_);
  connect(edit_, &QLineEdit::textEdited, this, [this] { read(); });
  connect(edit_, &QLineEdit::editingFinished, this, &WhenEdit::show_fault);
}

WhenEdit::~WhenEdit() { stop_listening(edit_, this); }

std::optional<cellar::Instant> WhenEdit::value() const {
  if (!fault_.isEmpty()) return std::nullopt;
  return is_now_ ? std::optional(cellar_.now()) : value_;
}

void WhenEdit::set_value(std::optional<cellar::Instant> value) {
  is_now_ = false;
  edit_->setText(value ? q(write_when(*value, cellar_.calendar())) : QString());
  read();
  // What was given may hold seconds that the text does not show.
  value_ = value;
}

void WhenEdit::set_text(const QString& text) {
  edit_->setText(text);
  read();
}

QString WhenEdit::text() const { return edit_->text(); }

QString WhenEdit::fault() const { return refusal_.isEmpty() ? fault_ : refusal_; }

void WhenEdit::show_fault() {
  fault_on_show_ = !fault().isEmpty();
  if (fault_on_show_) below_->fault(fault());
}

void WhenEdit::set_refusal(const QString& sentence) {
  refusal_ = sentence;
  show_fault();
}

void WhenEdit::offer(const QString& text) {
  set_text(text);
  edit_->setFocus();
}

void WhenEdit::read() {
  refusal_.clear();
  fault_.clear();
  value_.reset();
  const QString typed = edit_->text().trimmed();
  is_now_ = typed.compare(QLatin1String("now"), Qt::CaseInsensitive) == 0 ||
            typed.compare(tr("now"), Qt::CaseInsensitive) == 0;
  QString heard;
  if (!is_now_) {
    const auto when = read_when(s(typed), cellar_.calendar(), cellar_.now());
    if (when) {
      value_ = *when;
      heard = q(say_when(*when, cellar_.calendar()));
    } else if (when.error().fault != WhenFault::empty || required_) {
      fault_ = q(sentence(when.error()));
    }
  }
  if (fault_.isEmpty()) fault_on_show_ = false;
  if (fault_on_show_) {
    below_->fault(fault_);
  } else {
    below_->hint(heard);
  }
  emit changed();
}

DateEdit::DateEdit(const cellar::Facade& cellar, QWidget* parent)
    : QWidget(parent),
      cellar_(cellar),
      edit_(new QLineEdit(this)),
      below_(new FieldMessage(edit_, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  edit_->setMinimumWidth(date_field_width);
  edit_->setPlaceholderText(tr("such as 24 Nov"));
  column->addWidget(edit_);
  column->addWidget(below_);
  setFocusProxy(edit_);
  connect(edit_, &QLineEdit::textEdited, this, [this] { read(); });
  connect(edit_, &QLineEdit::editingFinished, this, &DateEdit::show_fault);
}

DateEdit::~DateEdit() { stop_listening(edit_, this); }

void DateEdit::set_value(std::optional<cellar::Date> value) {
  edit_->setText(value ? q(write_date(*value)) : QString());
  read();
}

void DateEdit::set_text(const QString& text) {
  edit_->setText(text);
  read();
}

QString DateEdit::text() const { return edit_->text(); }

QString DateEdit::fault() const {
  if (!refusal_.isEmpty()) return refusal_;
  if (required_ && edit_->text().trimmed().isEmpty()) return tr("Fill this in.");
  return fault_;
}

void DateEdit::show_fault() {
  fault_on_show_ = !fault().isEmpty();
  if (fault_on_show_) below_->fault(fault());
}

void DateEdit::set_refusal(const QString& sentence) {
  refusal_ = sentence;
  show_fault();
}

void DateEdit::read() {
  refusal_.clear();
  fault_.clear();
  value_.reset();
  QString heard;
  if (!edit_->text().trimmed().isEmpty()) {
    const auto date = read_date(s(edit_->text()), cellar_.calendar().date_of(cellar_.now()));
    if (date) {
      value_ = *date;
      heard = q(say_day_of(*date));
    } else {
      fault_ = q(sentence(date.error()));
    }
  }
  if (fault_.isEmpty()) fault_on_show_ = false;
  if (fault_on_show_) {
    below_->fault(fault_);
  } else {
    below_->hint(heard);
  }
  emit changed();
}

}  // namespace ullage::ui
