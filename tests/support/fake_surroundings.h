// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a page is handed besides the cellar, for tests: a navigator that
// remembers what was opened and prompts answered from queues.
#pragma once

#include <QString>
#include <QStringList>
#include <deque>
#include <optional>
#include <vector>

#include "ui/context.h"
#include "ui/prompts.h"

namespace ullage::testing {

class RecordingNavigator final : public ui::Navigator {
 public:
  std::vector<cellar::SuggestedTask> tasks;
  std::vector<ui::PageId> pages;
  std::vector<cellar::KegId> kegs;
  std::vector<cellar::SubjectRef> entries_of;
  QStringList announced;
  int status_sheets = 0;

  void open_task(const cellar::SuggestedTask& task) override { tasks.push_back(task); }
  void show_page(ui::PageId page) override { pages.push_back(page); }
  void show_keg(cellar::KegId keg) override { kegs.push_back(keg); }
  void show_entries_of(cellar::SubjectRef about) override { entries_of.push_back(about); }
  void open_status_sheet() override { ++status_sheets; }
  void announce(const QString& sentence, bool) override { announced.push_back(sentence); }
  void call_to(ui::PageId, const QString& sentence) override { announced.push_back(sentence); }
};

class QueuedPrompts final : public ui::Prompts {
 public:
  std::deque<std::optional<QString>> files, reasons;
  std::deque<bool> confirmations;
  std::deque<int> choices;
  QStringList asked;
  QStringList risks;    // of those asked, where Enter takes the harmless way
  QStringList details;  // of what was asked to confirm or told, in that order

  std::optional<QString> open_cellar_file(QWidget*) override { return next_file("open cellar"); }
  std::optional<QString> save_file(QWidget*, const QString& title, const QString&,
                                   const QString&) override {
    return next_file(title);
  }
  std::optional<QString> open_file(QWidget*, const QString& title, const QString&) override {
    return next_file(title);
  }
  bool confirm(QWidget*, const QString& question, const QString& detail, const QString&) override {
    asked.push_back(question);
    details.push_back(detail);
    return take(confirmations, false);
  }
  bool confirm_risk(QWidget* parent, const QString& question, const QString& detail,
                    const QString& action, const QString&) override {
    risks.push_back(question);
    return confirm(parent, question, detail, action);
  }
  void tell(QWidget*, const QString& what, const QString& detail) override {
    asked.push_back(what);
    details.push_back(detail);
  }
  int choose(QWidget*, const QString& what, const QString&, const QStringList&) override {
    asked.push_back(what);
    return take(choices, -1);
  }
  std::optional<QString> ask_reason(QWidget*, const QString& question) override {
    asked.push_back(question);
    return take(reasons, std::optional<QString>());
  }

 private:
  template <class T>
  static T take(std::deque<T>& queue, T otherwise) {
    if (queue.empty()) return otherwise;
    T first = std::move(queue.front());
    queue.pop_front();
    return first;
  }
  std::optional<QString> next_file(const QString& title) {
    asked.push_back(title);
    return take(files, std::optional<QString>());
  }
};

}  // namespace ullage::testing
