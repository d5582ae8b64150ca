// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/field_binding.h"

#include <QCompleter>
#include <QLineEdit>
#include <algorithm>
#include <cmath>

#include "core/cellar/field_walk.h"
#include "core/cellar/limits.h"
#include "core/cellar/presets.h"
#include "core/units/present.h"
#include "ui/dialogs/forms/editor_bindings.h"
#include "ui/dialogs/forms/enum_words.h"
#include "ui/dialogs/forms/form_words.h"
#include "ui/preferences.h"

namespace ullage::ui {
namespace {

using namespace cellar;

// A share of CO2 is typed as a percentage like any fraction.
class ShareBinding : public TypedBinding<std::optional<MoleFraction>> {
 public:
  ShareBinding(FractionEdit* edit, const EditorFor& as) : inner_(edit, as) {}
  [[nodiscard]] QWidget* widget() const override { return inner_.widget(); }
  [[nodiscard]] bool blank() const override { return inner_.blank(); }
  [[nodiscard]] QString fault() const override { return inner_.fault(); }
  void show_fault() override { inner_.show_fault(); }
  void refuse(const QString& sentence) override { inner_.refuse(sentence); }
  [[nodiscard]] std::optional<MoleFraction> read() const override {
    const std::optional<units::Fraction> f = inner_.read();
    return f ? std::optional(units::mole_fraction(f->count())) : std::nullopt;
  }
  void put(const std::optional<MoleFraction>& value) override {
    inner_.put(value ? std::optional(units::fraction(value->count())) : std::nullopt);
  }

 private:
  EditBinding<std::optional<units::Fraction>, FractionEdit> inner_;
};

class WholeShareBinding : public TypedBinding<MoleFraction> {
 public:
  WholeShareBinding(FractionEdit* edit, const EditorFor& as) : inner_(edit, as) {}
  [[nodiscard]] QWidget* widget() const override { return inner_.widget(); }
  [[nodiscard]] QString fault() const override { return inner_.fault(); }
  void show_fault() override { inner_.show_fault(); }
  void refuse(const QString& sentence) override { inner_.refuse(sentence); }
  [[nodiscard]] MoleFraction read() const override {
    return inner_.read().value_or(units::mole_fraction(1));
  }
  void put(const MoleFraction& value) override { inner_.put(value); }

 private:
  ShareBinding inner_;
};

// A text that may be absent: absent is the empty one.
class MaybeTextBinding : public TypedBinding<std::optional<std::string>> {
 public:
  MaybeTextBinding(TextEdit* edit, const EditorFor& as) : inner_(edit, as) {}
  [[nodiscard]] QWidget* widget() const override { return inner_.widget(); }
  [[nodiscard]] bool blank() const override { return inner_.blank(); }
  [[nodiscard]] QString fault() const override { return inner_.fault(); }
  void show_fault() override { inner_.show_fault(); }
  void refuse(const QString& sentence) override { inner_.refuse(sentence); }
  [[nodiscard]] std::optional<std::string> read() const override {
    std::string text = inner_.read();
    return text.empty() ? std::nullopt : std::optional(std::move(text));
  }
  void put(const std::optional<std::string>& value) override {
    inner_.put(value.value_or(std::string()));
  }

 private:
  TextBinding inner_;
};

// Money is kept in its smallest unit and typed as people write it: 25.50.
class MoneyBinding : public TypedBinding<std::optional<std::int64_t>> {
 public:
  MoneyBinding(NumberEdit* edit, const EditorFor& as) : inner_(edit, as) {
    edit->set_range(0.0, most_money);
  }
  [[nodiscard]] QWidget* widget() const override { return inner_.widget(); }
  [[nodiscard]] bool blank() const override { return inner_.blank(); }
  [[nodiscard]] QString fault() const override { return inner_.fault(); }
  void show_fault() override { inner_.show_fault(); }
  void refuse(const QString& sentence) override { inner_.refuse(sentence); }
  [[nodiscard]] std::optional<std::int64_t> read() const override {
    const std::optional<double> money = inner_.read();
    return money ? std::optional<std::int64_t>(std::llround(*money * 100)) : std::nullopt;
  }
  void put(const std::optional<std::int64_t>& minor) override {
    inner_.put(minor ? std::optional(static_cast<double>(*minor) / 100) : std::nullopt);
  }

