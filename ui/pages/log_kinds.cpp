// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/log_kinds.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCoreApplication>
#include <QSignalBlocker>
#include <algorithm>
#include <utility>
#include <vector>

#include "ui/context.h"
#include "ui/dialogs/forms/kind_words.h"

namespace ullage::ui {
namespace {

const QString below_its_group = QStringLiteral("\u2003");

struct LogKinds {
  Q_DECLARE_TR_FUNCTIONS(LogKinds)
};

std::vector<std::pair<QString, EntryGroup>> groups() {
  return {{LogKinds::tr("All kinds"), EntryGroup::all},
          {LogKinds::tr("Kegs"), EntryGroup::kegs},
          {LogKinds::tr("Beer"), EntryGroup::beer},
          {LogKinds::tr("Gas"), EntryGroup::gas},
          {LogKinds::tr("Lines"), EntryGroup::lines},
          {LogKinds::tr("Places"), EntryGroup::places},
          {LogKinds::tr("Routine work"), EntryGroup::routine},
          {LogKinds::tr("Register"), EntryGroup::the_register},
          {LogKinds::tr("Corrections"), EntryGroup::corrections}};
}

void add_kinds_of(EntryGroup group, QComboBox& box, const std::set<std::string_view>& in_the_log,
                  report::RegionalWords words) {
  std::vector<std::pair<QString, std::string_view>> kinds;
  for (const std::string_view kind : in_the_log) {
    if (group_of_kind(kind) == group) kinds.emplace_back(kind_words(kind, words), kind);
  }
  std::sort(kinds.begin(), kinds.end(),
            [](const auto& a, const auto& b) { return a.first.localeAwareCompare(b.first) < 0; });
  for (const auto& [name, kind] : kinds) {
    box.addItem(below_its_group + name, q(std::string(kind)));
  }
}

}  // namespace

void fill_kind_box(QComboBox& box, const std::set<std::string_view>& in_the_log,
                   report::RegionalWords words) {
  const QVariant chosen = box.currentData();
  const QSignalBlocker quiet(box);
  box.clear();
  for (const auto& [name, group] : groups()) {
    box.addItem(name, static_cast<int>(group));
    add_kinds_of(group, box, in_the_log, words);
  }
  const int again = chosen.isValid() ? box.findData(chosen) : 0;
  box.setCurrentIndex(again < 0 ? 0 : again);
  // The box is narrow, the names need not be.
  box.view()->setMinimumWidth(box.view()->sizeHintForColumn(0) + 32);
}

KindChosen kind_in(const QComboBox& box) {
  const QVariant chosen = box.currentData();
  if (chosen.typeId() == QMetaType::QString) return {EntryGroup::all, s(chosen.toString())};
  return {static_cast<EntryGroup>(chosen.toInt()), {}};
}

}  // namespace ullage::ui
