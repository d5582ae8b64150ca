// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/tag_list_edit.h"

#include <QLineEdit>
#include <QVBoxLayout>

#include "ui/context.h"
#include "ui/widgets/child_edit.h"
#include "ui/widgets/field_message.h"
#include "ui/widgets/tag_range.h"

namespace ullage::ui {

namespace {
constexpr std::size_t tags_shown_whole = 4;
}

TagListEdit::TagListEdit(const cellar::Facade& cellar, QWidget* parent)
    : QWidget(parent),
      cellar_(cellar),
      edit_(new QLineEdit(this)),
      below_(new FieldMessage(edit_, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  edit_->setPlaceholderText(tr("K01..K08"));
  column->addWidget(edit_);
  column->addWidget(below_);
  setFocusProxy(edit_);
  connect(edit_, &QLineEdit::textEdited, this, [this] { read(); });
  connect(edit_, &QLineEdit::editingFinished, this, &TagListEdit::show_fault);
  read();
}

TagListEdit::~TagListEdit() { stop_listening(edit_, this); }

std::vector<std::string> TagListEdit::tags() const { return tags_; }

void TagListEdit::set_text(const QString& text) {
  edit_->setText(text);
  read();
}

QString TagListEdit::text() const { return edit_->text(); }
QString TagListEdit::fault() const { return refusal_.isEmpty() ? fault_ : refusal_; }

void TagListEdit::show_fault() {
  fault_on_show_ = !fault().isEmpty();
  if (fault_on_show_) below_->fault(fault());
}

void TagListEdit::set_refusal(const QString& sentence) {
  refusal_ = sentence;
  show_fault();
}

void TagListEdit::read() {
  refusal_.clear();
  fault_.clear();
  tags_.clear();
  QString expands_to;
  auto tags = expand_tags(s(edit_->text()));
  if (!tags) {
    fault_ = q(ui::sentence(tags.error()));
  } else {
    const auto status = cellar_.status();
    for (const std::string& tag : *tags) {
      const cellar::KegStatus* taken = status->keg_by_tag(tag);
      if (taken && taken->record.in_use) {
        fault_ = tr("There is a keg %1 already.").arg(q(taken->record.tag));
        break;
      }
    }
  }
  if (fault_.isEmpty()) {
    tags_ = std::move(*tags);
    fault_on_show_ = false;
    if (tags_.size() > 1) {
      QStringList shown;
      for (const std::string& tag : tags_) shown << q(tag);
      if (tags_.size() > tags_shown_whole) {
        shown = shown.mid(0, 2) + QStringList{QStringLiteral("…"), shown.last()};
      }
      expands_to = tr("%n kegs: %1", nullptr, static_cast<int>(tags_.size())).arg(shown.join(", "));
    }
  }
  if (fault_on_show_) {
    below_->fault(fault_);
  } else {
    below_->hint(expands_to);
  }
  emit changed();
}

}  // namespace ullage::ui
