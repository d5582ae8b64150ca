// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fields of one entry as a widget: rows in the order of its form, shown or
// hidden as the answers ask for, with faults at their fields. A form holds one
// of these; a guided act holds one for each of its entries.
#pragma once

#include <QWidget>
#include <set>
#include <string>

#include "core/cellar/message.h"
#include "ui/context.h"
#include "ui/dialogs/forms/field_binding.h"

namespace ullage::ui {

class Disclosure;
class FormSection;

class EntryFields : public QWidget {
  Q_OBJECT
 public:
  // A fresh entry shows a quantity that nobody has stated yet as an empty field;
  // as_given shows every value, zero included.
  enum class Start { fresh, as_given };
  // `left_out` names columns that the surrounding act answers itself; they keep
  // what the payload has.
  EntryFields(const Context& context, const cellar::Payload& start,
              const std::set<std::string>& left_out = {}, Start how = Start::fresh,
              QWidget* parent = nullptr);
  ~EntryFields() override;

  [[nodiscard]] const FormSpec& spec() const { return spec_; }
  [[nodiscard]] cellar::Payload payload() const;
  // Whether no row on show is empty that must not be, or holds what can't be read.
  [[nodiscard]] bool complete() const;
  // Whether nothing is stated there.
  [[nodiscard]] bool blank(std::string_view column) const;
  void set_payload(const cellar::Payload& payload);
  // Points the hidden or shown id field of the subject's kind at it, and offers
  // its last readings.
  void set_subject(const cellar::SubjectRef& subject);

  // The keyboard to the first field that is still to be answered.
  void focus_first();
  // Shows or hides the rows that most people leave as they stand.
  void open_further(bool open);

  // Shows every fault of the rows on show; true when there is one. The first
  // faulty field takes the focus, unless something above it is faulty, too.
  bool show_faults(bool take_focus = true);
  // Puts the sentence at the field; false when the column is not on show. With
  // `take_focus` the keyboard goes there.
  bool refuse(const std::string& column, const QString& sentence, bool take_focus = false);
  // The same, but only where something is typed: an empty field is not yet
  // wrong, it is only not yet filled in.
  void refuse_typed(const std::string& column, const QString& sentence);

 signals:
  void changed();

 private:
  [[nodiscard]] FieldBinding* binding(std::string_view column) const;
  [[nodiscard]] bool on_show(const FieldSpec& field) const;
  [[nodiscard]] const FieldSpec* error_of(const FieldSpec& field) const;
  void add_rows();
  void add_row(const FieldSpec& field, QWidget* widget);
  void show_rows();
  void bring_usual_figures();
  void open_if_further(std::string_view column);
  [[nodiscard]] bool asks_further() const;
  void offer_readings();

  Context context_;
  FormSpec spec_;
  cellar::Payload like_;
  Bindings bindings_;
  FormSection* rows_ = nullptr;
  Disclosure* further_ = nullptr;          // null when no field is behind it
  std::optional<std::size_t> shown_kind_;  // of a thing that comes in kinds
  bool built_ = false;
};

}  // namespace ullage::ui
