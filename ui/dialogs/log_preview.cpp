// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/log_preview.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QDate>
#include <QDateEdit>
#include <algorithm>
#include <array>

#include "core/report/names.h"
#include "core/report/recall_list.h"
#include "ui/preferences.h"
#include "ui/print/table_sheet_pages.h"

namespace ullage::ui {
namespace {

constexpr int days_at_first = 30;

cellar::Date cellar_date(const QDate& day) {
  return cellar::Date(std::chrono::days(QDate(1970, 1, 1).daysTo(day)));
}

// Tab goes on to the next field at once; the arrow keys move among day, month
// and year.
class LogDayEdit final : public QDateEdit {
 public:
  using QDateEdit::QDateEdit;

 protected:
  // What QDateTimeEdit does with Tab is what this is to leave out.
  // NOLINTNEXTLINE(bugprone-parent-virtual-call)
  bool focusNextPrevChild(bool next) override { return QWidget::focusNextPrevChild(next); }
};

struct LogPaperText {
  Q_DECLARE_TR_FUNCTIONS(LogPaperText)
};

constexpr std::array of_the_register = {report::LogBook::bottles, report::LogBook::regulators,
                                        report::LogBook::places,  report::LogBook::instruments,
                                        report::LogBook::hose,    report::LogBook::beers};

}  // namespace

QString title_of(report::LogBook which) {
  switch (which) {
    case report::LogBook::line_cleaning:
      return LogPaperText::tr("Line cleaning log");
    case report::LogBook::temperature:
      return LogPaperText::tr("Temperature log");
    case report::LogBook::gas:
      return LogPaperText::tr("Gas log");
    case report::LogBook::wastage:
      return LogPaperText::tr("Wastage book");
    case report::LogBook::round:
      return LogPaperText::tr("Round sheet");
    case report::LogBook::custody:
      return LogPaperText::tr("Custody list");
    case report::LogBook::kegs:
      return LogPaperText::tr("Keg list");
    case report::LogBook::lines:
      return LogPaperText::tr("Line list");
    case report::LogBook::rules:
      return LogPaperText::tr("Rule list");
    case report::LogBook::batches:
      return LogPaperText::tr("Batch list");
    case report::LogBook::recall:
      return LogPaperText::tr("Recall list");
    case report::LogBook::due:
      return LogPaperText::tr("Due list");
    case report::LogBook::all:
      return LogPaperText::tr("Whole log");
    case report::LogBook::bottles:
      return LogPaperText::tr("Gas bottles");
    case report::LogBook::regulators:
      return LogPaperText::tr("Regulators");
    case report::LogBook::places:
      return LogPaperText::tr("Places");
    case report::LogBook::instruments:
      return LogPaperText::tr("Instruments");
    case report::LogBook::hose:
      return LogPaperText::tr("Hose");
    case report::LogBook::beers:
      return LogPaperText::tr("Beers");
  }
  return {};
}

LogPreview::LogPreview(const Context& context, report::LogBook which, QWidget* parent)
    : PaperPreview(context, title_of(which), parent), which_(which) {
  if (report::over_a_period(which)) add_period();
  if (which == report::LogBook::recall) add_batches();
  if (std::find(of_the_register.begin(), of_the_register.end(), which) != of_the_register.end())
    add_register();
  if (which == report::LogBook::due)
    to_ = add_day(tr("&To and with"), today().addDays(report::usually_due_within));
  offer_csv();
  lay_out();
}

QDate LogPreview::today() const {
  const cellar::Facade& cellar = context().cellar;
  const auto days = cellar.calendar().date_of(cellar.now()).time_since_epoch().count();
  return QDate(1970, 1, 1).addDays(days);
}

QDateEdit* LogPreview::add_day(const QString& label, const QDate& at) {
  auto* edit = new LogDayEdit(at);
  edit->setCalendarPopup(true);
  edit->setDisplayFormat(QStringLiteral("d MMM yyyy"));
  edit->setMinimumWidth(132);
  add_choice(label, edit);
  connect(edit, &QDateEdit::dateChanged, this, &LogPreview::lay_out);
  return edit;
}

void LogPreview::add_period() {
  from_ = add_day(tr("&From"), today().addDays(1 - days_at_first));
  to_ = add_day(tr("&To and with"), today());
}

void LogPreview::add_batches() {
  batch_ = new QComboBox;
  const auto status = context().cellar.status();
  std::vector<report::RecalledBatch> recalled =
      report::recalled_batches(context().cellar.journal());
  std::reverse(recalled.begin(), recalled.end());
  for (const report::RecalledBatch& recall : recalled) {
    batches_.push_back(recall.batch);
    batch_->addItem(tr("%1 (recalled)").arg(q(report::batch_with_beer(recall.batch, *status))));
  }
  for (const cellar::BatchRecord& batch : status->batches) {
    if (std::find(batches_.begin(), batches_.end(), batch.batch) != batches_.end()) continue;
    batches_.push_back(batch.batch);
    batch_->addItem(q(report::batch_with_beer(batch.batch, *status)));
  }
  batch_->setMinimumWidth(220);
  add_choice(tr("&Batch"), batch_);
  connect(batch_, &QComboBox::currentIndexChanged, this, &LogPreview::lay_out);
}

void LogPreview::add_register() {
  auto* list = new QComboBox;
  list->setObjectName(QStringLiteral("list"));
  for (const report::LogBook each : of_the_register) {
    list->addItem(title_of(each), static_cast<int>(each));
    if (each == which_) list->setCurrentIndex(list->count() - 1);
  }
  add_choice(tr("&List"), list);
  connect(list, &QComboBox::currentIndexChanged, this, [this, list] {
    which_ = static_cast<report::LogBook>(list->currentData().toInt());
    setWindowTitle(title_of(which_));
    lay_out();
  });
}

void LogPreview::set_period(const QDate& from, const QDate& to) {
  from_->setDate(from);
  to_->setDate(to);
}

void LogPreview::set_batch(cellar::BatchId batch) {
  const auto at = std::find(batches_.begin(), batches_.end(), batch);
  if (at != batches_.end()) batch_->setCurrentIndex(static_cast<int>(at - batches_.begin()));
}

report::Period LogPreview::period() const {
  // Typed the wrong way round, the two days still mean the time between them.
  const cellar::Date a = cellar_date(from_->date());
  const cellar::Date b = cellar_date(to_->date());
  return {std::min(a, b), std::max(a, b)};
}

report::TableSheet LogPreview::make_sheet() const {
  report::BookAsked asked{.book = which_};
  if (report::over_a_period(which_)) asked.period = period();
  if (which_ == report::LogBook::due) {
    asked.within_days = static_cast<int>(today().daysTo(to_->date()));
  }
  if (!batches_.empty()) {
    asked.batch = batches_.at(static_cast<std::size_t>(std::max(0, batch_->currentIndex())));
  }
  return report::book_sheet(asked, context().cellar.journal(), *context().cellar.status(),
                            context().speaker(), s(context().preferences.initials()));
}

std::unique_ptr<Pages> LogPreview::make_pages() {
  sheet_ = make_sheet();
  return std::make_unique<TableSheetPages>(sheet_, paper(), font());
}

std::optional<std::string> LogPreview::csv() const { return report::csv_of(sheet_); }

}  // namespace ullage::ui