 private:
  static constexpr double most_money = 1e6;
  EditBinding<std::optional<double>, NumberEdit> inner_;
};

// Styles whose CO2 range is known, offered as one types; any other word will do, too.
void offer_styles(TextEdit& edit) {
  QStringList names;
  for (const StylePreset& style : style_presets()) {
    names << QString::fromUtf8(style.style.data(), static_cast<qsizetype>(style.style.size()));
  }
  auto* completer = new QCompleter(names, &edit);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  completer->setFilterMode(Qt::MatchContains);
  edit.line_edit()->setCompleter(completer);
  QObject::connect(completer, qOverload<const QString&>(&QCompleter::activated), &edit,
                   [&edit](const QString& chosen) { edit.set_value(s(chosen)); });
}

template <class T>
std::unique_ptr<TypedBinding<T>> quantity_binding(const EditorFor& as) {
  using B = bare_t<T>;
  if constexpr (std::is_same_v<B, GaugePressure>) {
    return edit_on_preferences<T, GaugePressureEdit>(as);
  } else if constexpr (std::is_same_v<B, PressureDifference>) {
    return edit_on_preferences<T, PressureDifferenceEdit>(as);
  } else if constexpr (std::is_same_v<B, Temperature>) {
    return edit_on_preferences<T, TemperatureEdit>(as);
  } else if constexpr (std::is_same_v<B, TemperatureDifference>) {
    return edit_on_preferences<T, TemperatureDifferenceEdit>(as);
  } else if constexpr (std::is_same_v<B, Volume>) {
    if (as.spec.scale == FieldScale::room) return edit_on_preferences<T, RoomAirEdit>(as);
    if (as.spec.scale == FieldScale::small) return edit_on_preferences<T, GlassEdit>(as);
    return edit_on_preferences<T, VolumeEdit>(as);
  } else if constexpr (std::is_same_v<B, Mass>) {
    if (as.spec.scale == FieldScale::small) return edit_on_preferences<T, SmallMassEdit>(as);
    return edit_on_preferences<T, MassEdit>(as);
  } else if constexpr (std::is_same_v<B, Length>) {
    if (as.spec.column.ends_with("bore_m")) return edit_on_preferences<T, BoreEdit>(as);
    return edit_on_preferences<T, LengthEdit>(as);
  } else if constexpr (std::is_same_v<B, Co2Concentration>) {
    return edit_on_preferences<T, Co2Edit>(as);
  } else if constexpr (std::is_same_v<B, SpecificGravity>) {
    return edit_on_preferences<T, GravityEdit>(as);
  } else if constexpr (std::is_same_v<B, units::Fraction>) {
    return edit_on_preferences<T, FractionEdit>(as);
  } else if constexpr (std::is_same_v<B, units::Abv>) {
    return edit_on_preferences<T, AbvEdit>(as);
  } else if constexpr (std::is_same_v<B, units::Duration>) {
    if (as.spec.scale == FieldScale::small) return edit_on_preferences<T, SecondsEdit>(as);
    return edit_on_preferences<T, DurationEdit>(as);
  } else if constexpr (std::is_same_v<B, double>) {
    return edit_on_preferences<T, NumberEdit>(as);
  } else {
    static_assert(std::is_same_v<B, std::int64_t>);
    if constexpr (std::is_same_v<T, std::optional<std::int64_t>>) {
      if (as.spec.column.find("_minor") != std::string_view::npos)
        return std::make_unique<MoneyBinding>(new NumberEdit(as.context.preferences), as);
    }
    return edit_on_preferences<T, WholeNumberEdit>(as);
  }
}

// A picker whose last row registers what is missing, in a form of its own that
// begins as `fresh`, and picks it: who begins has no beer, no place and no gauge yet.
template <class T, class Picker, class Record, class NewId>
std::unique_ptr<TypedBinding<T>> pick_or_add(const EditorFor& as, const QString& words,
                                             NewId Record::* id, std::string Record::* name,
                                             const Record& fresh = {}) {
  auto* picker = new Picker(as.context);
  picker->set_add(words);
  QObject::connect(
      picker, &EntityPicker::add_asked, picker,
      [picker, context = as.context, id, name, fresh](const QString& typed) {
        Record made = fresh;
        made.*id = context.cellar.fresh<NewId>();
        made.*name = s(typed);
        const NewId wanted = made.*id;
        context.navigator.open_task({std::string(Record::kind), {}, Payload(made), {}});
        if (picker->offers(wanted.uuid)) picker->set_value(wanted);
      });
  return std::make_unique<EditBinding<T, Picker>>(picker, as);
}

// A keg that came in the door and was never registered: "Full keg received".
template <class T>
std::unique_ptr<TypedBinding<T>> keg_binding(const EditorFor& as) {
  if (as.form != Received::kind && as.form != Found::kind) return pick<T, KegPicker>(as);
  const bool us = as.context.preferences.words() == report::RegionalWords::us;
  const bool delivered = as.form == Received::kind;
  KegRecord fresh = keg_from_preset(!delivered ? KegKind::ball_lock_19
                                    : us       ? KegKind::us_half_barrel
                                               : KegKind::keg_50);
  if (delivered) fresh.owner = Owner::supplier;
  const auto status = as.context.cellar.status();
  if (!status->places.empty()) fresh.place = status->places.front().record.place;
  return pick_or_add<T, KegPicker>(as, QObject::tr("New keg…"), &KegRecord::keg, &KegRecord::tag,
                                   fresh);
}

// What a reading of this field is taken with: the usual kind first.
InstrumentKind usual_instrument(const EditorFor& as) {
  const std::string_view column = as.spec.column;
  if (column == "thermometer") return InstrumentKind::thermometer;
  if (column == "scale") return InstrumentKind::bathroom_scale;
  if (column == "hydrometer") return InstrumentKind::hydrometer;
  if (column == "spund_dial") return InstrumentKind::spunding_dial;
  if (column == "meter") {
    return as.form == LevelReading::kind ? InstrumentKind::flow_meter : InstrumentKind::co2_meter;
  }
  return InstrumentKind::regulator_dial;
}

template <class T>
std::unique_ptr<TypedBinding<T>> instrument_binding(const EditorFor& as) {
  const InstrumentKind usual = usual_instrument(as);
  auto made = pick_or_add<T, InstrumentPicker>(
      as, QObject::tr("New instrument…"), &InstrumentRecord::instrument, &InstrumentRecord::name,
      instrument_from_preset(usual));
  auto* picker = static_cast<InstrumentPicker*>(made->widget());
  // No scale where a pressure is read; what an entry names already stays on show.
  picker->set_shows([picker, usual](const InstrumentRecord& i) {
    return reads_of(i.instrument_kind) == reads_of(usual) || picker->value() == i.instrument;
  });
  return made;
}

template <class T>
std::unique_ptr<TypedBinding<T>> picker_binding(const EditorFor& as) {
  using B = bare_t<T>;
  if constexpr (std::is_same_v<B, KegId>) {
    return keg_binding<T>(as);
  } else if constexpr (std::is_same_v<B, BeerId>) {
    return pick_or_add<T, BeerPicker>(as, QObject::tr("New beer…"), &BeerRecord::beer,
                                      &BeerRecord::name);
  } else if constexpr (std::is_same_v<B, BatchId>) {
    BatchRecord fresh;
    if (as.form == Received::kind) fresh.origin = BatchOrigin::delivered;
    return pick_or_add<T, BatchPicker>(as, QObject::tr("New batch…"), &BatchRecord::batch,
                                       &BatchRecord::name, fresh);
  } else if constexpr (std::is_same_v<B, PlaceId>) {
    return pick_or_add<T, PlacePicker>(as, QObject::tr("New place…"), &PlaceRecord::place,
                                       &PlaceRecord::name);
  } else if constexpr (std::is_same_v<B, LineId>) {
    return pick_or_add<T, LinePicker>(as, QObject::tr("New line…"), &LineRecord::line,
                                      &LineRecord::name);
  } else if constexpr (std::is_same_v<B, BottleId>) {
    return pick_or_add<T, BottlePicker>(as, QObject::tr("New gas bottle…"), &BottleRecord::bottle,
                                        &BottleRecord::name);
  } else if constexpr (std::is_same_v<B, RegulatorId>) {
    return pick_or_add<T, RegulatorPicker>(as, QObject::tr("New regulator…"),
                                           &RegulatorRecord::regulator, &RegulatorRecord::name);
  } else {
    static_assert(std::is_same_v<B, InstrumentId>);
    return instrument_binding<T>(as);
  }
}

template <class T>
struct IsId : std::false_type {};
template <class Tag>
struct IsId<Id<Tag>> : std::true_type {};

template <class T>
std::unique_ptr<TypedBinding<T>> shown_binding(const EditorFor& as) {
  using B = bare_t<T>;
  if constexpr (std::is_same_v<B, EntryId> || std::is_same_v<B, SegmentId> ||
                std::is_same_v<B, RuleId>) {
    return std::make_unique<HeldBinding<T>>();
  } else if constexpr (IsId<B>::value) {
    return picker_binding<T>(as);
  } else if constexpr (std::is_same_v<T, bool>) {
    auto* box = new QCheckBox(regional(form_words(as.spec.label), as.context.preferences.words()));
    return std::make_unique<TickBinding>(box, as);
  } else if constexpr (std::is_same_v<T, std::optional<bool>>) {
    auto* bar =
        new ChoiceBar({QObject::tr("Yes"), QObject::tr("No"), QObject::tr("Not looked at")});
    return std::make_unique<LookedBinding>(bar, as);
  } else if constexpr (std::is_same_v<T, std::string>) {
    auto* edit = new TextEdit(cellar::text_limit(as.form, as.spec.column));
    if (as.spec.column == "style") offer_styles(*edit);
    return std::make_unique<TextBinding>(edit, as);
  } else if constexpr (std::is_same_v<T, std::optional<std::string>>) {
    return std::make_unique<MaybeTextBinding>(
        new TextEdit(cellar::text_limit(as.form, as.spec.column)), as);
  } else if constexpr (std::is_same_v<B, Instant>) {
    return edit_on_cellar<T, WhenEdit>(as);
  } else if constexpr (std::is_same_v<B, Date>) {
    return edit_on_cellar<T, DateEdit>(as);
  } else if constexpr (std::is_same_v<T, std::optional<MoleFraction>>) {
    return std::make_unique<ShareBinding>(new FractionEdit(as.context.preferences), as);
  } else if constexpr (std::is_same_v<T, MoleFraction>) {
    return std::make_unique<WholeShareBinding>(new FractionEdit(as.context.preferences), as);
  } else if constexpr (std::is_enum_v<T>) {
    return choose_word<T>(as);
  } else {
    return quantity_binding<T>(as);
  }
}

const FieldSpec* spec_of(const FormSpec& form, std::string_view column) {
  const auto at = std::find_if(form.fields.begin(), form.fields.end(),
                               [&](const FieldSpec& f) { return f.column == column; });
  return at == form.fields.end() ? nullptr : &*at;
}

}  // namespace

Bindings bind_fields(const Payload& payload, const FormSpec& form, const Context& context,
                     const std::function<void()>& changed) {
  Bindings bindings;
  for_each_field(payload, [&]<class T>(std::string_view column, const T& field) {
    const FieldSpec* spec = spec_of(form, column);
    std::unique_ptr<TypedBinding<T>> binding;
    if (!spec || spec->use == Use::hidden) {
      binding = std::make_unique<HeldBinding<T>>();
    } else {
      binding = shown_binding<T>({context, *spec, form.kind, changed});
    }
    binding->column = std::string(column);
    binding->put(field);
    bindings.push_back(std::move(binding));
  });
  return bindings;
}

Payload read_fields(const Payload& like, const Bindings& bindings) {
  Payload payload = like;
  std::size_t i = 0;
  for_each_field(payload, [&]<class T>(std::string_view, T& field) {
    field = static_cast<const TypedBinding<T>&>(*bindings.at(i++)).read();
  });
  return payload;
}

// An editor that reads as the field already is left alone: what is open stays open
// instead of turning into a zero, and what was typed and can't be read stays as typed.
void put_fields(const Payload& from, const Bindings& bindings) {
  std::size_t i = 0;
  for_each_field(from, [&]<class T>(std::string_view, const T& field) {
    auto& binding = static_cast<TypedBinding<T>&>(*bindings.at(i++));
    if (!(binding.read() == field)) binding.put(field);
  });
}

void clear_unstated(const Payload& payload, const Bindings& bindings) {
  const Payload untouched = present(cellar::make_payload(cellar::kind_of(payload)));
  const std::vector<const void*> defaults = cellar::fields_of(untouched);
  std::size_t i = 0;
  for_each_field(payload, [&]<class T>(std::string_view, const T& field) {
    if constexpr (units::Quantity<T> && !std::is_same_v<T, MoleFraction>) {
      const T& unstated = *static_cast<const T*>(defaults.at(i));
      if (units::to_magnitude(field) == units::to_magnitude(unstated)) bindings[i]->clear();
    } else if constexpr (std::is_same_v<T, Date>) {
      if (field == T{}) bindings[i]->clear();  // else it would say 1970
    }
    ++i;
  });
}

void offer_last(const Payload& last, const FormSpec& form, const Bindings& bindings) {
  std::size_t i = 0;
  for_each_field(last, [&]<class T>(std::string_view column, const T& field) {
    FieldBinding& binding = *bindings.at(i++);
    const FieldSpec* spec = spec_of(form, column);
    if (spec && spec->use == Use::reading) {
      static_cast<TypedBinding<T>&>(binding).offer_last(field);
    }
  });
}

}  // namespace ullage::ui
