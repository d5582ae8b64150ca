// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Log page on the demo's journal: what each filter lets through, against the journal
// itself; and that what was struck or corrected stays readable with who, when and why.
#include "ui/pages/log_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <algorithm>
#include <functional>
#include <set>

#include "tests/journeys/demo_journey.h"
#include "ui/models/log_table.h"

namespace ullage {
namespace {

using Ids = std::set<std::string>;

class LogFilters : public DemoJourney {
 protected:
  LogFilters() : DemoJourney(QStringLiteral("MK")) {}
  void SetUp() override {
    DemoJourney::SetUp();
    window_->show_page(ui::PageId::log);
    settle();
  }
  [[nodiscard]] ui::LogPage& page() const { return *window_->findChild<ui::LogPage*>(); }
  template <class W>
  [[nodiscard]] W& part(const char* name) const {
    auto* found = page().findChild<W*>(QLatin1String(name));
    EXPECT_NE(found, nullptr) << name;
    return *found;
  }
  void settle() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return !page().table().searching(); }));
  }
  [[nodiscard]] Ids shown() {
    settle();
    Ids ids;
    for (int row = 0; row < page().table().rowCount(); ++row) {
      const cellar::Entry* entry = page().table().entry_at(page().table().index(row, 0));
      ids.insert(cellar::to_text(entry->header.id.uuid));
    }
    return ids;
  }
  [[nodiscard]] Ids those(const std::function<bool(const cellar::Entry&)>& wanted) const {
    Ids ids;
    for (const cellar::Entry& entry : cellar_->journal().entries()) {
      if (wanted(entry)) ids.insert(cellar::to_text(entry.header.id.uuid));
    }
    return ids;
  }
  [[nodiscard]] Ids of_kind(std::string_view kind) const {
    return those([&](const auto& e) { return cellar::kind_of(e.payload) == kind; });
  }
  static void choose(QComboBox& box, const QString& words) {
    for (int i = 0; i < box.count(); ++i) {
      if (box.itemText(i).trimmed() == words) return box.setCurrentIndex(i);
    }
    FAIL() << words.toStdString();
  }
  [[nodiscard]] QString detail() const {
    QStringList all;
    for (const QLabel* label : page().findChildren<QLabel*>()) all << label->text();
    return all.join(QLatin1Char('\n'));
  }
};

TEST_F(LogFilters, WithoutAnyTheWholeJournalIsThereNewestFirst) {
  EXPECT_EQ(shown(), those([](const auto&) { return true; }));
  const ui::LogTable& table = page().table();
  for (int row = 1; row < table.rowCount(); ++row) {
    EXPECT_GE(table.entry_at(table.index(row - 1, 0))->header.happened_at,
              table.entry_at(table.index(row, 0))->header.happened_at);
  }
}

TEST_F(LogFilters, OfOneKeg) {
  const cellar::SubjectRef k07 = cellar::subject(keg("K07").record.keg);
  choose(part<QComboBox>("log_about"), QStringLiteral("K07"));
  const Ids wanted = those([&](const cellar::Entry& e) {
    const auto about = cellar::subjects_of(e.payload);
    return std::find(about.begin(), about.end(), k07) != about.end();
  });
  EXPECT_GE(wanted.size(), 3U);
  EXPECT_EQ(shown(), wanted);
}

// Every kind that the journal holds can be chosen by itself, and no other is offered.
TEST_F(LogFilters, OfOneKindOrAGroupOfThem) {
  auto& box = part<QComboBox>("log_kind");
  std::set<std::string> offered, there;
  for (int i = 0; i < box.count(); ++i) {
    const QVariant kind = box.itemData(i);
    if (kind.typeId() != QMetaType::QString) continue;
    offered.insert(kind.toString().toStdString());
    box.setCurrentIndex(i);
    EXPECT_EQ(shown(), of_kind(kind.toString().toStdString())) << box.itemText(i).toStdString();
  }
  for (const cellar::Entry& e : cellar_->journal().entries()) {
    there.emplace(cellar::kind_of(e.payload));
  }
  EXPECT_EQ(offered, there);
  choose(box, QStringLiteral("Lines"));
  Ids lines = of_kind("line_locked");
  lines.merge(of_kind("line_cleaned"));
  EXPECT_EQ(shown(), lines);
}

// A kind that was not there before is offered once it is, and the choice stays.
TEST_F(LogFilters, AKindIsOfferedOnceItIsLogged) {
  auto& box = part<QComboBox>("log_kind");
  EXPECT_LT(box.findData(QStringLiteral("rocked")), 0);
  choose(box, QStringLiteral("Gas set"));
  const QVariant chosen = box.currentData();
  ASSERT_TRUE(
      cellar_->log({{{cellar::Payload(cellar::Rocked{keg("K01").record.keg, units::minutes(5)}),
                      cellar_->now(),
                      {},
                      {}}},
                    "MK"}));
  EXPECT_GE(box.findData(QStringLiteral("rocked")), 0);
  EXPECT_EQ(box.currentData(), chosen);
  EXPECT_EQ(shown(), of_kind("gas_set"));
}

