// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/task_forms.h"

#include "core/units/present.h"
#include "ui/dialogs/bottle_change.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/dialogs/forms/form_spec.h"
#include "ui/dialogs/forms/form_words.h"
#include "ui/dialogs/forms/registered.h"
#include "ui/dialogs/forms/usual_figures.h"
#include "ui/dialogs/keg_change.h"
#include "ui/dialogs/logger_import.h"
#include "ui/dialogs/register_kegs.h"
#include "ui/dialogs/register_list.h"
#include "ui/dialogs/stock_take.h"
#include "ui/dialogs/transfer_form.h"

namespace ullage::ui {
namespace {

using namespace cellar;

// The kind of thing an entry kind is first about: the type of its first id.
std::optional<SubjectKind> first_subject(std::string_view kind) {
  if (kind == "cellar_described") return std::nullopt;
  std::optional<Payload> payload = make_payload(kind);
  if (!payload) return std::nullopt;
  const std::vector<SubjectRef> subjects = subjects_of(*payload);
  return subjects.empty() ? std::nullopt : std::optional(subjects.front().kind);
}

std::vector<TaskForm> make_list() {
  std::vector<TaskForm> list = {
      {"transfer", QObject::tr("Log a transfer"), QObject::tr("fill rack keg beer"),
       SubjectKind::keg},
      {"keg_change", QObject::tr("Keg change"), QObject::tr("swap tap empty"), SubjectKind::line},
      {"logger_import", QObject::tr("Import temperatures"), QObject::tr("logger csv file probe"),
       SubjectKind::place},
      {"register_kegs", QObject::tr("Register kegs"), QObject::tr("new keg add several"), {}},
      {"stock_take", QObject::tr("Stock-taking"), QObject::tr("count found contents"), {}},
      {"register_list",
       QObject::tr("Everything registered"),
       QObject::tr("change edit retire instrument regulator list"),
       {}}};
  for (const FormSpec* spec : all_form_specs()) {
    list.push_back({std::string(spec->kind), form_words(spec->title), form_words(spec->keywords),
                    first_subject(spec->kind)});
  }
  return list;
}

// A new thing needs an id of its own; the current one of its kind is not it.
void give_fresh_id(Payload& payload, Facade& cellar) {
  visit(
      [&](auto& p) {
        using P = std::decay_t<decltype(p)>;
        if constexpr (std::is_same_v<P, KegRecord>) p.keg = cellar.fresh<KegId>();
        if constexpr (std::is_same_v<P, BeerRecord>) p.beer = cellar.fresh<BeerId>();
        if constexpr (std::is_same_v<P, BatchRecord>) p.batch = cellar.fresh<BatchId>();
        if constexpr (std::is_same_v<P, PlaceRecord>) p.place = cellar.fresh<PlaceId>();
        if constexpr (std::is_same_v<P, LineRecord>) p.line = cellar.fresh<LineId>();
        if constexpr (std::is_same_v<P, BottleRecord>) p.bottle = cellar.fresh<BottleId>();
        if constexpr (std::is_same_v<P, RegulatorRecord>) p.regulator = cellar.fresh<RegulatorId>();
        if constexpr (std::is_same_v<P, SegmentRecord>) p.segment = cellar.fresh<SegmentId>();
        if constexpr (std::is_same_v<P, RuleRecord>) p.rule = cellar.fresh<RuleId>();
        if constexpr (std::is_same_v<P, InstrumentRecord>) {
          p.instrument = cellar.fresh<InstrumentId>();
        }
      },
      payload);
}

std::optional<KegId> keg_of(const SuggestedTask& task) {
  if (task.about && task.about->kind == SubjectKind::keg) return KegId{task.about->uuid};
  return std::nullopt;
}

std::optional<PlaceId> place_of(const SuggestedTask& task) {
  if (task.about && task.about->kind == SubjectKind::place) return PlaceId{task.about->uuid};
  return std::nullopt;
}

std::optional<RegulatorId> regulator_of(const SuggestedTask& task) {
  if (task.about && task.about->kind == SubjectKind::regulator)
    return RegulatorId{task.about->uuid};
  return std::nullopt;
}

std::optional<BottleId> bottle_of(const SuggestedTask& task) {
  if (task.about && task.about->kind == SubjectKind::bottle) return BottleId{task.about->uuid};
  return std::nullopt;
}

std::optional<LineId> line_of(const SuggestedTask& task) {
  if (task.about && task.about->kind == SubjectKind::line) return LineId{task.about->uuid};
  return std::nullopt;
}

}  // namespace

const std::vector<TaskForm>& task_forms() {
  static const std::vector<TaskForm> list = make_list();
  return list;
}

QDialog* make_task_dialog(const Context& context, const SuggestedTask& task, QWidget* parent) {
  if (task.kind == "transfer") return new TransferForm(context, keg_of(task), parent);
  if (task.kind == "keg_change") {
    return new KegChange(context, line_of(task), keg_of(task), parent);
  }
  if (task.kind == "logger_import") return new LoggerImport(context, place_of(task), parent);
  // A correction is of the one entry; a change anew is the whole act.
  if (task.kind == "bottle_changed" && !task.corrects && !task.prefill) {
    return new BottleChange(context, regulator_of(task), bottle_of(task), parent);
  }
  if (task.kind == "register_kegs") return new RegisterKegs(context, parent);
  if (task.kind == "stock_take") return new StockTake(context, {}, parent);
  if (task.kind == "register_list") return new RegisterList(context, parent);
  if (!form_spec(task.kind)) return nullptr;
  SuggestedTask filled = task;
  // About a thing that is there: a change of it, not another one.
  if (task.about && !task.prefill) {
    auto known = record_of(*context.cellar.status(), *task.about);
    if (known && kind_of(*known) == task.kind) filled.prefill = std::move(known);
  }
  if (!filled.prefill && task.kind.ends_with("_record")) {
    filled.prefill = with_usual_figures(present(make_payload(task.kind)));
    give_fresh_id(*filled.prefill, context.cellar);
  } else if (!filled.prefill && task.kind == "cellar_described") {
    const auto status = context.cellar.status();
    if (status->cellar) {
      filled.prefill = Payload(boost::variant2::in_place_type<CellarDescribed>, *status->cellar);
    }
  }
  return new EntryForm(context, filled, parent);
}

}  // namespace ullage::ui
