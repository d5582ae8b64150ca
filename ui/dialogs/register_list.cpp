// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/register_list.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/report/names.h"
#include "ui/models/word_search.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/wrapped_rows.h"

namespace ullage::ui {
namespace {

enum Column { column_name, column_words, column_use };
constexpr int thing_row_height = 28;

QPushButton* list_button(const QString& text, const char* name) {
  auto* made = new QPushButton(text);
  made->setObjectName(QLatin1String(name));
  made->setAutoDefault(false);
  return made;
}

}  // namespace

RegisterList::RegisterList(const Context& context, QWidget* parent)
    : QDialog(parent), context_(context) {
  setObjectName(QStringLiteral("register_list"));
  setWindowTitle(tr("Everything registered"));
  build();
  resize_within_screen(*this, {860, 600});
  listening_ = context_.cellar.on_change([this](const cellar::Change&) { refresh(); });
  connect(&context_.preferences, &Preferences::changed, this, &RegisterList::refresh);
  refresh();
  find_->setFocus();
}

void RegisterList::build() {
  find_ = new QLineEdit;
  find_->setObjectName(QStringLiteral("register_find"));
  find_->setAccessibleName(tr("Find"));
  find_->setPlaceholderText(tr("Find: a name, a kind, “thermometer”"));
  find_->setClearButtonEnabled(true);
  table_ = new QTreeWidget;
  table_->setObjectName(QStringLiteral("register_table"));
  table_->setAccessibleName(tr("Everything registered"));
  table_->setHeaderLabels({tr("Name"), tr("As it stands"), tr("In use")});
  table_->setRootIsDecorated(false);
  table_->setTabKeyNavigation(false);
  table_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table_->header()->setSectionResizeMode(column_words, QHeaderView::Stretch);
  table_->header()->setStretchLastSection(false);
  wrap_rows(*table_, thing_row_height);
  auto* note =
      new InkLabel(tr("A change counts from when it is logged as happening; what was "
                      "before stays in the log. A mistake is better corrected in the log."),
                   TextRole::small, Ink::secondary);
  note->setWordWrap(true);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addWidget(find_);
  all->addWidget(table_, 1);
  all->addWidget(note);
  all->addWidget(build_actions());
  connect(find_, &QLineEdit::textChanged, this, &RegisterList::narrow);
  connect(table_, &QTreeWidget::currentItemChanged, this, &RegisterList::tell_chosen);
  connect(table_, &QTreeWidget::itemActivated, this, &RegisterList::change);
}

QWidget* RegisterList::build_actions() {
  auto* actions = new QWidget;
  change_ = list_button(tr("C&hange…"), "register_change");
  use_ = list_button(tr("Take out of &use"), "register_use");
  outcome_ = new InkLabel;
  outcome_->setWordWrap(true);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  auto* row = new QHBoxLayout(actions);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::s);
  row->addWidget(change_);
  row->addWidget(use_);
  row->addWidget(outcome_, 1);
  row->addWidget(buttons);
  connect(change_, &QPushButton::clicked, this, &RegisterList::change);
  connect(use_, &QPushButton::clicked, this, &RegisterList::switch_use);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  return actions;
}

void RegisterList::refresh() {
  const auto before = chosen();
  const auto status = context_.cellar.status();
  const report::Speaker speaker = context_.speaker();
  const QSignalBlocker quiet(table_);
  table_->clear();
  things_ = registered_things(*status);
  for (const RegisteredThing& thing : things_) {
    new QTreeWidgetItem(table_, {q(report::name_of(thing.about, *status)),
                                 q(report::say_entry(thing.record, *status, speaker)),
                                 in_use(thing.record) ? tr("yes") : tr("no")});
  }
  if (things_.empty()) outcome_->setText(tr("Nothing is registered yet."));
  narrow();
  if (before) choose(before->about);
  tell_chosen();
}

// The first row on show becomes the current one when the one before is hidden.
void RegisterList::narrow() {
  const WordSearch wanted(find_->text());
  QTreeWidgetItem* first = nullptr;
  for (int i = 0; i < table_->topLevelItemCount(); ++i) {
    QTreeWidgetItem* row = table_->topLevelItem(i);
    const bool fits =
        wanted.finds(row->text(column_name) + QLatin1Char(' ') + row->text(column_words));
    row->setHidden(!fits);
    if (fits && !first) first = row;
  }
  const QTreeWidgetItem* current = table_->currentItem();
  if (!current || current->isHidden()) table_->setCurrentItem(first);
  tell_chosen();
}

std::optional<RegisteredThing> RegisterList::chosen() const {
  QTreeWidgetItem* current = table_->currentItem();
  const int row = table_->indexOfTopLevelItem(current);
  if (row < 0 || current->isHidden()) return std::nullopt;
  return things_.at(static_cast<std::size_t>(row));
}

void RegisterList::choose(const cellar::SubjectRef& about) {
  const auto at = std::find_if(things_.begin(), things_.end(),
                               [&](const RegisteredThing& t) { return t.about == about; });
  if (at == things_.end()) return;
  table_->setCurrentItem(table_->topLevelItem(static_cast<int>(at - things_.begin())));
}

void RegisterList::tell_chosen() {
  const auto thing = chosen();
  const bool can = thing && !context_.cellar.read_only();
  change_->setEnabled(can);
  use_->setEnabled(can && with_use(thing->record, false));
  use_->setText(!thing || in_use(thing->record) ? tr("Take out of &use") : tr("Put back in &use"));
}

void RegisterList::change() {
  const auto thing = chosen();
  if (!thing || context_.cellar.read_only()) return;
  outcome_->clear();
  context_.navigator.open_task(
      {std::string(cellar::kind_of(thing->record)), thing->about, std::nullopt, std::nullopt});
}

void RegisterList::switch_use() {
  const auto thing = chosen();
  if (!thing) return;
  auto changed = with_use(thing->record, !in_use(thing->record));
  if (!changed) return;
  const std::string name = report::name_of(thing->about, *context_.cellar.status());
  const bool back = in_use(*changed);
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  act.drafts.push_back({std::move(*changed), context_.cellar.now(), {}, {}});
  const auto logged = context_.cellar.log(act);
  outcome_->set_ink(logged ? Ink::success : Ink::danger);
  if (!logged) {
    outcome_->setText(q(report::say(logged.error().faults.front().why, context_.speaker())));
  } else {
    outcome_->setText((back ? tr("%1 is in use again.") : tr("%1 is out of use.")).arg(q(name)));
  }
}

}  // namespace ullage::ui
