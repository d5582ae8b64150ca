// SPDX-License-Identifier: GPL-3.0-or-later
//
// The commands that print tags and logs, and tell what is due.
#include <QString>
#include <algorithm>
#include <ostream>

#include "app/exit_codes.h"
#include "app/headless_parts.h"
#include "core/report/cleaning_list.h"
#include "core/report/due_sheet.h"
#include "core/report/log_book.h"
#include "core/report/names.h"
#include "core/report/recall_list.h"
#include "core/report/tags.h"
#include "ui/print/cleaning_list_pages.h"
#include "ui/print/sheet_output.h"
#include "ui/print/table_sheet_pages.h"
#include "ui/print/tag_pages.h"

namespace ullage::app {
namespace {

constexpr std::chrono::days usual_period{30};

int write_pages(const ui::Pages& pages, const std::filesystem::path& path, const std::string& title,
                Terminal terminal) {
  const auto written =
      ui::write_pdf(pages, QString::fromStdString(path.string()), QString::fromStdString(title));
  if (!written) {
    terminal.err << written.error().toStdString() << '\n';
    return exit_file_problem;
  }
  return exit_ok;
}

int tell(const std::string& text, Terminal terminal) {
  terminal.out << text;
  return exit_ok;
}

std::string pages_words(const ui::Pages& pages) {
  return counted(static_cast<std::size_t>(pages.count()), "page", "pages");
}

cellar::Date day_said(const std::string& text, cellar::Date otherwise) {
  const auto day = parse_day(text);
  return day ? cellar::Date(std::chrono::local_days(*day)) : otherwise;
}

// The batch named, or the one recalled last.
std::optional<cellar::BatchId> batch_of(const std::string& name, const CellarSession& session,
                                        const cellar::CellarStatus& status) {
  if (name.empty()) {
    const auto recalled = report::recalled_batches(session.journal());
    return recalled.empty() ? std::nullopt : std::optional(recalled.back().batch);
  }
  for (const cellar::BatchRecord& batch : status.batches) {
    if (batch.name == name || report::batch_with_beer(batch.batch, status) == name) {
      return batch.batch;
    }
  }
  return std::nullopt;
}

std::optional<report::TableSheet> sheet_of(const WriteLog& asked, const CellarSession& session,
                                           const cellar::CellarStatus& status,
                                           const report::Speaker& speaker, Terminal terminal) {
  const cellar::Date last = day_said(asked.to, speaker.calendar->date_of(speaker.now));
  const report::Period period{day_said(asked.from, last - usual_period + std::chrono::days(1)),
                              last};
  report::BookAsked book{.book = asked.book, .period = period};
  if (asked.book == LogBook::due) {
    const cellar::Date today = speaker.calendar->date_of(speaker.now);
    const cellar::Date until =
        day_said(asked.to, today + std::chrono::days(report::usually_due_within));
    book.within_days = static_cast<int>((until - today).count());
  }
  if (asked.book == LogBook::recall) {
    book.batch = batch_of(asked.batch, session, status);
    if (!book.batch) {
      terminal.err << (asked.batch.empty() ? "No batch was recalled; name one with --batch."
                                           : "No batch is called " + asked.batch + ".")
                   << '\n';
      return std::nullopt;
    }
  }
  return report::book_sheet(book, session.journal(), status, speaker, asked.by);
}

std::optional<cellar::SubjectRef> line_called(const std::string& name,
                                              const cellar::CellarStatus& status) {
  for (const cellar::LineStatus& line : status.lines) {
    if (line.record.name == name || line.record.tap == name) {
      return cellar::subject(line.record.line);
    }
  }
  return std::nullopt;
}

// The things that the tags are to be about; nothing after telling which there is not.
std::optional<std::vector<cellar::SubjectRef>> things_named(const PrintTags& asked,
                                                            const cellar::CellarStatus& status,
                                                            Terminal terminal) {
  std::vector<cellar::SubjectRef> things;
  for (const std::string& number : asked.kegs) {
    const cellar::KegStatus* keg = status.keg_by_tag(number);
    if (!keg) {
      terminal.err << "No keg is called " << number << ".\n";
      return std::nullopt;
    }
    things.push_back(cellar::subject(keg->record.keg));
  }
  for (const std::string& name : asked.lines) {
    const auto line = line_called(name, status);
    if (!line) {
      terminal.err << "No line is called " << name << ".\n";
      return std::nullopt;
    }
    things.push_back(*line);
  }
  return things;
}

std::optional<std::vector<report::WarningTag>> warnings_asked_for(
    const PrintTags& asked, const CellarSession& session, const cellar::CellarStatus& status,
    const report::Speaker& speaker, Terminal terminal) {
  const auto things = things_named(asked, status, terminal);
  if (!things) return std::nullopt;
  if (asked.kind && !things->empty()) {
    std::vector<report::WarningTag> tags;
    for (const cellar::SubjectRef thing : *things) {
      auto tag = report::warning_tag(*asked.kind, thing, session.journal(), status, speaker);
      if (!tag) {
        terminal.err << report::name_of(thing, status) << " has no warning of that kind.\n";
        return std::nullopt;
      }
      tags.push_back(std::move(*tag));
    }
    return tags;
  }
  auto tags = report::warning_tags(session.journal(), status, speaker);
  std::erase_if(tags, [&](const report::WarningTag& tag) {
    const bool named =
        things->empty() || std::find(things->begin(), things->end(), tag.about) != things->end();
    return !named || (asked.kind && tag.warning != *asked.kind);
  });
  return tags;
}

std::optional<std::vector<report::KegTag>> tags_asked_for(const PrintTags& asked,
                                                          const CellarSession& session,
                                                          const cellar::CellarStatus& status,
                                                          const report::Speaker& speaker,
                                                          Terminal terminal) {
  if (asked.kegs.empty()) return report::keg_tags(session.journal(), status, speaker);
  const auto things = things_named(asked, status, terminal);
  if (!things) return std::nullopt;
  std::vector<report::KegTag> tags;
  for (const cellar::SubjectRef thing : *things) {
    const cellar::KegStatus* keg = status.find(cellar::KegId{thing.uuid});
    tags.push_back(report::keg_tag(*keg, session.journal(), status, speaker));
  }
  return tags;
}

// With the usual cleaners: what a label on the shelf says is kept by the window.
cellar::PlannedDay day_asked_for(const PlanDay& asked, const CellarSession& session,
                                 const cellar::CellarStatus& status) {
  const cellar::LocalCalendar& calendar = session.calendar();
  cellar::PlanWishes wishes = cellar::usual_wishes(status, calendar);
  if (asked.minutes) wishes.time_at_hand = units::minutes(*asked.minutes);
  const auto due = cellar::due_work(session.journal(), status, calendar);
  if (!asked.on.empty()) {
    return cellar::plan_cleaning_day(day_said(asked.on, wishes.from), due, status, calendar,
                                     wishes);
  }
  auto proposed = cellar::propose_cleaning_days(due, status, calendar, wishes);
  if (!proposed.empty()) return std::move(proposed.front());
  cellar::PlannedDay none;
  none.day = wishes.from;
  return none;
}

}  // namespace

int tell_due(const TellDue& asked, CellarSession::Tools tools, Terminal terminal) {
  const auto session = CellarSession::open(asked.cellar, tools, for_reading());
  if (!session) return file_problem(terminal, session.error());
  const auto status = (*session)->status();
  const report::Speaker speaker = speaker_for(**session, *status, std::nullopt);
  const auto lines = report::due_lines(*status, (*session)->journal(), speaker, asked.within_days);
  const std::string name = status->cellar ? status->cellar->name : std::string();
  if (asked.csv) {
    terminal.out << report::csv_of(
        report::due_list(lines, *status, speaker, asked.within_days, {}));
  } else {
    terminal.out << (asked.json
                         ? report::json_of(lines, name, speaker.calendar->date_of(speaker.now))
                         : report::text_of(lines));
  }
  const bool overdue = std::any_of(lines.begin(), lines.end(),
                                   [](const report::DueLine& line) { return line.overdue; });
  return overdue ? exit_refused : exit_ok;
}

int print_tags(const PrintTags& asked, CellarSession::Tools tools, Terminal terminal) {
  const auto session = CellarSession::open(asked.cellar, tools, for_reading());
  if (!session) return file_problem(terminal, session.error());
  const auto status = (*session)->status();
  const report::Speaker speaker = speaker_for(**session, *status, asked.units);
  const ui::TagPaper form{
      asked.paper, asked.single ? ui::TagSheet::single : ui::TagSheet::four_a_page, asked.backs};
  std::optional<ui::TagPages> pages;
  std::size_t count = 0;
  if (asked.warnings) {
    auto tags = warnings_asked_for(asked, **session, *status, speaker, terminal);
    if (!tags) return exit_refused;
    if (asked.pdf.empty()) return tell(report::json_of(*tags), terminal);
    count = tags->size();
    pages.emplace(std::move(*tags), form, paper_font());
  } else {
    auto tags = tags_asked_for(asked, **session, *status, speaker, terminal);
    if (!tags) return exit_refused;
    if (asked.pdf.empty()) return tell(report::json_of(*tags), terminal);
    count = tags->size();
    pages.emplace(std::move(*tags), form, paper_font());
  }
  if (count == 0) {
    terminal.err << "There is nothing to print.\n";
    return exit_refused;
  }
  const int code = write_pages(*pages, asked.pdf, "Tags", terminal);
  if (code == exit_ok) {
    terminal.out << asked.pdf.string() << ": " << counted(count, "tag", "tags") << " on "
                 << pages_words(*pages) << ".\n";
  }
  return code;
}

int write_log(const WriteLog& asked, CellarSession::Tools tools, Terminal terminal) {
  const auto session = CellarSession::open(asked.cellar, tools, for_reading());
  if (!session) return file_problem(terminal, session.error());
  const auto status = (*session)->status();
  const report::Speaker speaker = speaker_for(**session, *status, asked.units);
  const auto sheet = sheet_of(asked, **session, *status, speaker, terminal);
  if (!sheet) return exit_refused;
  switch (asked.form) {
    case LogForm::text:
      return tell(report::text_of(*sheet), terminal);
    case LogForm::csv:
      return tell(report::csv_of(*sheet), terminal);
    case LogForm::json:
      return tell(report::json_of(*sheet), terminal);
    case LogForm::pdf:
      break;
  }
  const ui::TableSheetPages pages(*sheet, asked.paper, paper_font());
  const int code = write_pages(pages, asked.pdf, sheet->title, terminal);
  if (code == exit_ok) {
    terminal.out << asked.pdf.string() << ": " << counted(sheet->rows.size(), "row", "rows")
                 << " on " << pages_words(pages) << ".\n";
  }
  return code;
}

int plan_day(const PlanDay& asked, CellarSession::Tools tools, Terminal terminal) {
  const auto session = CellarSession::open(asked.cellar, tools, for_reading());
  if (!session) return file_problem(terminal, session.error());
  const auto status = (*session)->status();
  const report::Speaker speaker = speaker_for(**session, *status, asked.units);
  const cellar::PlannedDay day = day_asked_for(asked, **session, *status);
  const cellar::CleaningKit assumed = cellar::usual_kit();
  const report::CleaningList list =
      report::cleaning_list(day, *status, speaker, asked.by, &assumed);
  if (asked.pdf.empty()) return tell(report::json_of(list), terminal);
  if (day.steps.empty()) {
    terminal.err << "Nothing is due to be cleaned.\n";
    return exit_refused;
  }
  const ui::CleaningListPages pages(list, asked.paper, paper_font());
  const int code = write_pages(pages, asked.pdf, list.title, terminal);
  if (code == exit_ok) {
    terminal.out << asked.pdf.string() << ": " << list.day << ", "
                 << counted(list.steps.size(), "step", "steps") << " on " << pages_words(pages)
                 << ".\n";
  }
  return code;
}

int write_calendar(const WriteCalendar& asked, CellarSession::Tools tools, Terminal terminal) {
  const auto session = CellarSession::open(asked.cellar, tools, for_reading());
  if (!session) return file_problem(terminal, session.error());
  const auto status = (*session)->status();
  const report::Speaker speaker = speaker_for(**session, *status, std::nullopt);
  const auto items = report::calendar_items(*status, (*session)->journal(), speaker);
  const std::string name = status->cellar ? status->cellar->name : std::string("Cellar");
  if (asked.file.empty()) return tell(report::json_of(items, name), terminal);
  const std::string feed = report::icalendar_of(items, name, (*session)->now());
  if (const int code = write_text(asked.file, feed, terminal); code != exit_ok) return code;
  terminal.out << asked.file.string() << ": " << counted(items.size(), "date", "dates") << ".\n";
  return exit_ok;
}

}  // namespace ullage::app
