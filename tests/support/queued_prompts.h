// SPDX-License-Identifier: GPL-3.0-or-later
//
// Prompts answered from queues that a test fills beforehand; what was asked and
// told is kept for it to read. An unexpected question is declined.
#pragma once

#include <deque>
#include <vector>

#include "ui/prompts.h"

namespace ullage::testing {

class QueuedPrompts : public ui::Prompts {
 public:
  std::deque<QString> files, reasons;
  std::deque<bool> confirmations;
  std::deque<int> choices;
  std::vector<QString> asked, told;

  std::optional<QString> open_cellar_file(QWidget*) override { return next(files); }
  std::optional<QString> save_file(QWidget*, const QString& title, const QString&,
                                   const QString&) override {
    asked.push_back(title);
    return next(files);
  }
  std::optional<QString> open_file(QWidget*, const QString& title, const QString&) override {
    asked.push_back(title);
    return next(files);
  }
  bool confirm(QWidget*, const QString& question, const QString&, const QString&) override {
    asked.push_back(question);
    return next(confirmations).value_or(false);
  }
  void tell(QWidget*, const QString& what, const QString&) override { told.push_back(what); }
  int choose(QWidget*, const QString& what, const QString&, const QStringList&) override {
    asked.push_back(what);
    return next(choices).value_or(-1);
  }
  std::optional<QString> ask_reason(QWidget*, const QString& question) override {
    asked.push_back(question);
    return next(reasons);
  }

 private:
  template <class T>
  static std::optional<T> next(std::deque<T>& queue) {
    if (queue.empty()) return std::nullopt;
    T front = queue.front();
    queue.pop_front();
    return front;
  }
};

}  // namespace ullage::testing
