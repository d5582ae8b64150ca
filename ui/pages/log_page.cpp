// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/log_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "core/report/names.h"
#include "ui/dialogs/as_of_dialog.h"
#include "ui/dialogs/lock_guard.h"
#include "ui/dialogs/sheet_preview.h"
#include "ui/models/log_table.h"
#include "ui/pages/log_kinds.h"
#include "ui/pages/log_subjects.h"
#include "ui/preferences.h"
#include "ui/prompts.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

namespace {

QDate day_of_log(const cellar::Facade& of) {
  const cellar::Date today = of.calendar().date_of(of.now());
  return QDate(1970, 1, 1).addDays(today.time_since_epoch().count());
}

// Rows are chosen whole; a ring around one cell of them would say otherwise.
class WholeRows : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    option->state.setFlag(QStyle::State_HasFocus, false);
  }
};

}  // namespace

LogPage::LogPage(const Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("log_page"));
  table_ = new LogTable(context_, this);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addWidget(build_header());
  all->addWidget(build_filters());
  all->addWidget(build_table(), 1);
  all->addWidget(build_detail());
  fill_subjects();
  fill_kinds();
  listening_ = context_.cellar.on_change([this](const cellar::Change&) {
    fill_subjects();
    fill_kinds();
    table_->reload();
  });
  connect(&context_.preferences, &Preferences::changed, table_, &LogTable::reload);
  connect(&context_.preferences, &Preferences::changed, this, &LogPage::fill_kinds);
  connect(table_, &LogTable::search_finished, this, &LogPage::update_empty_state);
  connect(table_, &QAbstractItemModel::modelReset, this, &LogPage::show_selection);
  update_empty_state();
  show_selection();
}

LogPage::~LogPage() = default;

QWidget* LogPage::build_header() {
  auto* header = new QWidget;
  auto* row = new QHBoxLayout(header);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(new InkLabel(tr("Log"), TextRole::title));
  count_ = new InkLabel({}, TextRole::small, Ink::secondary);
  row->addWidget(count_);
  row->addStretch(1);
  auto* as_of = new QPushButton(tr("As of a past time…"));
  as_of->setObjectName(QStringLiteral("as_of"));
  connect(as_of, &QPushButton::clicked, this, &LogPage::show_as_of);
  row->addWidget(as_of);
  return header;
}

QWidget* LogPage::build_filters() {
  auto* filters = new QWidget;
  auto* row = new QHBoxLayout(filters);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::s);
  words_ = new QLineEdit;
  words_->setObjectName(QStringLiteral("log_words"));
  words_->setPlaceholderText(tr("Find words"));
  words_->setClearButtonEnabled(true);
  words_->setMinimumWidth(96);
  words_->setAccessibleName(tr("Find words in the log"));
  about_ = new QComboBox;
  about_->setObjectName(QStringLiteral("log_about"));
  about_->setAccessibleName(tr("About"));
  about_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  about_->setMinimumContentsLength(10);
  kind_ = new QComboBox;
  kind_->setObjectName(QStringLiteral("log_kind"));
  kind_->setAccessibleName(tr("Kind of entry"));
  kind_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  kind_->setMinimumContentsLength(12);
  between_ = new QCheckBox(tr("&Between"));
  const QDate day = day_of_log(context_.cellar);
  const auto date = [&](const QString& name, const QDate& at) {
    auto* edit = new QDateEdit(at);
    edit->setCalendarPopup(true);
    edit->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    edit->setAccessibleName(name);
    edit->setMinimumWidth(120);
    edit->setVisible(false);  // room for the words to find
    connect(edit, &QDateEdit::dateChanged, this, &LogPage::apply_filter);
    return edit;
  };
  from_ = date(tr("From"), day.addDays(-7));
  to_ = date(tr("To and with"), day);
  struck_ = new QCheckBox(tr("&Struck too"));
  struck_->setChecked(true);
  row->addWidget(words_, 1);
  row->addWidget(about_);
  row->addWidget(kind_);
  row->addWidget(between_);
  row->addWidget(from_);
  row->addWidget(to_);
  row->addWidget(struck_);
  connect(words_, &QLineEdit::textChanged, this, &LogPage::apply_filter);
  connect(about_, &QComboBox::currentIndexChanged, this, &LogPage::apply_filter);
  connect(kind_, &QComboBox::currentIndexChanged, this, &LogPage::apply_filter);
  connect(struck_, &QCheckBox::toggled, this, &LogPage::apply_filter);
  connect(between_, &QCheckBox::toggled, this, [this](bool on) {
    from_->setVisible(on);
    to_->setVisible(on);
    apply_filter();
  });
  return filters;
}

