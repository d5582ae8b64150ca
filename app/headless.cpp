// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/headless.h"

#include <QString>
#include <ostream>

#include "app/exit_codes.h"
#include "app/headless_parts.h"
#include "app/import_new.h"
#include "core/report/cellar_lists.h"
#include "core/report/say.h"
#include "core/report/status_sheet.h"
#include "core/store/check.h"
#include "core/store/exchange.h"
#include "core/units/present.h"
#include "ui/print/sheet_output.h"
#include "ui/print/status_sheet_pages.h"

namespace ullage::app {

int print_sheet(const PrintSheet& asked, CellarSession::Tools tools, Terminal terminal) {
  const auto session = CellarSession::open(asked.cellar, tools, for_reading());
  if (!session) return file_problem(terminal, session.error());
  const auto status = (*session)->status();
  const report::Speaker speaker = speaker_for(**session, *status, asked.units);
  const report::StatusSheet sheet = report::status_sheet(*status, speaker, asked.by);
  if (asked.pdf.empty()) {
    terminal.out << report::json_of(sheet, report::keg_list(*status, speaker, asked.by));
    return exit_ok;
  }
  const ui::StatusSheetPages pages(sheet, asked.paper, paper_font());
  const auto written = ui::write_pdf(pages, QString::fromStdString(asked.pdf.string()),
                                     QString::fromStdString(sheet.cellar));
  if (!written) {
    terminal.err << written.error().toStdString() << '\n';
    return exit_file_problem;
  }
  terminal.out << asked.pdf.string() << ": " << counted(sheet.rows.size(), "keg", "kegs") << " on "
               << counted(static_cast<std::size_t>(pages.count()), "page", "pages") << ".\n";
  return exit_ok;
}

int export_cellar(const ExportCellar& asked, Terminal terminal) {
  const auto file = store::JournalStore::open(asked.cellar, for_reading());
  if (!file) return file_problem(terminal, file.error());
  const auto count = store::export_to(*file, asked.file);
  if (!count) return file_problem(terminal, count.error());
  terminal.out << asked.file.string() << ": " << counted(*count, "entry", "entries") << ".\n";
  return exit_ok;
}

int import_cellar(const ImportCellar& asked, CellarSession::Tools tools, Terminal terminal) {
  const auto count = import_new(asked.file, asked.cellar, tools);
  if (!count && count.error().file) return file_problem(terminal, present(count.error().file));
  if (!count) {
    for (const auto& problem : count.error().refused.problems) {
      terminal.err << store::describe(problem) << '\n';
    }
    if (count.error().refused.more) terminal.err << "There are more problems than these.\n";
    terminal.err << "Nothing was imported.\n";
    return exit_refused;
  }
  terminal.out << asked.cellar.string() << ": " << counted(*count, "entry", "entries") << ".\n";
  return exit_ok;
}

int check_cellar(const CheckCellar& asked, CellarSession::Tools tools, Terminal terminal) {
  if (const auto sound = store::check_file(asked.cellar, store::CheckDepth::full); !sound) {
    const int code = file_problem(terminal, sound.error());
    return sound.error().fault == store::StoreFault::damaged ? exit_refused : code;
  }
  const auto session = CellarSession::open(asked.cellar, tools, for_reading());
  if (!session) return file_problem(terminal, session.error());
  const cellar::Journal& journal = (*session)->journal();
  std::size_t struck = 0;
  std::size_t corrected = 0;
  for (const cellar::Entry& e : journal.entries()) {
    const cellar::Standing standing = journal.standing(e.header.id);
    struck += standing == cellar::Standing::struck ? 1U : 0U;
    corrected += standing == cellar::Standing::replaced ? 1U : 0U;
  }
  const auto status = (*session)->status();
  const report::Speaker speaker = speaker_for(**session, *status, std::nullopt);
  terminal.out << "The file is whole: " << counted(journal.entries().size(), "entry", "entries")
               << ", " << struck << " struck, " << corrected << " corrected; "
               << counted(status->kegs.size(), "keg", "kegs") << ".\n";
  std::size_t unfitting = 0;
  for (const cellar::KegStatus& keg : status->kegs) {
    for (const cellar::DoesntFit& misfit : keg.doesnt_fit) {
      ++unfitting;
      const cellar::Entry* entry = journal.find(misfit.entry);
      terminal.out << keg.record.tag << ", "
                   << (entry == nullptr ? ""
                                        : report::say_clock(entry->header.happened_at, speaker))
                   << ": " << report::say(misfit.why, speaker) << '\n';
    }
  }
  if (unfitting == 0) return exit_ok;
  terminal.out << unfitting << (unfitting == 1 ? " entry does" : " entries do")
               << " not fit the story around them.\n";
  return exit_refused;
}

}  // namespace ullage::app
