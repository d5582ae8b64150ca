// SPDX-License-Identifier: GPL-3.0-or-later
//
// For journeys on the Cleaning page of the demo cellar: its steps found and ticked by
// mouse and key, and the program ended and started again.
#pragma once

#include <QApplication>
#include <QCheckBox>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <memory>

#include "tests/journeys/demo_journey.h"
#include "ui/pages/cleaning_page.h"

namespace ullage {

class CleaningJourney : public DemoJourney {
 protected:
  CleaningJourney() : DemoJourney(QStringLiteral("JB")) {}
  void show(std::unique_ptr<app::CellarSession> cellar) override {
    DemoJourney::show(std::move(cellar));
    window_->run(ui::Command::page_cleaning);
    page_ = window_->findChild<ui::CleaningPage*>();
    ASSERT_NE(page_, nullptr);
    QApplication::processEvents();
  }

  // The step of a kind that is about a thing, and the thing's place in it.
  struct Spot {
    int step = -1;
    int thing = -1;
  };
  [[nodiscard]] Spot spot(cellar::StepKind kind, cellar::SubjectRef about) const {
    const auto& steps = page_->shown_day()->steps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      const auto at = std::ranges::find(steps[i].things, about);
      if (steps[i].kind != kind || at == steps[i].things.end()) continue;
      return {static_cast<int>(i), static_cast<int>(at - steps[i].things.begin())};
    }
    ADD_FAILURE() << "no such step";
    return {};
  }
  // A line that is to be cleaned with caustic, and to be locked for it.
  [[nodiscard]] cellar::SubjectRef some_line() const {
    for (const auto& step : page_->shown_day()->steps) {
      if (step.kind != cellar::StepKind::caustic || step.kegs) continue;
      for (const cellar::SubjectRef& thing : step.things) {
        if (!line(thing).lock) return thing;
      }
    }
    ADD_FAILURE() << "no line is due";
    return {};
  }
  [[nodiscard]] QCheckBox* box(Spot at) const {
    return page_->findChild<QCheckBox*>(QStringLiteral("tick_%1_%2").arg(at.step).arg(at.thing));
  }
  void click(cellar::StepKind kind, cellar::SubjectRef about) {
    QCheckBox* found = box(spot(kind, about));
    ASSERT_NE(found, nullptr);
    found->click();
    settle();
  }
  // Tab by Tab to the control of that name.
  void tab_to(const QString& name) {
    for (int i = 0; i < 400; ++i) {
      QWidget* at = QApplication::focusWidget();
      if (at != nullptr && at->objectName() == name) return;
      QTest::keyClick(at != nullptr ? at : window_.get(), Qt::Key_Tab);
    }
    FAIL() << name.toStdString() << " is not reached by Tab";
  }
  void press_space_on(cellar::StepKind kind, cellar::SubjectRef about) {
    const Spot at = spot(kind, about);
    tab_to(QStringLiteral("tick_%1_%2").arg(at.step).arg(at.thing));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    settle();
  }
  // The program ended, and started again on the same file.
  void restart() {
    window_.reset();
    cellar_.reset();
    auto again = app::CellarSession::open(path().toStdString(), {clock_, ids_});
    ASSERT_TRUE(again);
    show(std::move(*again));
  }
  static void settle() {
    QTest::qWait(20);  // old rows go, new ones are laid out
  }
  [[nodiscard]] cellar::LineStatus line(cellar::SubjectRef about) const {
    const auto status = cellar_->status();
    const cellar::LineStatus* found = status->find(cellar::LineId{about.uuid});
    return found == nullptr ? cellar::LineStatus{} : *found;
  }
  // Runs `act` on the dialog of the type as soon as it stands open.
  template <class Dialog, class Act>
  void on_next(Act act) {
    auto* poll = new QTimer(window_.get());
    QObject::connect(poll, &QTimer::timeout, poll, [poll, act] {
      auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
      if (dialog == nullptr) return;
      poll->stop();
      poll->deleteLater();
      act(*dialog);
    });
    poll->start(10);
  }

  ui::CleaningPage* page_ = nullptr;
};

}  // namespace ullage
