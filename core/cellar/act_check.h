// SPDX-License-Identifier: GPL-3.0-or-later
//
// Inside of validate.h: one act being checked. Field by field in validate.cpp,
// what must agree between fields in act_rules.cpp.
#pragma once

#include <set>
#include <string_view>
#include <utility>
#include <vector>

#include "core/cellar/validate.h"
#include "core/units/present.h"

namespace ullage::cellar {

class ActCheck {
 public:
  ActCheck(const Act&, const Journal&, const Register&, Instant now);
  [[nodiscard]] std::vector<Fault> faults() &&;

  // For the rules between fields, about the draft being looked at.
  template <class... Args>
  void refuse(std::string_view field, MessageKey key, Args&&... args) {
    faults_.push_back({draft_, std::string(field), message(key, std::forward<Args>(args)...)});
  }
  [[nodiscard]] const Draft& draft() const { return act_.drafts[draft_]; }
  [[nodiscard]] Instant now() const { return now_; }
  // The record of a thing once the act is logged: its own, or the registered one.
  template <class Record>
  [[nodiscard]] const Record* record(SubjectRef) const;
  // Calls f with every record of the type as it will stand once the act is logged.
  template <class Record, class F>
  void for_each_record(F&& f) const;
  [[nodiscard]] const Journal& journal() const { return journal_; }
  // Whether an entry will be struck when the act so far has been logged.
  [[nodiscard]] bool struck(EntryId) const;

 private:
  void check_header();
  void check_payload();
  void check_replaced();
  void check_text(std::string_view kind, std::string_view column, std::string_view text);
  void check_known(std::string_view field, SubjectRef);
  void check_day(std::string_view field, Date);
  template <class T>
  void check_number(std::string_view kind, std::string_view column, T value);
  template <class T>
  void check_field(std::string_view kind, std::string_view column, const T& field);

  const Act& act_;
  const Journal& journal_;
  const Register& register_;
  Instant now_;
  std::size_t draft_ = 0;
  std::vector<Fault> faults_;
};

// What must agree within a payload and with the rest of the cellar.
void check_rules(ActCheck&, const Payload&);

template <class Record>
const Record* ActCheck::record(SubjectRef s) const {
  for (const Draft& d : act_.drafts) {
    if (const auto* r = get_if<Record>(&d.payload); r && registers(d.payload) == s) return r;
  }
  return register_.find<Record>(s);
}

template <class Record, class F>
void ActCheck::for_each_record(F&& f) const {
  std::set<SubjectRef> of_the_act;
  for (const Draft& d : act_.drafts) {
    if (const auto* r = get_if<Record>(&d.payload)) {
      of_the_act.insert(present(registers(d.payload)));
      f(*r);
    }
  }
  register_.for_each<Record>([&](const Record& r) {
    if (!of_the_act.contains(*registers(Payload(r)))) f(r);
  });
}

}  // namespace ullage::cellar