// From a day to a day, both with it, by the cellar's own midnight.
TEST_F(LogFilters, BetweenTwoDays) {
  const cellar::Date first = cellar_->calendar().date_of(cellar_->now()) - std::chrono::days(9);
  const cellar::Date last = first + std::chrono::days(2);
  const auto qdate = [](cellar::Date day) {
    return QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
  };
  for (QCheckBox* box : page().findChildren<QCheckBox*>()) {
    if (box->text().contains(QStringLiteral("Between"))) box->click();
  }
  const auto dates = page().findChildren<QDateEdit*>();
  ASSERT_EQ(dates.size(), 2);
  dates[0]->setDate(qdate(first));
  dates[1]->setDate(qdate(last));
  const Ids wanted = those([&](const cellar::Entry& e) {
    const cellar::Date day = cellar_->calendar().date_of(e.header.happened_at);
    return day >= first && day <= last;
  });
  EXPECT_GE(wanted.size(), 5U);
  EXPECT_LT(wanted.size(), cellar_->journal().entries().size());
  EXPECT_EQ(shown(), wanted);
}

TEST_F(LogFilters, ByWordsInAnyOrderAndCase) {
  auto& words = part<QLineEdit>("log_words");
  QTest::keyClicks(&words, QStringLiteral("VINEGAR k09"));
  EXPECT_EQ(shown(), of_kind("quarantined"));
  words.clear();
  QTest::keyClicks(&words, QStringLiteral("hiss"));  // a remark
  const Ids remarked = those([](const auto& e) { return e.header.note == "Hiss at the lid."; });
  EXPECT_EQ(remarked.size(), 1U);
  EXPECT_EQ(shown(), remarked);
}

TEST_F(LogFilters, TogetherAndThenNoneOfThem) {
  choose(part<QComboBox>("log_about"), QStringLiteral("K07"));
  auto& kind = part<QComboBox>("log_kind");
  kind.setCurrentIndex(kind.findData(QStringLiteral("hold_reading")));
  QTest::keyClicks(&part<QLineEdit>("log_words"), QStringLiteral("hiss"));
  EXPECT_EQ(shown().size(), 1U);
  page().show_entries_of(cellar::subject(keg("K08").record.keg));  // begins anew
  EXPECT_EQ(part<QComboBox>("log_kind").currentIndex(), 0);
  EXPECT_TRUE(part<QLineEdit>("log_words").text().isEmpty());
  EXPECT_GE(shown().size(), 5U);
}

TEST_F(LogFilters, WhatIsStruckStaysReadableWithWhoWhenAndWhy) {
  const std::string reason =
      "it was the other keg, the one behind the door, and nobody had looked at its number";
  const cellar::Entry* quarantined = nullptr;
  for (const cellar::Entry& e : cellar_->journal().entries()) {
    if (holds_alternative<cellar::Quarantined>(e.payload)) quarantined = &e;
  }
  ASSERT_NE(quarantined, nullptr);
  const cellar::EntryId id = quarantined->header.id;
  page().select(id);
  prompts_.reasons.emplace_back(QString::fromStdString(reason));
  page().strike_selected();
  settle();
  page().select(id);
  const QModelIndex row = page().table().index_of(id);
  ASSERT_TRUE(row.isValid());
  EXPECT_TRUE(row.siblingAtColumn(ui::LogTable::what).data().toString().contains("vinegar"));
  EXPECT_TRUE(row.data(Qt::FontRole).value<QFont>().strikeOut());
  EXPECT_TRUE(detail().contains(QString::fromStdString(reason))) << detail().toStdString();
  EXPECT_TRUE(detail().contains(QStringLiteral("Struck"))) << detail().toStdString();
  EXPECT_TRUE(detail().contains(QStringLiteral("by MK: it was"))) << detail().toStdString();
  // Left out only when asked.
  for (QCheckBox* box : page().findChildren<QCheckBox*>()) {
    if (box->text().contains(QStringLiteral("Struck"))) box->click();
  }
  settle();
  EXPECT_FALSE(page().table().index_of(id).isValid());
}

TEST_F(LogFilters, WhatIsCorrectedTellsByWhichEntryAndWhy) {
  const cellar::Entry* wrong = nullptr;
  for (const cellar::Entry& e : cellar_->journal().entries()) {
    const auto* set = get_if<cellar::GasSet>(&e.payload);
    if (set && set->keg == keg("K02").record.keg) wrong = &e;
  }
  ASSERT_NE(wrong, nullptr);
  const cellar::EntryId id = wrong->header.id;
  cellar::GasSet right = get<cellar::GasSet>(wrong->payload);
  right.pressure = units::gauge_psi(12);
  ASSERT_TRUE(cellar_->correct(id, {cellar::Payload(right), wrong->header.happened_at, {}, {}},
                               "misread the dial", "JB"));
  settle();
  page().select(id);
  const cellar::Entry* later = cellar_->journal().replaced_by(id);
  ASSERT_NE(later, nullptr);
  const QString says = detail();
  EXPECT_TRUE(says.contains(
      QStringLiteral("by entry %1 by JB: misread the dial").arg(later->header.sequence)))
      << says.toStdString();
  // Both stand in the list, the one in force beside the one that is crossed out.
  EXPECT_TRUE(page().table().index_of(later->header.id).isValid());
  EXPECT_TRUE(page().table().index_of(id).data(Qt::FontRole).value<QFont>().strikeOut());
}

}  // namespace
}  // namespace ullage