QWidget* LogPage::build_table() {
  view_ = new QTableView;
  view_->setObjectName(QStringLiteral("log_table"));
  view_->setAccessibleName(tr("Entries, newest first"));
  view_->setModel(table_);
  view_->setSelectionBehavior(QAbstractItemView::SelectRows);
  view_->setSelectionMode(QAbstractItemView::SingleSelection);
  view_->setTabKeyNavigation(false);
  view_->setShowGrid(false);
  view_->setWordWrap(false);
  view_->setItemDelegate(new WholeRows(view_));
  view_->verticalHeader()->hide();
  view_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  view_->verticalHeader()->setDefaultSectionSize(30);
  QHeaderView* columns = view_->horizontalHeader();
  columns->setHighlightSections(false);
  columns->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  columns->setSectionResizeMode(LogTable::what, QHeaderView::Stretch);
  view_->setColumnWidth(LogTable::when, 140);
  view_->setColumnWidth(LogTable::about, 164);
  view_->setColumnWidth(LogTable::by, 52);
  view_->setColumnWidth(LogTable::standing, 118);
  // The keyboard makes the first row the current one without marking it.
  connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& now) {
            if (now.isValid() && !view_->selectionModel()->isSelected(now)) {
              view_->selectRow(now.row());
            }
            show_selection();
          });
  empty_ = new EmptyState(Icon::log, tr("Nothing matches"),
                          tr("No entry fits what is asked for above."));
  connect(empty_->add_action(tr("Show everything")), &QPushButton::clicked, this,
          &LogPage::clear_filter);
  stack_ = new QStackedWidget;
  stack_->addWidget(view_);
  stack_->addWidget(empty_);
  return stack_;
}

QWidget* LogPage::build_detail() {
  auto* bar = new QWidget;
  auto* row = new QHBoxLayout(bar);
  row->setContentsMargins(0, 0, 0, 0);
  detail_ = new InkLabel({}, TextRole::small, Ink::secondary);
  detail_->setWordWrap(true);
  detail_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  const auto button = [&](const QString& text, const char* name) {
    auto* b = new QPushButton(text);
    b->setObjectName(QLatin1String(name));
    return b;
  };
  correct_ = button(tr("&Correct…"), "log_correct");
  strike_ = button(tr("S&trike…"), "log_strike");
  restore_ = button(tr("&Restore…"), "log_restore");
  row->addWidget(detail_, 1);
  row->addWidget(correct_);
  row->addWidget(strike_);
  row->addWidget(restore_);
  connect(correct_, &QPushButton::clicked, this, &LogPage::correct_selected);
  connect(strike_, &QPushButton::clicked, this, &LogPage::strike_selected);
  connect(restore_, &QPushButton::clicked, this, &LogPage::restore_selected);
  return bar;
}

void LogPage::fill_subjects() { fill_subject_box(*about_, *context_.cellar.status()); }

void LogPage::fill_kinds() {
  const auto& entries = context_.cellar.journal().entries();
  for (; kinds_of_ < entries.size(); ++kinds_of_) {
    kinds_.insert(cellar::kind_of(entries[kinds_of_].payload));
  }
  fill_kind_box(*kind_, kinds_, context_.preferences.words());
}

void LogPage::show_entries_of(cellar::SubjectRef about) {
  clear_filter();
  select_subject(*about_, about);
}

void LogPage::select(cellar::EntryId entry) {
  if (!table_->index_of(entry).isValid()) clear_filter();
  const QModelIndex at = table_->index_of(entry);
  if (!at.isValid()) return;
  view_->setCurrentIndex(at);
  view_->scrollTo(at);
}

void LogPage::clear_filter() {
  const QSignalBlocker quiet[] = {QSignalBlocker(words_), QSignalBlocker(about_),
                                  QSignalBlocker(kind_), QSignalBlocker(between_),
                                  QSignalBlocker(struck_)};
  words_->clear();
  about_->setCurrentIndex(0);
  kind_->setCurrentIndex(0);
  between_->setChecked(false);
  from_->setVisible(false);
  to_->setVisible(false);
  struck_->setChecked(true);
  apply_filter();
}

std::optional<cellar::Instant> LogPage::start_of(const QDateEdit& edit, int days_on) const {
  const auto days = QDate(1970, 1, 1).daysTo(edit.date().addDays(days_on));
  const cellar::LocalTime midnight = cellar::Date(std::chrono::days(days));
  // Where a spring change skips midnight the day starts an hour later.
  const std::optional<cellar::Instant> at = context_.cellar.calendar().to_instant(midnight);
  return at ? at : context_.cellar.calendar().to_instant(midnight + std::chrono::hours(1));
}

void LogPage::apply_filter() {
  LogFilter filter;
  filter.words = WordSearch(words_->text());
  filter.about = subject_in(*about_);
  const KindChosen chosen = kind_in(*kind_);
  filter.group = chosen.group;
  filter.kind = chosen.kind;
  filter.with_struck = struck_->isChecked();
  if (between_->isChecked()) {
    filter.from = start_of(*from_, 0);
    filter.to = start_of(*to_, 1);
  }
  table_->set_filter(filter);
  update_empty_state();
}

