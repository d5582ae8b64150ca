// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/commands.h"

#include <gtest/gtest.h>

#include <QKeySequence>
#include <map>
#include <set>

#include "tests/support/sample_status.h"
#include "ui/commands/task_search.h"
#include "ui/context.h"

namespace ullage::ui {
namespace {

TEST(Commands, NoShortcutIsGivenTwice) {
  std::map<QString, const char*> given;
  for (const CommandSpec& spec : commands()) {
    if (!*spec.shortcut) continue;
    const QKeySequence keys(QString::fromLatin1(spec.shortcut), QKeySequence::PortableText);
    EXPECT_FALSE(keys.isEmpty()) << spec.text << ": " << spec.shortcut;
    const auto [at, fresh] = given.emplace(keys.toString(), spec.text);
    EXPECT_TRUE(fresh) << spec.shortcut << ": " << at->second << " and " << spec.text;
  }
}

TEST(Commands, EachIsThereOnceWithAWayToReachItByKey) {
  std::set<Command> seen;
  std::map<Menu, std::set<QChar>> mnemonics;
  for (const CommandSpec& spec : commands()) {
    EXPECT_TRUE(seen.insert(spec.command).second) << spec.text;
    const QString text = QString::fromUtf8(spec.text);
    const auto at = text.indexOf('&');
    ASSERT_GE(at, 0) << spec.text;
    EXPECT_TRUE(mnemonics[spec.menu].insert(text.at(at + 1).toLower()).second)
        << "two items of one menu answer to the letter of " << spec.text;
  }
}

const std::vector<TaskForm>& some_tasks() {
  static const std::vector<TaskForm> tasks = {
      {"transfer", "Log a transfer", "fill rack new beer", cellar::SubjectKind::keg},
      {"filled", "Fill a keg", "filled rack", cellar::SubjectKind::keg},
      {"vented", "Vent a keg", "release pressure", cellar::SubjectKind::keg},
      {"line_locked", "Lock a line", "clean caustic", cellar::SubjectKind::line},
      {"place_record", "Register a place", "room cold box", std::nullopt}};
  return tasks;
}

TEST(TaskSearch, AVerbAndATagOpenTheFormOfThatKeg) {
  const auto status = testing::sample_cellar();
  const cellar::KegStatus* k07 = nullptr;
  for (const auto& keg : status.kegs) {
    if (keg.record.tag == "K07") k07 = &keg;
  }
  ASSERT_NE(k07, nullptr);
  for (const char* typed : {"fill k7", "fill K07", "k07 fill", "FILL  k-7", "fil k7"}) {
    const auto found = find_tasks(typed, some_tasks(), status);
    ASSERT_FALSE(found.empty()) << typed;
    EXPECT_EQ(found.front().task->kind, "filled") << typed;
    EXPECT_EQ(found.front().about, cellar::subject(k07->record.keg)) << typed;
    EXPECT_EQ(found.front().about_name, "K07");
  }
}

TEST(TaskSearch, ATagAloneOffersWhatConcernsItsKind) {
  const auto status = testing::sample_cellar();
  const auto found = find_tasks("k07", some_tasks(), status);
  ASSERT_FALSE(found.empty());
  for (const TaskMatch& match : found) EXPECT_EQ(match.task->about, cellar::SubjectKind::keg);
}

TEST(TaskSearch, NothingTypedOffersAllAndNonsenseNone) {
  const auto status = testing::sample_cellar();
  EXPECT_EQ(find_tasks("", some_tasks(), status).size(), some_tasks().size());
  EXPECT_TRUE(find_tasks("xyzzy", some_tasks(), status).empty());
  EXPECT_TRUE(find_tasks("fill k99", some_tasks(), status).empty());
}

}  // namespace
}  // namespace ullage::ui
