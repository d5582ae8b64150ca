// SPDX-License-Identifier: GPL-3.0-or-later
//
// Property: whatever is tried on the Lines page, over a real file, the journal and
// the file stay as they were, and "Back to now" shows again what was shown.
#include <rapidcheck.h>

#include <QCryptographicHash>
#include <QFile>
#include <QPushButton>
#include <QSlider>
#include <array>

#include "tests/journeys/demo_journey.h"
#include "ui/charts/profile_chart.h"
#include "ui/pages/line_panel.h"
#include "ui/pages/lines_page.h"
#include "ui/widgets/quantity_slider.h"

namespace ullage {
namespace {

constexpr std::array controls{"try_pressure", "try_length", "try_bore", "try_temperature",
                              "try_target"};

class WhatIfJourney : public DemoJourney {
 protected:
  WhatIfJourney() : DemoJourney(QStringLiteral("MK"), {1280, 860}) {}
  [[nodiscard]] ui::LinesPage* page() const { return window_->findChild<ui::LinesPage*>(); }
  [[nodiscard]] ui::QuantitySlider* control(const char* name) const {
    return page()->findChild<ui::QuantitySlider*>(QLatin1String(name));
  }
  // The file and what SQLite keeps beside it.
  [[nodiscard]] QByteArray bytes() const {
    QCryptographicHash all(QCryptographicHash::Sha256);
    for (const char* beside : {"", "-wal", "-journal"}) {
      QFile file(path() + QLatin1String(beside));
      if (!file.open(QIODevice::ReadOnly)) continue;
      all.addData(QByteArray(beside));
      all.addData(file.readAll());
    }
    return all.result();
  }
  [[nodiscard]] QString shown() const { return page()->findChild<ui::ProfileChart*>()->in_words(); }
  void move(const char* name, double share) const {
    QSlider* slider = control(name)->slider();
    const int to =
        slider->minimum() + static_cast<int>(share * (slider->maximum() - slider->minimum()));
    slider->setValue(to);
  }
};

TEST_F(WhatIfJourney, NoMoveOfAnyControlChangesJournalOrFile) {
  window_->show_page(ui::PageId::lines);
  for (const cellar::LineStatus& line : cellar_->status()->lines) {
    if (!line.pour || line.do_not_serve()) continue;
    page()->show_line(line.record.line);
    break;
  }
  for (const char* name : controls) ASSERT_NE(control(name), nullptr) << name;
  const std::size_t entries = cellar_->journal().entries().size();
  const std::uint64_t revision = cellar_->journal().revision();
  const QByteArray file = bytes();
  const QString as_it_is = shown();
  std::array<int, controls.size()> moved{};
  EXPECT_TRUE(rc::check([&] {
    const int moves = *rc::gen::inRange(1, 8);
    for (int i = 0; i < moves; ++i) {
      const auto which = *rc::gen::inRange<std::size_t>(0, controls.size());
      move(controls[which], *rc::gen::inRange(0, 1001) / 1000.0);
      ++moved[which];
      if (*rc::gen::inRange(0, 6) == 0)
        page()->findChild<QPushButton*>(QStringLiteral("reset_what_if"))->click();
    }
    RC_ASSERT(cellar_->journal().entries().size() == entries);
    RC_ASSERT(cellar_->journal().revision() == revision);
    RC_ASSERT(bytes() == file);
    page()->findChild<QPushButton*>(QStringLiteral("reset_what_if"))->click();
    RC_ASSERT(page()->panel()->tried().empty());
    RC_ASSERT(shown() == as_it_is);
  }));
  for (std::size_t i = 0; i < controls.size(); ++i) EXPECT_GT(moved[i], 0) << controls[i];
  EXPECT_TRUE(prompts_.asked.isEmpty());

  // The check itself can fail: what is applied does change them.
  move("try_pressure", 0.4);
  prompts_.confirmations = {true};
  page()->findChild<QPushButton*>(QStringLiteral("apply_what_if"))->click();
  EXPECT_GT(cellar_->journal().entries().size(), entries);
  EXPECT_NE(cellar_->journal().revision(), revision);
  EXPECT_NE(bytes(), file);
}

}  // namespace
}  // namespace ullage
