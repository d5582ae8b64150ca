// SPDX-License-Identifier: GPL-3.0-or-later
//
// How long a keg takes on the round: the whole demo cellar is walked, by keyboard and
// with mouse or finger, each key and click counted and the computing timed. What a
// person takes is estimated by the keystroke-level model; its times are from memory.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QTest>
#include <algorithm>
#include <vector>

#include "tests/journeys/demo_journey.h"
#include "ui/dialogs/round.h"
#include "ui/dialogs/round_value.h"

namespace ullage {
namespace {

// The keystroke-level model's times in seconds.
constexpr double key_time = 0.2;        // of a practised typist, and of a click
constexpr double slow_key_time = 0.75;  // of somebody who types codes
constexpr double pointing_time = 1.1;   // to a target
constexpr double homing_time = 0.4;     // the hand comes from the keg
constexpr double thinking_time = 1.35;  // before each value, and before going on
constexpr double usual_pour = 10;
constexpr double allowed_for_a_keg = 30;

struct Walked {
  std::string name;
  int values = 0, keys = 0, clicks = 0;
  double pour = 0;       // the glass itself, where one is timed
  double computing = 0;  // of the program, in all
  // Without the pouring, which takes what it takes.
  [[nodiscard]] double handling(double each_key) const {
    return homing_time + thinking_time * (values + 1) + each_key * keys +
           (pointing_time + key_time) * clicks + computing;
  }
  [[nodiscard]] double takes(double each_key) const { return handling(each_key) + pour; }
};

class RoundTime : public DemoJourney {
 protected:
  RoundTime() : DemoJourney(QStringLiteral("MK")) {}
  void open() {
    round_ = std::make_unique<ui::RoundDialog>(context(), window_.get());
    round_->open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return round_->isAncestorOf(QApplication::focusWidget()); }));
  }
  [[nodiscard]] ui::RoundValueEdit* value(int i) const {
    return round_->findChild<ui::RoundValueEdit*>(QStringLiteral("round_value_%1").arg(i));
  }
  [[nodiscard]] QPushButton* button(const QString& name) const {
    for (auto* each : round_->findChildren<QPushButton*>(name)) {
      if (each->isVisible()) return each;
    }
    ADD_FAILURE() << "no button " << name.toStdString();
    return nullptr;
  }
  // What is there to be read: about what was read last, in the digits it is shown with.
  static QString to_read(ui::RoundValueEdit& edit) {
    edit.step(1);
    auto* line = edit.findChild<QLineEdit*>();
    static const QRegularExpression number(QStringLiteral("^[0-9]+(\\.[0-9]+)?"));
    const QString shown = number.match(line->text()).captured();
    return shown.isEmpty() ? QStringLiteral("12") : shown;  // never read, and begins below zero
  }
  // The station's values, and the glass that is poured for one of them.
  std::vector<QString> readings(Walked& here) const {
    std::vector<QString> all;
    for (int i = 0; value(i) != nullptr; ++i) {
      QString text = to_read(*value(i));
      const auto read = value(i)->value();
      if (read) {
        if (const auto* glass = boost::variant2::get_if<units::Duration>(&*read)) {
          // Never timed before: a pint at the 2 fl oz a second of a balanced pour.
          here.pour = std::max(units::in_seconds(*glass), usual_pour);
          if (text.size() < 2) text = QStringLiteral("10");
        }
      }
      value(i)->take_keyboard();
      value(i)->take_back();  // empty again, as a person finds it
      EXPECT_TRUE(value(i)->is_empty());
      all.push_back(std::move(text));
    }
    if (value(0) != nullptr) value(0)->take_keyboard();  // else an empty or locked tap
    here.values = static_cast<int>(all.size());
    return all;
  }
  void by_keyboard(Walked& here, const std::vector<QString>& all) {
    for (std::size_t i = 0; i < all.size(); ++i) {
      if (i > 0) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        ++here.keys;
      }
      QTest::keyClicks(QApplication::focusWidget(), all[i]);
      here.keys += static_cast<int>(all[i].size());
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    ++here.keys;
  }
  void click(Walked& here, QWidget* target) {
    QTest::mouseClick(target, Qt::LeftButton);
    ++here.clicks;
  }
  void by_mouse(Walked& here, const std::vector<QString>& all) {
    for (std::size_t i = 0; i < all.size(); ++i) {
      if (i > 0) {
        click(here, value(static_cast<int>(i))->findChild<QLineEdit*>());
      }
      for (const QChar character : all[i]) {
        click(here, button(character.isDigit() ? QStringLiteral("pad_%1").arg(character)
                                               : QStringLiteral("pad_decimal mark")));
      }
    }
    click(here, button(QStringLiteral("round_next")));
  }
  // Each value begins at what was read last, and is a step from it.
  void by_steppers(Walked& here, const std::vector<QString>& all) {
    for (int i = 0; i < static_cast<int>(all.size()); ++i) {
      auto* more = value(i)->findChild<QPushButton*>(QStringLiteral("more"));
      click(here, more);
      click(here, i == 0 ? more : value(i)->findChild<QPushButton*>(QStringLiteral("less")));
    }
    click(here, button(QStringLiteral("round_next")));
  }
  template <class Way>
  std::vector<Walked> walk(Way way) {
    std::vector<Walked> walked;
    while (!round_->at_end() && walked.size() < 100) {
      Walked here{.name = round_->station_name().toStdString()};
      const std::vector<QString> all = readings(here);
      QElapsedTimer clock;
      clock.start();
      way(here, all);
      here.computing = static_cast<double>(clock.nsecsElapsed()) * 1e-9;
      EXPECT_NE(round_->station_name().toStdString(), here.name) << "it was logged and left";
      walked.push_back(std::move(here));
    }
    EXPECT_TRUE(round_->at_end());
    return walked;
  }
  // What is found out is told with the results.
  void tell(const std::vector<Walked>& all, double each_key, const std::string& how) {
    ASSERT_GE(all.size(), 10U);
    const auto most = [&](const char* what, auto of) {
      double greatest = 0;
      for (const Walked& w : all) greatest = std::max(greatest, static_cast<double>(of(w)));
      RecordProperty(how + "_" + what, std::to_string(greatest));
    };
    most("seconds", [&](const Walked& w) { return w.takes(each_key); });
    most("seconds_without_pouring", [&](const Walked& w) { return w.handling(each_key); });
    most("keys", [](const Walked& w) { return w.keys; });
    most("clicks", [](const Walked& w) { return w.clicks; });
    most("computing", [](const Walked& w) { return w.computing; });
  }
  static std::string words_of(const Walked& w) {
    return w.name + ": " + std::to_string(w.keys) + " keys, " + std::to_string(w.clicks) +
           " clicks, " + std::to_string(w.pour) + " s pouring, " + std::to_string(w.computing) +
           " s computing";
  }
  void TearDown() override {
    if (round_) round_->reject();
  }

  std::unique_ptr<ui::RoundDialog> round_;
};

