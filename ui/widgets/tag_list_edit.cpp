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

TagListEdit::TagListEdit(const cellar::Facade& cellar, Of of, QWidget* parent)
    : QWidget(parent),
      cellar_(cellar),
      of_(of),
      edit_(new QLineEdit(this)),
      below_(new FieldMessage(edit_, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  edit_->setPlaceholderText(of == Of::new_kegs ? tr("K01..K08") : tr("such as K02, K05..K08"));
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

std::vector<cellar::KegId> TagListEdit::kegs() const {
  std::vector<cellar::KegId> kegs;
  const auto status = cellar_.status();
  for (const std::string& tag : tags_) {
    if (const cellar::KegStatus* keg = status->keg_by_tag(tag)) kegs.push_back(keg->record.keg);
  }
  return kegs;
}

QString TagListEdit::fault_of(const std::vector<std::string>& tags) const {
  const auto status = cellar_.status();
  for (const std::string& tag : tags) {
    const cellar::KegStatus* keg = status->keg_by_tag(tag);
    const bool there = keg && keg->record.in_use;
    if (of_ == Of::new_kegs && there)
      return tr("There is a keg %1 already.").arg(q(keg->record.tag));
    if (of_ == Of::registered_kegs && !there) {
      return tr("There is no keg %1. Register it first.").arg(q(tag));
    }
  }
  return {};
}

// What a list of several expands to.
QString TagListEdit::told() const {
  if (tags_.size() <= 1) return {};
  QStringList shown;
  for (const std::string& tag : tags_) shown << q(tag);
  if (tags_.size() > tags_shown_whole) {
    shown = shown.mid(0, 2) + QStringList{QStringLiteral("…"), shown.last()};
  }
  return tr("%n kegs: %1", nullptr, static_cast<int>(tags_.size())).arg(shown.join(", "));
}

void TagListEdit::read() {
  refusal_.clear();
  fault_.clear();
  tags_.clear();
  const bool nothing = edit_->text().trimmed().isEmpty();
  if (!nothing || of_ == Of::new_kegs) {
    auto tags = expand_tags(s(edit_->text()));
    fault_ = tags ? fault_of(*tags) : q(ui::sentence(tags.error()));
    if (fault_.isEmpty()) tags_ = std::move(*tags);
  }
  if (fault_.isEmpty()) fault_on_show_ = false;
  if (fault_on_show_) {
    below_->fault(fault_);
  } else {
    below_->hint(told());
  }
  emit changed();
}

}  // namespace ullage::ui
