// SPDX-License-Identifier: GPL-3.0-or-later
//
// What to do when a cellar file can't be opened: says why in a sentence and
// offers the ways out that fit: another try, reading only, a backup, what can
// still be read of it, another file. Nothing is ever done to the file unasked.
#pragma once

#include <QStringList>
#include <functional>
#include <vector>

#include "core/store/store_error.h"

class QWidget;

namespace ullage::app {

class Desk;

class FileRescue {
 public:
  explicit FileRescue(Desk& desk) : desk_(desk) {}

  // True when in the end a cellar was opened.
  bool lead_on(const store::StoreError& error, QWidget* parent);

  // Lists the backups of a file and puts the chosen one in its place. The file
  // must be closed. True when it was replaced.
  bool restore(const std::filesystem::path& file, QWidget* parent);
  // Writes what can be read of a damaged file into a new one and opens that.
  bool recover(const std::filesystem::path& file, QWidget* parent);

 private:
  struct WayOut {
    QString words;
    std::function<bool()> take;
  };
  [[nodiscard]] std::vector<WayOut> ways_out(const store::StoreError& error, QWidget* parent);

  Desk& desk_;
};

}  // namespace ullage::app
