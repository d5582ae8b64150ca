// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cellar without a file, for tests of screens: it shows the status it was
// given, remembers what it was asked to log and tells its listeners of changes.
// It derives nothing; tests of what is derived use the real cellar.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/cellar/facade.h"

namespace ullage::testing {

// A zone with one offset all year.
class FixedCalendar final : public cellar::LocalCalendar {
 public:
  explicit FixedCalendar(cellar::UtcOffset offset = {}) : offset_(offset) {}
  [[nodiscard]] std::string zone_name() const override { return "Etc/UTC"; }
  [[nodiscard]] cellar::UtcOffset offset_at(cellar::Instant) const override { return offset_; }
  [[nodiscard]] std::optional<cellar::Instant> to_instant(cellar::LocalTime t) const override {
    return cellar::Instant(t.time_since_epoch() - offset_);
  }

 private:
  cellar::UtcOffset offset_;
};

class FakeFacade final : public cellar::Facade {
 public:
  explicit FakeFacade(cellar::CellarStatus status) { show(std::move(status)); }

  // From now on the cellar stands like this; listeners are told.
  void show(cellar::CellarStatus status) {
    status_ = std::make_shared<const cellar::CellarStatus>(std::move(status));
    for (const auto& [id, listener] : listeners_) listener(cellar::Change{});
  }
  void show_curve(cellar::KegId keg, cellar::CarbonationCurveData curve) {
    curves_[keg] = std::move(curve);
  }
  // Entries of a journal built by the test.
  cellar::Journal& journal_to_fill() { return journal_; }
  [[nodiscard]] const std::vector<cellar::Act>& logged() const { return logged_; }
  void refuse_with(std::vector<cellar::Fault> faults) { faults_ = std::move(faults); }
  void set_read_only(bool on) { read_only_ = on; }
  [[nodiscard]] std::size_t listener_count() const { return listeners_.size(); }

  [[nodiscard]] const cellar::Journal& journal() const override { return journal_; }
  [[nodiscard]] cellar::Instant now() const override { return status_->now; }
  [[nodiscard]] const cellar::LocalCalendar& calendar() const override { return calendar_; }
  [[nodiscard]] std::shared_ptr<const cellar::CellarStatus> status() const override {
    return status_;
  }
  [[nodiscard]] std::shared_ptr<const cellar::CellarStatus> status_as_of(
      const cellar::AsOf&) const override {
    return status_;
  }
  [[nodiscard]] cellar::CarbonationCurveData carbonation_curve(
      cellar::KegId keg, std::optional<cellar::Instant>,
      std::optional<cellar::Instant>) const override {
    const auto at = curves_.find(keg);
    return at == curves_.end() ? cellar::CarbonationCurveData{} : at->second;
  }
  [[nodiscard]] bool read_only() const override { return read_only_; }
  [[nodiscard]] std::string file_name() const override { return "test.cellar"; }

  [[nodiscard]] std::vector<cellar::Fault> check(const cellar::Act&) const override {
    return faults_;
  }
  [[nodiscard]] std::optional<cellar::KegStatus> preview(const cellar::Act&,
                                                         cellar::KegId keg) const override {
    const cellar::KegStatus* found = status_->find(keg);
    return found == nullptr ? std::nullopt : std::optional(*found);
  }

  cellar::Outcome<cellar::ActId> log(const cellar::Act& act) override {
    if (!faults_.empty()) return std::unexpected(cellar::Refusal{faults_});
    logged_.push_back(act);
    return fresh<cellar::ActId>();
  }
  cellar::Outcome<cellar::ActId> strike(const std::vector<cellar::EntryId>&, const std::string&,
                                        const std::string&) override {
    return fresh<cellar::ActId>();
  }
  cellar::Outcome<cellar::ActId> restore(const std::vector<cellar::EntryId>&, const std::string&,
                                         const std::string&) override {
    return fresh<cellar::ActId>();
  }
  cellar::Outcome<cellar::ActId> correct(cellar::EntryId, const cellar::Draft&, const std::string&,
                                         const std::string&) override {
    return fresh<cellar::ActId>();
  }
  cellar::Outcome<cellar::ActId> undo(const std::string&) override {
    return fresh<cellar::ActId>();
  }
  cellar::Outcome<cellar::ActId> redo(const std::string&) override {
    return fresh<cellar::ActId>();
  }
  [[nodiscard]] std::optional<cellar::ActId> undo_target() const override { return std::nullopt; }
  [[nodiscard]] std::optional<cellar::ActId> redo_target() const override { return std::nullopt; }

  [[nodiscard]] cellar::Uuid fresh_uuid() override {
    cellar::Uuid uuid;
    uuid.bytes[14] = static_cast<std::uint8_t>(++last_uuid_ >> 8U);
    uuid.bytes[15] = static_cast<std::uint8_t>(last_uuid_);
    uuid.bytes[0] = 0xfa;
    return uuid;
  }
  [[nodiscard]] std::unique_ptr<cellar::Subscription> on_change(
      std::function<void(const cellar::Change&)> listener) override {
    const int id = ++last_listener_;
    listeners_[id] = std::move(listener);
    return std::make_unique<Listening>(*this, id);
  }

 private:
  class Listening final : public cellar::Subscription {
   public:
    Listening(FakeFacade& facade, int id) : facade_(facade), id_(id) {}
    Listening(const Listening&) = delete;
    Listening& operator=(const Listening&) = delete;
    ~Listening() override { facade_.listeners_.erase(id_); }

   private:
    FakeFacade& facade_;
    int id_;
  };

  FixedCalendar calendar_;
  cellar::Journal journal_;
  std::shared_ptr<const cellar::CellarStatus> status_;
  std::map<cellar::KegId, cellar::CarbonationCurveData> curves_;
  std::vector<cellar::Act> logged_;
  std::vector<cellar::Fault> faults_;
  std::map<int, std::function<void(const cellar::Change&)>> listeners_;
  int last_listener_ = 0;
  std::uint16_t last_uuid_ = 0;
  bool read_only_ = false;
};

}  // namespace ullage::testing
