// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cellar files used lately, newest first, kept in the person's settings.
#pragma once

#include <QStringList>

class QSettings;

namespace ullage::app {

class RecentCellars {
 public:
  explicit RecentCellars(QSettings& settings) : settings_(settings) {}
  void used(const QString& file);
  // Those that are still there; at most nine, so that each has a digit.
  [[nodiscard]] QStringList list() const;

 private:
  QSettings& settings_;
};

}  // namespace ullage::app
