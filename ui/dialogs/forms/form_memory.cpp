// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/form_memory.h"

#include <algorithm>

#include "core/cellar/field_walk.h"

namespace ullage::ui {
namespace {

using namespace cellar;

// A glance back that never gets long: in a cellar with years of entries, what
// was done thousands of entries ago is no guide to today.
constexpr std::size_t furthest_back = 4000;

template <class T>
struct IdOf : std::false_type {};
template <class Tag>
struct IdOf<Id<Tag>> : std::true_type {};
template <class Tag>
struct IdOf<std::optional<Id<Tag>>> : std::true_type {};

bool points_at_kind(const std::optional<KegId>&, SubjectKind k) { return k == SubjectKind::keg; }
bool points_at_kind(const std::optional<BeerId>&, SubjectKind k) { return k == SubjectKind::beer; }
bool points_at_kind(const std::optional<BatchId>&, SubjectKind k) {
  return k == SubjectKind::batch;
}
bool points_at_kind(const std::optional<PlaceId>&, SubjectKind k) {
  return k == SubjectKind::place;
}
bool points_at_kind(const std::optional<LineId>&, SubjectKind k) { return k == SubjectKind::line; }
bool points_at_kind(const std::optional<BottleId>&, SubjectKind k) {
  return k == SubjectKind::bottle;
}
bool points_at_kind(const std::optional<RegulatorId>&, SubjectKind k) {
  return k == SubjectKind::regulator;
}
bool points_at_kind(const std::optional<InstrumentId>&, SubjectKind k) {
  return k == SubjectKind::instrument;
}
bool points_at_kind(const std::optional<SegmentId>&, SubjectKind k) {
  return k == SubjectKind::segment;
}
bool points_at_kind(const std::optional<RuleId>&, SubjectKind k) { return k == SubjectKind::rule; }
bool points_at_kind(const std::optional<EntryId>&, SubjectKind) { return false; }

template <class Tag>
void point(Id<Tag>& id, const Uuid& uuid) {
  id.uuid = uuid;
}
template <class Tag>
void point(std::optional<Id<Tag>>& id, const Uuid& uuid) {
  id = Id<Tag>{uuid};
}

bool about(const Payload& payload, const SubjectRef& subject) {
  const std::vector<SubjectRef> subjects = subjects_of(payload);
  return std::find(subjects.begin(), subjects.end(), subject) != subjects.end();
}

}  // namespace

void make_about(Payload& payload, const SubjectRef& subject) {
  bool done = false;
  for_each_field(payload, [&]<class T>(std::string_view, T& field) {
    if constexpr (IdOf<T>::value) {
      if (!done && points_at_kind(field, subject.kind)) {
        point(field, subject.uuid);
        done = true;
      }
    }
  });
}

std::optional<Payload> last_of_kind(const Journal& journal, std::string_view kind,
                                    const std::optional<SubjectRef>& subject) {
  const auto& entries = journal.entries();
  const std::size_t stop = entries.size() > furthest_back ? entries.size() - furthest_back : 0;
  for (std::size_t i = entries.size(); i > stop; --i) {
    const Entry& entry = entries[i - 1];
    if (kind_of(entry.payload) != kind) continue;
    if (journal.standing(entry.header.id) != Standing::in_force) continue;
    if (subject && !about(entry.payload, *subject)) continue;
    return entry.payload;
  }
  return std::nullopt;
}

void remember(Payload& into, const Payload& last, const FormSpec& form) {
  if (into.index() != last.index()) return;
  const auto remembered = [&](std::string_view column) {
    return std::any_of(form.fields.begin(), form.fields.end(), [&](const FieldSpec& f) {
      return f.column == column && f.use == Use::remembered;
    });
  };
  // Both walk the same fields in the same order.
  const std::vector<const void*> sources = cellar::fields_of(last);
  std::size_t i = 0;
  for_each_field(into, [&]<class T>(std::string_view column, T& field) {
    const void* source = sources.at(i++);
    if (remembered(column)) field = *static_cast<const T*>(source);
  });
}

std::optional<SubjectRef> main_subject(const Payload& payload) {
  for (const SubjectRef& subject : subjects_of(payload)) {
    if (subject.kind != SubjectKind::instrument && subject.uuid != Uuid{}) return subject;
  }
  return std::nullopt;
}

}  // namespace ullage::ui
