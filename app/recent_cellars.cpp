// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/recent_cellars.h"

#include <QFileInfo>
#include <QSettings>

namespace ullage::app {

namespace {
const QString recent_key = QStringLiteral("recent_cellars");
constexpr qsizetype most_recent = 9;
}  // namespace

void RecentCellars::used(const QString& file) {
  const QString path = QFileInfo(file).absoluteFilePath();
  QStringList all = settings_.value(recent_key).toStringList();
  all.removeAll(path);
  all.prepend(path);
  settings_.setValue(recent_key, QStringList(all.mid(0, most_recent)));
}

QStringList RecentCellars::list() const {
  QStringList there;
  for (const QString& file : settings_.value(recent_key).toStringList()) {
    if (QFileInfo::exists(file)) there << file;
  }
  return there;
}

}  // namespace ullage::app
