// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/entry_fields.h"

#include <QCheckBox>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/dialogs/forms/enum_words.h"
#include "ui/dialogs/forms/form_memory.h"
#include "ui/dialogs/forms/form_words.h"
#include "ui/dialogs/forms/usual_figures.h"
#include "ui/preferences.h"
#include "ui/widgets/disclosure.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/form_section.h"

namespace ullage::ui {
namespace {

FormSpec without(const FormSpec& whole, const std::set<std::string>& left_out) {
  FormSpec spec = whole;
  for (FieldSpec& field : spec.fields) {
    if (left_out.contains(std::string(field.column))) field.use = Use::hidden;
  }
  return spec;
}

}  // namespace

EntryFields::EntryFields(const Context& context, const cellar::Payload& start,
                         const std::set<std::string>& left_out, Start how, QWidget* parent)
    : QWidget(parent),
      context_(context),
      spec_(without(*form_spec(cellar::kind_of(start)), left_out)),
      like_(start),
      shown_kind_(kind_chosen(start)) {
  rows_ = new FormSection;
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(rows_);
  bindings_ = bind_fields(like_, spec_, context_, [this] {
    if (!built_) return;
    bring_usual_figures();
    show_rows();
    emit changed();
  });
  if (how == Start::fresh) clear_unstated(like_, bindings_);
  add_rows();
  built_ = true;
  show_rows();
  // What is still to be filled in is not hidden, nor what somebody came to correct.
  open_further(how == Start::as_given || asks_further());
  offer_readings();
}

// The editors go while what their changes lead to is still here.
EntryFields::~EntryFields() {
  built_ = false;
  delete rows_;
}

FieldBinding* EntryFields::binding(std::string_view column) const {
  const auto at = std::find_if(bindings_.begin(), bindings_.end(),
                               [&](const auto& b) { return b->column == column; });
  return at == bindings_.end() ? nullptr : at->get();
}

// The field right behind it that tells how far off its value may be.
const FieldSpec* EntryFields::error_of(const FieldSpec& field) const {
  const FieldSpec* next = &field + 1;
  if (next >= spec_.fields.data() + spec_.fields.size()) return nullptr;
  const bool error = next->column.find("_half_width_") != std::string_view::npos;
  const FieldBinding* bound = binding(next->column);
  return error && bound && bound->widget() && next->further == field.further ? next : nullptr;
}

void EntryFields::add_row(const FieldSpec& field, QWidget* widget) {
  const report::RegionalWords words = context_.preferences.words();
  // A tick box carries its own words.
  const bool tick = qobject_cast<QCheckBox*>(widget) != nullptr;
  QWidget* cell = widget;
  if (const FieldSpec* error = error_of(field)) {
    const QString name = regional(form_words(error->label), words).remove(QLatin1Char('&'));
    cell = with_error(widget, binding(error->column)->widget(), name);
  }
  rows_->add(tick ? QString() : regional(form_words(field.label), words), cell,
             regional(form_words(field.hint), words));
}

void EntryFields::add_rows() {
  const FieldSpec* done = nullptr;
  for (const FieldSpec& field : spec_.fields) {
    FieldBinding* bound = binding(field.column);
    QWidget* widget = bound ? bound->widget() : nullptr;
    if (!widget) continue;
    widget->setObjectName(QString::fromUtf8(field.column.data()));
    if (&field == done) continue;  // stands beside its value
    if (field.further && !further_) {
      further_ = new Disclosure(tr("Further figures"), {});
      rows_->add_wide(further_);
      connect(further_, &Disclosure::opened, this, [this] { show_rows(); });
    }
    done = error_of(field);
    add_row(field, widget);
  }
}

bool EntryFields::on_show(const FieldSpec& field) const {
  const FieldBinding* bound = binding(field.column);
  return bound && bound->widget() &&
         (!field.shown_if || field.shown_if(payload(), *context_.cellar.status()));
}

void EntryFields::show_rows() {
  const cellar::Payload now = payload();
  const auto cellar_now = context_.cellar.status();
  const bool all = !further_ || further_->is_open();
  for (const FieldSpec& field : spec_.fields) {
    const FieldBinding* bound = binding(field.column);
    if (!bound || !bound->widget() || (!field.shown_if && !field.further)) continue;
    rows_->set_row_visible(bound->widget(), (!field.shown_if || field.shown_if(now, *cellar_now)) &&
                                                (all || !field.further));
  }
}

// Another kind brings its own figures; anything else that was answered stays.
void EntryFields::bring_usual_figures() {
  if (!shown_kind_) return;
  const cellar::Payload now = payload();
  const auto kind = kind_chosen(now);
  if (kind == shown_kind_) return;
  shown_kind_ = kind;
  set_payload(with_usual_figures(now));
  clear_unstated(payload(), bindings_);  // a kind without usual figures leaves them open
}

bool EntryFields::asks_further() const {
  return std::any_of(spec_.fields.begin(), spec_.fields.end(), [&](const FieldSpec& field) {
    return field.further && on_show(field) && !binding(field.column)->fault().isEmpty();
  });
}

void EntryFields::open_further(bool open) {
  if (further_) further_->set_open(open);
}

void EntryFields::focus_first() {
  for (const FieldSpec& field : spec_.fields) {
    if (!on_show(field) || field.further) continue;
    QWidget* widget = binding(field.column)->widget();
    // What the form is about was chosen by whoever opened it.
    const auto* picker = qobject_cast<EntityPicker*>(widget);
    if (picker && picker->chosen()) continue;
    focus_target(widget)->setFocus();
    return;
  }
}

cellar::Payload EntryFields::payload() const { return read_fields(like_, bindings_); }

bool EntryFields::complete() const {
  return std::all_of(spec_.fields.begin(), spec_.fields.end(), [&](const FieldSpec& field) {
    return !on_show(field) || binding(field.column)->fault().isEmpty();
  });
}

bool EntryFields::blank(std::string_view column) const {
  const FieldBinding* bound = binding(column);
  return bound == nullptr || bound->blank();
}

void EntryFields::set_payload(const cellar::Payload& payload) {
  shown_kind_ = kind_chosen(payload);
  put_fields(payload, bindings_);
  show_rows();
  offer_readings();
}

void EntryFields::set_subject(const cellar::SubjectRef& subject) {
  cellar::Payload about = payload();
  make_about(about, subject);
  set_payload(about);
}

void EntryFields::offer_readings() {
  const auto last = last_of_kind(context_.cellar.journal(), spec_.kind, main_subject(payload()));
  if (last) offer_last(*last, spec_, bindings_);
}

bool EntryFields::show_faults(bool take_focus) {
  bool any = false;
  for (const FieldSpec& field : spec_.fields) {
    if (!on_show(field)) continue;
    FieldBinding* bound = binding(field.column);
    if (bound->fault().isEmpty()) continue;
    bound->show_fault();
    if (field.further) open_further(true);
    if (!any && take_focus) lead_to(bound->widget());
    any = true;
  }
  return any;
}

bool EntryFields::refuse(const std::string& column, const QString& sentence, bool take_focus) {
  FieldBinding* bound = binding(column);
  if (!bound || !bound->widget()) return false;
  bound->refuse(sentence);
  open_if_further(column);
  if (take_focus) lead_to(bound->widget());
  return true;
}

void EntryFields::open_if_further(std::string_view column) {
  const auto at = std::find_if(spec_.fields.begin(), spec_.fields.end(),
                               [&](const FieldSpec& field) { return field.column == column; });
  if (at != spec_.fields.end() && at->further) open_further(true);
}

void EntryFields::refuse_typed(const std::string& column, const QString& sentence) {
  FieldBinding* bound = binding(column);
  if (bound && bound->widget() && !bound->blank() && bound->fault().isEmpty()) {
    bound->refuse(sentence);
    open_if_further(column);
  }
}

}  // namespace ullage::ui