TEST_F(RoundTime, ByKeyboardAKegTakesLessThanThirtySeconds) {
  open();
  const auto walked = walk([this](auto& here, const auto& all) { by_keyboard(here, all); });
  tell(walked, key_time, "practised");
  tell(walked, slow_key_time, "slow");
  for (const Walked& w : walked)
    EXPECT_LT(w.takes(slow_key_time), allowed_for_a_keg) << words_of(w);
}

TEST_F(RoundTime, BySteppersAKegTakesLessThanThirtySeconds) {
  open();
  const auto walked = walk([this](auto& here, const auto& all) { by_steppers(here, all); });
  tell(walked, key_time, "steppers");
  for (const Walked& w : walked) EXPECT_LT(w.takes(key_time), allowed_for_a_keg) << words_of(w);
}

// Every digit on the pad, nothing taken over from the last time, and the seconds of a
// glass typed too: more touches than with the watch that the round has.
TEST_F(RoundTime, TypedInFullOnThePadAKegWithItsGlassTakesLessThanThirtySeconds) {
  open();
  const auto walked = walk([this](auto& here, const auto& all) { by_mouse(here, all); });
  tell(walked, key_time, "pad");
  for (const Walked& w : walked) EXPECT_LT(w.takes(key_time), allowed_for_a_keg) << words_of(w);
}

// Pressures in bar have more digits.
TEST_F(RoundTime, TypedInFullInMetricUnitsItIsNoLonger) {
  own_.preferences.set_units(units::DisplayUnits::metric());
  open();
  const auto walked = walk([this](auto& here, const auto& all) { by_mouse(here, all); });
  tell(walked, key_time, "metric_pad");
  for (const Walked& w : walked) EXPECT_LT(w.takes(key_time), allowed_for_a_keg) << words_of(w);
}

}  // namespace
}  // namespace ullage