void LogPage::update_empty_state() {
  const int shown = table_->rowCount();
  const bool nothing = shown == 0 && !table_->searching();
  const bool blank_cellar = context_.cellar.journal().entries().empty();
  if (blank_cellar) {
    empty_->set_text(tr("Nothing logged yet"),
                     tr("Whatever you log, on any page, is listed here for good."));
  } else {
    empty_->set_text(tr("Nothing matches"), tr("No entry fits what is asked for above."));
  }
  stack_->setCurrentIndex(nothing ? 1 : 0);
  count_->setText(table_->searching() ? tr("%1 so far").arg(shown)
                                      : tr("%n entries", nullptr, shown));
}

const cellar::Entry* LogPage::selected() const { return table_->entry_at(view_->currentIndex()); }

void LogPage::show_selection() {
  const cellar::Entry* entry = selected();
  const bool changes = entry && !context_.cellar.read_only();
  const bool in_story =
      entry && context_.cellar.journal().standing(entry->header.id) == cellar::Standing::in_force;
  const bool about_entries = entry && (holds_alternative<cellar::Struck>(entry->payload) ||
                                       holds_alternative<cellar::Restored>(entry->payload));
  correct_->setEnabled(changes && in_story && !about_entries);
  strike_->setEnabled(changes && in_story && !about_entries);
  restore_->setEnabled(changes && context_.cellar.journal().standing(entry->header.id) ==
                                      cellar::Standing::struck);
  if (!entry) {
    detail_->setText(tr("Select an entry to correct or strike it. Nothing is ever erased."));
    return;
  }
  const QString text = recorded_words(*entry) + undone_words(*entry);
  // In full: the row may be too short for it.
  const QModelIndex what = view_->currentIndex().siblingAtColumn(LogTable::what);
  detail_->setText(what.data().toString() + QLatin1Char('\n') + text);
}

QString LogPage::recorded_words(const cellar::Entry& entry) const {
  QString text =
      tr("Recorded %1").arg(q(report::say_clock(entry.header.recorded_at, context_.speaker())));
  if (!entry.header.by.empty()) text += tr(" by %1").arg(q(entry.header.by));
  return text + tr(", entry %1").arg(entry.header.sequence);
}

// Who took it out of the story, when and why: in the row there is hardly room for it.
QString LogPage::undone_words(const cellar::Entry& entry) const {
  const cellar::Journal& journal = context_.cellar.journal();
  const cellar::Entry* later = journal.replaced_by(entry.header.id);
  const cellar::Entry* striker = journal.struck_by(entry.header.id);
  if (!later && !striker) return {};
  const cellar::EntryHeader& by = (later ? later : striker)->header;
  const QString when = q(report::say_clock(by.recorded_at, context_.speaker()));
  QString text = later ? tr(". Corrected %1 by entry %2").arg(when).arg(by.sequence)
                       : tr(". Struck %1").arg(when);
  if (!by.by.empty()) text += tr(" by %1").arg(q(by.by));
  const auto* strike = striker ? get_if<cellar::Struck>(&striker->payload) : nullptr;
  return strike && !strike->reason.empty() ? text + QStringLiteral(": ") + q(strike->reason) : text;
}

void LogPage::tell(const cellar::Outcome<cellar::ActId>& outcome, const QString& done) {
  if (outcome) {
    context_.navigator.announce(done, true);
  } else {
    context_.prompts.tell(this, tr("That was not logged."),
                          q(report::say(outcome.error().faults.front().why, context_.speaker())));
  }
}

void LogPage::strike_selected() {
  const cellar::Entry* entry = selected();
  if (!entry) return;
  const cellar::EntryId id = entry->header.id;
  if (!may_strike(context_, this, {id})) return;
  const auto reason = context_.prompts.ask_reason(this, tr("Why is this entry struck?"));
  if (!reason) return;
  tell(context_.cellar.strike({id}, s(*reason), s(context_.preferences.initials())),
       tr("Struck. The entry stays readable."));
}

void LogPage::restore_selected() {
  const cellar::Entry* entry = selected();
  if (!entry) return;
  const cellar::EntryId id = entry->header.id;
  const auto reason = context_.prompts.ask_reason(this, tr("Why is this entry brought back?"));
  if (!reason) return;
  tell(context_.cellar.restore({id}, s(*reason), s(context_.preferences.initials())),
       tr("Brought back."));
}

void LogPage::correct_selected() {
  const cellar::Entry* entry = selected();
  if (!entry) return;
  cellar::SuggestedTask task;
  task.kind = std::string(cellar::kind_of(entry->payload));
  task.prefill = entry->payload;
  task.corrects = entry->header.id;
  context_.navigator.open_task(task);
}

void LogPage::show_as_of() {
  AsOfDialog ask(context_, this);
  if (ask.exec() != QDialog::Accepted) return;
  if (const std::optional<cellar::AsOf> as_of = ask.as_of()) {
    SheetPreview preview(context_, this, as_of);
    preview.exec();
  }
}

}  // namespace ullage::ui
