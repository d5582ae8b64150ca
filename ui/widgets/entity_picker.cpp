// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/entity_picker.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QLineEdit>
#include <QResizeEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/preferences.h"
#include "ui/widgets/child_edit.h"
#include "ui/widgets/field_message.h"

namespace ullage::ui {

namespace {

constexpr int picker_min_characters = 14;
constexpr int most_rows_open = 12;
constexpr int row_role = Qt::UserRole + 1;  // index into rows_, none_row or add_row
constexpr int none_row = -1;
constexpr int add_row = -2;

QString row_text(const Choice& choice) {
  return choice.detail.isEmpty() ? choice.name
                                 : QStringLiteral("%1 · %2").arg(choice.name, choice.detail);
}

}  // namespace

EntityPicker::EntityPicker(const Context& context, QWidget* parent)
    : QWidget(parent), context_(context), combo_(new QComboBox(this)) {
  combo_->setEditable(true);
  combo_->setInsertPolicy(QComboBox::NoInsert);
  combo_->setMinimumContentsLength(picker_min_characters);
  combo_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  combo_->setMaxVisibleItems(most_rows_open);
  combo_->completer()->setCompletionMode(QCompleter::PopupCompletion);
  combo_->completer()->setFilterMode(Qt::MatchContains);
  combo_->completer()->setCaseSensitivity(Qt::CaseInsensitive);
  below_ = new FieldMessage(combo_, this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(combo_);
  column->addWidget(below_);
  setFocusProxy(combo_);
  connect(combo_, &QComboBox::activated, this, &EntityPicker::on_activated);
  connect(combo_->lineEdit(), &QLineEdit::editingFinished, this, &EntityPicker::on_typed);
  connect(&context_.preferences, &Preferences::changed, this, &EntityPicker::reload);
  follows_ = context_.cellar.on_change([this](const cellar::Change&) { reload(); });
}

EntityPicker::~EntityPicker() { stop_listening(combo_->lineEdit(), this); }

void EntityPicker::set_optional(const QString& none_text) {
  none_text_ = none_text;
  reload();
}

void EntityPicker::set_add(const QString& text) {
  add_text_ = text;
  reload();
}

void EntityPicker::choose(std::optional<cellar::Uuid> uuid) {
  typed_fault_.clear();
  unknown_.clear();
  refusal_.clear();
  // A field that nobody filled holds the id of nothing.
  chosen_ = uuid == cellar::Uuid{} ? std::nullopt : uuid;
  reload();
  emit changed();
}

bool EntityPicker::offers(const cellar::Uuid& uuid) const {
  return std::any_of(rows_.begin(), rows_.end(),
                     [&](const Choice& choice) { return choice.uuid == uuid; });
}

void EntityPicker::take(std::optional<cellar::Uuid> uuid) {
  const bool news = uuid != chosen_;
  chosen_ = uuid;
  typed_fault_.clear();
  unknown_.clear();
  refusal_.clear();
  say();
  if (news) emit changed();
}

void EntityPicker::reload() {
  // The row that adds is no choice: left standing, it would be chosen once more by
  // whoever leaves the field.
  const bool at_add = !add_text_.isEmpty() && combo_->currentText() == add_text_;
  const QString typed = at_add ? unknown_ : combo_->currentText();
  const bool keep_typed = !typed_fault_.isEmpty();
  rows_ = choices();
  const QSignalBlocker quiet(combo_);
  combo_->clear();
  int current = -1;
  if (!none_text_.isEmpty()) {
    combo_->addItem(none_text_, none_row);
    if (!chosen_) current = 0;
  }
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    if (chosen_ == rows_[i].uuid) current = combo_->count();
    combo_->addItem(row_text(rows_[i]), static_cast<int>(i));
  }
  if (!add_text_.isEmpty()) combo_->addItem(add_text_, add_row);
  combo_->setCurrentIndex(current);
  if (current < 0) combo_->setEditText(keep_typed ? typed : QString());
  if (keep_typed) combo_->setEditText(typed);
  combo_->lineEdit()->setCursorPosition(0);
  say();
}

void EntityPicker::on_activated(int row) {
  const int which = combo_->itemData(row).toInt();
  if (which == add_row) {
    reload();
    // A form opens on it: the list and the key that chose must be done with first.
    QMetaObject::invokeMethod(
        this, [this, typed = unknown_] { emit add_asked(typed); }, Qt::QueuedConnection);
    return;
  }
  take(which == none_row ? std::nullopt
                         : std::optional(rows_.at(static_cast<std::size_t>(which)).uuid));
}

// Left with typed text: one row must fit it, by name first, else as a part of
// one row alone. What fits nothing stays as typed and is refused.
void EntityPicker::on_typed() {
  const QString typed = combo_->currentText().trimmed();
  const int row = combo_->currentIndex();
  if (row >= 0 && combo_->itemText(row) == combo_->currentText()) {
    if (combo_->itemData(row).toInt() != add_row) on_activated(row);
    return;
  }
  if (typed.isEmpty()) {
    take(std::nullopt);
    reload();
    return;
  }
  const auto pick = [this](const auto& fits) -> const Choice* {
    const auto first = std::find_if(rows_.begin(), rows_.end(), fits);
    if (first == rows_.end() || std::any_of(first + 1, rows_.end(), fits)) return nullptr;
    return &*first;
  };
  const Choice* found = pick(
      [&](const Choice& choice) { return choice.name.compare(typed, Qt::CaseInsensitive) == 0; });
  if (!found) {
    // "CO₂" is found by "co2".
    const auto plain = [](const QString& text) {
      return text.normalized(QString::NormalizationForm_KC);
    };
    found = pick([&](const Choice& choice) {
      return plain(row_text(choice)).contains(plain(typed), Qt::CaseInsensitive);
    });
  }
  if (found) {
    take(found->uuid);
    reload();
    return;
  }
  const bool had = chosen_.has_value();
  chosen_.reset();
  unknown_ = typed;
  typed_fault_ =
      add_text_.isEmpty()
          ? tr("There is no %1 “%2” to choose here.").arg(what(), typed)
          : tr("There is no %1 “%2”. “%3” in the list registers it.").arg(what(), typed, add_text_);
  fault_on_show_ = true;
  say();
  if (had) emit changed();
}

QString EntityPicker::fault() const {
  if (!refusal_.isEmpty()) return refusal_;
  if (!typed_fault_.isEmpty()) return typed_fault_;
  return required_ && !chosen_ ? tr("Choose a %1.").arg(what()) : QString();
}

void EntityPicker::show_fault() {
  fault_on_show_ = true;
  say();
}

void EntityPicker::set_refusal(const QString& sentence) {
  refusal_ = sentence;
  show_fault();
}

void EntityPicker::say() {
  const QString wrong = fault();
  if (wrong.isEmpty()) fault_on_show_ = false;
  below_->fault(fault_on_show_ ? wrong : QString());
}

QString EntityPicker::what() const {
  switch (kind()) {
    case cellar::SubjectKind::keg:
      return tr("keg");
    case cellar::SubjectKind::beer:
      return tr("beer");
    case cellar::SubjectKind::batch:
      return tr("batch");
    case cellar::SubjectKind::place:
      return tr("place");
    case cellar::SubjectKind::line:
      return tr("line");
    case cellar::SubjectKind::bottle:
      return tr("gas bottle");
    case cellar::SubjectKind::regulator:
      return tr("regulator");
    case cellar::SubjectKind::segment:
    case cellar::SubjectKind::rule:
    case cellar::SubjectKind::instrument:
    case cellar::SubjectKind::cellar:
      break;
  }
  return tr("instrument");
}

// The beginning of the name stays in sight when there is too little room.
void EntityPicker::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layout()->activate();
  if (!combo_->lineEdit()->hasFocus()) combo_->lineEdit()->home(false);
}

}  // namespace ullage::ui
