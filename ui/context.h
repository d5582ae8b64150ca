// SPDX-License-Identifier: GPL-3.0-or-later
//
// What every page and dialog is handed: the cellar's verbs and questions, the
// person's preferences, the prompts (boxes that tests can answer), and a
// navigator to open forms and pages. No page reaches anything else.
#pragma once

#include <QString>
#include <optional>

#include "core/cellar/facade.h"
#include "core/report/say.h"
#include "core/units/parsing.h"

class QWidget;

namespace ullage::ui {

class Preferences;
class Prompts;

enum class PageId { kegs, lines, gas, safety, cleaning, beers, slate, log };

// Opens things from anywhere: implemented by the main window.
class Navigator {
 public:
  virtual ~Navigator() = default;
  // The form of that kind, prefilled (ui/dialogs/forms/task_forms.h); an empty kind
  // lists all tasks, and the chosen one is about what is named.
  virtual void open_task(const cellar::SuggestedTask&) = 0;
  virtual void show_page(PageId) = 0;
  virtual void show_keg(cellar::KegId) = 0;              // on the Kegs page
  virtual void show_entries_of(cellar::SubjectRef) = 0;  // on the Log page
  virtual void open_status_sheet() = 0;
  // A line at the foot of the window for a few seconds, with Undo when asked.
  virtual void announce(const QString& sentence, bool with_undo) = 0;
  // The same about another page, with a way to it; it stays until it is closed, followed
  // or another line comes.
  virtual void call_to(PageId, const QString& sentence) = 0;
};

struct Context {
  cellar::Facade& cellar;
  Preferences& preferences;
  Prompts& prompts;
  Navigator& navigator;

  [[nodiscard]] report::Speaker speaker() const;  // now, in the person's units and words
  [[nodiscard]] units::Printer printer() const;
  [[nodiscard]] units::Parser parser() const;
};

// UTF-8 to QString and back, in one place.
[[nodiscard]] QString q(const std::string&);
[[nodiscard]] std::string s(const QString&);

}  // namespace ullage::ui
