// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/log_preview.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QDate>
#include <QDateEdit>
#include <algorithm>

#include "core/report/cellar_lists.h"
#include "core/report/due_sheet.h"
#include "core/report/names.h"
#include "core/report/page_lists.h"
#include "core/report/period_logs.h"
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
  bool focusNextPrevChild(bool next) override { return QWidget::focusNextPrevChild(next); }
};

struct LogPaperText {
  Q_DECLARE_TR_FUNCTIONS(LogPaperText)
};

bool over_a_period(LogPaper which) {
  return which == LogPaper::line_cleaning || which == LogPaper::temperature ||
         which == LogPaper::gas || which == LogPaper::wastage || which == LogPaper::all;
}

}  // namespace

QString title_of(LogPaper which) {
  switch (which) {
    case LogPaper::line_cleaning:
      return LogPaperText::tr("Line cleaning log");
    case LogPaper::temperature:
      return LogPaperText::tr("Temperature log");
    case LogPaper::gas:
      return LogPaperText::tr("Gas log");
    case LogPaper::wastage:
      return LogPaperText::tr("Wastage book");
    case LogPaper::round:
      return LogPaperText::tr("Round sheet");
    case LogPaper::custody:
      return LogPaperText::tr("Custody list");
    case LogPaper::kegs:
      return LogPaperText::tr("Keg list");
    case LogPaper::lines:
      return LogPaperText::tr("Line list");
    case LogPaper::rules:
      return LogPaperText::tr("Rule list");
    case LogPaper::batches:
      return LogPaperText::tr("Batch list");
    case LogPaper::recall:
      return LogPaperText::tr("Recall list");
    case LogPaper::due:
      return LogPaperText::tr("Due list");
    case LogPaper::all:
      return LogPaperText::tr("Whole log");
  }
  return {};
}

LogPreview::LogPreview(const Context& context, LogPaper which, QWidget* parent)
    : PaperPreview(context, title_of(which), parent), which_(which) {
  if (over_a_period(which)) add_period();
  if (which == LogPaper::recall) add_batches();
  if (which == LogPaper::due)
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
  const auto status = context().cellar.status();
  const cellar::Journal& journal = context().cellar.journal();
  const report::Speaker speaker = context().speaker();
  const std::string by = s(context().preferences.initials());
  switch (which_) {
    case LogPaper::line_cleaning:
      return report::line_cleaning_log(journal, *status, period(), speaker, by);
    case LogPaper::temperature:
      return report::temperature_log(journal, *status, period(), speaker, by);
    case LogPaper::gas:
      return report::gas_log(journal, *status, period(), speaker, by);
    case LogPaper::wastage:
      return report::wastage_book(journal, *status, period(), speaker, by);
    case LogPaper::round:
      return report::round_sheet(journal, *status, speaker, by);
    case LogPaper::all:
      return report::entry_log(journal, *status, period(), speaker, by);
    case LogPaper::custody:
      return report::custody_list(journal, *status, speaker, by);
    case LogPaper::kegs:
      return report::keg_list(*status, speaker, by);
    case LogPaper::lines:
      return report::line_list(*status, speaker, by);
    case LogPaper::rules:
      return report::rule_list(*status, speaker, by);
    case LogPaper::batches:
      return report::batch_list(journal, *status, speaker, by);
    case LogPaper::due: {
      const int within = static_cast<int>(today().daysTo(to_->date()));
      return report::due_list(report::due_lines(*status, journal, speaker, within), *status,
                              speaker, within, by);
    }
    case LogPaper::recall:
      break;
  }
  if (batches_.empty()) {
    report::TableSheet none = report::sheet_titled("Recall list", *status, speaker, by);
    none.when_empty = "No batch is registered.";
    return none;
  }
  const auto chosen = static_cast<std::size_t>(std::max(0, batch_->currentIndex()));
  return report::recall_list(journal, *status, batches_.at(chosen), speaker, by);
}

std::unique_ptr<Pages> LogPreview::make_pages() {
  sheet_ = make_sheet();
  return std::make_unique<TableSheetPages>(sheet_, paper(), font());
}

std::optional<std::string> LogPreview::csv() const { return report::csv_of(sheet_); }

}  // namespace ullage::ui
