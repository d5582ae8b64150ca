// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/slate_form.h"

#include <QLineEdit>
#include <QToolButton>
#include <QVBoxLayout>
#include <type_traits>

#include "ui/context.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::ui {
namespace {

using report::slate::Choice;
using report::slate::Computation;
using report::slate::Count;
using report::slate::Field;
using report::slate::FieldKind;
using report::slate::Inputs;
using report::slate::Value;

// Editors whose quantity is a Value as it is.
template <class Q>
std::optional<Value> as_value(const std::optional<Q>& q) {
  return q ? std::optional<Value>(*q) : std::nullopt;
}
template <class Q>
std::optional<Q> as_quantity(const std::optional<Value>& v) {
  const Q* q = v ? boost::variant2::get_if<Q>(&*v) : nullptr;
  return q ? std::optional<Q>(*q) : std::nullopt;
}

constexpr qsizetype most_choice_letters = 30;  // in buttons side by side

QString slate_label(std::string_view text) { return q(std::string(text)); }

QStringList slate_choices(const Field& field, const Preferences& preferences) {
  QStringList words;
  for (const std::string& choice : choices_of(field, preferences.words())) words << q(choice);
  return words;
}

}  // namespace

SlateForm::SlateForm(const Computation& computation, Inputs start, const Preferences& preferences,
                     QWidget* parent)
    : QWidget(parent), preferences_(preferences), start_(std::move(start)) {
  setObjectName(QStringLiteral("slate_form"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::m);
  auto* usual = new FormSection({}, this);
  further_ = new FormSection({}, this);
  unfold_ = new QToolButton(this);
  unfold_->setObjectName(QStringLiteral("further_fields"));
  unfold_->setText(tr("Further figures"));
  unfold_->setCheckable(true);
  unfold_->setAutoRaise(true);
  unfold_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  connect(unfold_, &QToolButton::toggled, this, [this](bool open) { fold(!open); });
  rows_.reserve(computation.fields.size());
  bool has_further = false;
  for (const Field& field : computation.fields) {
    has_further = has_further || field.detail;
    add(field, field.detail ? *further_ : *usual);
  }
  column->addWidget(usual);
  column->addWidget(unfold_, 0, Qt::AlignLeft);
  column->addWidget(further_);
  column->addStretch(1);
  unfold_->setVisible(has_further);
  fold(true);
  // After the fields, which have written their figures anew by then.
  connect(&preferences, &Preferences::changed, this, [this] {
    say_words();
    emit changed();
  });
}

template <class Edit, class ToValue, class FromValue>
SlateForm::Row SlateForm::edit_row(const Field& field, ToValue to_value, FromValue from_value) {
  auto* edit = new Edit(preferences_, this);
  const auto* held = start_.held(field.key);
  if (held != nullptr && held->value) edit->set_value(from_value(held->value));
  connect(edit, &QuantityEdit::changed, this, &SlateForm::changed);
  Row row;
  row.field = &field;
  row.widget = edit;
  row.read = [edit, to_value] { return to_value(edit->value()); };
  row.refuse = [edit](const QString& sentence) { edit->set_refusal(sentence); };
  row.unreadable = [edit] { return !edit->is_empty() && !edit->value(); };
  row.shown = row.read();
  return row;
}

SlateForm::Row SlateForm::choice_row(const Field& field) {
  const QStringList words = slate_choices(field, preferences_);
  const bool wordy = words.join(QString()).size() > most_choice_letters;
  auto* bar =
      new ChoiceBar(words, wordy ? ChoiceBar::Look::drop_down : ChoiceBar::Look::automatic, this);
  const auto* held = start_.held(field.key);
  if (held != nullptr && held->value) {
    if (const auto* choice = boost::variant2::get_if<Choice>(&*held->value)) {
      bar->set_index(choice->index);
    }
  }
  connect(bar, &ChoiceBar::changed, this, &SlateForm::changed);
  Row row;
  row.field = &field;
  row.widget = bar;
  row.read = [bar]() -> std::optional<Value> {
    return bar->index() < 0 ? std::nullopt : std::optional<Value>(Choice{bar->index()});
  };
  row.refuse = [](const QString&) {};
  row.unreadable = [] { return false; };
  row.shown = row.read();
  return row;
}

SlateForm::Row SlateForm::quantity_row(const Field& f) {
  const auto plain = [&]<class Edit>(std::type_identity<Edit>) {
    using Q = typename Edit::Value;
    return edit_row<Edit>(f, &as_value<Q>, &as_quantity<Q>);
  };
  switch (f.kind) {
    case FieldKind::gauge_pressure:
      return plain(std::type_identity<GaugePressureEdit>{});
    case FieldKind::pressure_difference:
      return plain(std::type_identity<PressureDifferenceEdit>{});
    case FieldKind::temperature:
      return plain(std::type_identity<TemperatureEdit>{});
    case FieldKind::temperature_difference:
      return plain(std::type_identity<TemperatureDifferenceEdit>{});
    case FieldKind::volume:
      return plain(std::type_identity<VolumeEdit>{});
    case FieldKind::glass:
      return plain(std::type_identity<GlassEdit>{});
    case FieldKind::mass:
      return plain(std::type_identity<MassEdit>{});
    case FieldKind::length:
      return plain(std::type_identity<LengthEdit>{});
    case FieldKind::bore:
      return plain(std::type_identity<BoreEdit>{});
    case FieldKind::gravity:
      return plain(std::type_identity<GravityEdit>{});
    case FieldKind::fraction:
      return plain(std::type_identity<FractionEdit>{});
    case FieldKind::abv:
      return plain(std::type_identity<AbvEdit>{});
    default:
      return plain(std::type_identity<DurationEdit>{});
  }
}

SlateForm::Row SlateForm::row_for(const Field& f) {
  switch (f.kind) {
    case FieldKind::choice:
      return choice_row(f);
    case FieldKind::co2:
      return edit_row<Co2Edit>(
          f,
          [](const std::optional<units::Co2Concentration>& c) {
            return c ? std::optional<Value>(units::to_volumes(*c)) : std::nullopt;
          },
          [](const std::optional<Value>& v) -> std::optional<units::Co2Concentration> {
            const auto co2 = as_quantity<units::Co2Volumes>(v);
            return co2 ? std::optional(units::to_concentration(*co2)) : std::nullopt;
          });
    case FieldKind::number:
      return edit_row<NumberEdit>(
          f,
          [](const std::optional<double>& n) {
            return n ? std::optional<Value>(Count{*n}) : std::nullopt;
          },
          [](const std::optional<Value>& v) -> std::optional<double> {
            const auto count = as_quantity<Count>(v);
            return count ? std::optional(count->number) : std::nullopt;
          });
    case FieldKind::whole_number:
      return edit_row<WholeNumberEdit>(
          f,
          [](const std::optional<std::int64_t>& n) {
            return n ? std::optional<Value>(Count{static_cast<double>(*n)}) : std::nullopt;
          },
          [](const std::optional<Value>& v) -> std::optional<std::int64_t> {
            const auto count = as_quantity<Count>(v);
            return count ? std::optional(static_cast<std::int64_t>(count->number)) : std::nullopt;
          });
    default:
      return quantity_row(f);
  }
}

void SlateForm::add(const Field& field, FormSection& section) {
  Row row = row_for(field);
  row.widget->setObjectName(QStringLiteral("field_") + slate_label(field.key));
  row.section = &section;
  section.add(q(label_of(field, preferences_.words())), row.widget, hint_for(field));
  rows_.push_back(std::move(row));
}

QString SlateForm::hint_for(const Field& field) const {
  const units::Printer printer{preferences_.units(), preferences_.number_style()};
  return q(hint_of(field, printer, preferences_.words()));
}

void SlateForm::say_words() {
  for (const Row& row : rows_) {
    if (auto* bar = qobject_cast<ChoiceBar*>(row.widget)) {
      bar->set_words(slate_choices(*row.field, preferences_));
    }
    row.section->set_row_words(row.widget, q(label_of(*row.field, preferences_.words())),
                               hint_for(*row.field));
  }
}

void SlateForm::fold(bool folded) {
  unfold_->setArrowType(folded ? Qt::RightArrow : Qt::DownArrow);
  further_->setVisible(!folded);
}

// A figure that still stands as it was put there keeps its origin; one that
// was changed is the person's own.
Inputs SlateForm::inputs() const {
  Inputs in = start_;
  for (const Row& row : rows_) {
    const std::optional<Value> now = row.read();
    if (now == row.shown) continue;
    in.set(row.field->key, now, report::InputOrigin::typed);
  }
  return in;
}

QString SlateForm::unreadable() const {
  for (const Row& row : rows_) {
    if (row.unreadable()) return q(label_of(*row.field, preferences_.words()));
  }
  return {};
}

void SlateForm::show_problem(const std::optional<report::slate::Problem>& problem) {
  for (const Row& row : rows_) {
    const bool here = problem && row.field->key == problem->field;
    row.refuse(here ? q(problem->sentence) : QString());
    if (here && row.field->detail) unfold_->setChecked(true);
  }
}

void SlateForm::focus_first() {
  if (rows_.empty()) return;
  rows_.front().widget->setFocus();
  if (auto* edit = qobject_cast<QuantityEdit*>(rows_.front().widget)) edit->select_all();
}

QWidget* SlateForm::editor(std::string_view key) const {
  for (const Row& row : rows_) {
    if (row.field->key == key) return row.widget;
  }
  return nullptr;
}

}  // namespace ullage::ui
