// SPDX-License-Identifier: GPL-3.0-or-later
//
// A session on a file of its own, at a time that the test sets.
#pragma once

#include <gmock/gmock.h>

#include <QTemporaryDir>
#include <memory>
#include <string>
#include <vector>

#include "app/session.h"
#include "core/cellar/presets.h"
#include "tests/support/entry_maker.h"

namespace ullage::testing {

class SetClock final : public cellar::Clock {
 public:
  [[nodiscard]] cellar::Instant now() const override { return time; }
  cellar::Instant time = minute(0);
};

class SessionFixture : public ::testing::Test {
 protected:
  void SetUp() override {
    ASSERT_TRUE(folder.isValid());
    auto made = app::CellarSession::create(path(), {.name = "Shed", .time_zone = "Europe/London"},
                                           {clock, ids});
    ASSERT_TRUE(made) << store::describe(made.error());
    session = std::move(*made);
    cellar::KegRecord record = cellar::keg_from_preset(cellar::KegKind::ball_lock_19);
    record.keg = keg;
    record.tag = "K01";
    log(record);
  }

  [[nodiscard]] std::filesystem::path path() const {
    return (folder.path() + "/shed.ullage").toStdString();
  }
  // Another window on the same file.
  [[nodiscard]] std::unique_ptr<app::CellarSession> another(const store::OpenOptions& how = {}) {
    auto opened = app::CellarSession::open(path(), {clock, other_ids}, how);
    EXPECT_TRUE(opened) << store::describe(opened.error());
    return opened ? std::move(*opened) : nullptr;
  }

  [[nodiscard]] cellar::Act act_of(cellar::Payload payload) const {
    return {.drafts = {{.payload = std::move(payload), .happened_at = clock.time}}, .by = "AB"};
  }
  cellar::ActId log(cellar::Payload payload) {
    const auto logged = session->log(act_of(std::move(payload)));
    EXPECT_TRUE(logged) << "refused with key "
                        << static_cast<int>(logged.error().faults.front().why.key) << " at "
                        << logged.error().faults.front().field;
    return logged ? *logged : cellar::ActId{};
  }
  static std::vector<std::string> kinds_about(const cellar::Facade& cellar, cellar::KegId about) {
    std::vector<std::string> kinds;
    for (const cellar::Entry* e : cellar.journal().story(cellar::subject(about))) {
      kinds.emplace_back(cellar::kind_of(e->payload));
    }
    return kinds;
  }
  [[nodiscard]] std::vector<std::string> story() const { return kinds_about(*session, keg); }
  [[nodiscard]] const cellar::Entry& last() const { return session->journal().entries().back(); }

  QTemporaryDir folder;
  SetClock clock;
  CountingIds ids{1};
  CountingIds other_ids{2};
  cellar::KegId keg = CountingIds(3).make<cellar::KegId>();
  std::unique_ptr<app::CellarSession> session;
};

}  // namespace ullage::testing
