// SPDX-License-Identifier: GPL-3.0-or-later
//
// A field for one quantity, and what all such fields share. Rules:
//   - a bare number means the unit shown in the field; a typed unit wins
//     ("30 psi" in a field that shows bar): the field's own unit then gives way to
//     it, and what that is in the shown unit stands beneath;
//   - empty is nullopt, never 0;
//   - the quantity is kept at full precision behind the digits on screen, so
//     switching units back and forth never changes it;
//   - text that can't be read stays as typed, with a sentence beneath; the
//     value is nullopt meanwhile and fault() is not empty.
// The typed editors are in quantity_edits.h.
#pragma once

#include <QString>
#include <QWidget>
#include <expected>

class QLabel;
class QLineEdit;

namespace ullage::ui {

class FieldMessage;
class Preferences;

class QuantityEdit : public QWidget {
  Q_OBJECT
 public:
  ~QuantityEdit() override;
  // The sentence about what is typed, or about its absence when it is
  // required; empty when all is well. Holds whether or not it is on show yet.
  [[nodiscard]] QString fault() const;
  // True when no text is typed.
  [[nodiscard]] bool is_empty() const;
  void set_required(bool);
  // Shows fault() now; a form calls it when it is asked to log.
  void show_fault();
  // A refusal from elsewhere (the façade's answer): shown until the next edit.
  void set_refusal(const QString& sentence);

  void set_text(const QString&);  // as if typed
  [[nodiscard]] QString text() const;
  [[nodiscard]] QLineEdit* line_edit() const { return edit_; }
  void select_all();
  void set_read_only(bool);

 signals:
  void changed();    // the value, or whether there is one
  void committed();  // Enter, or the field was left

 protected:
  QuantityEdit(const Preferences&, QWidget* parent);

  // Reads the text; keeps the value. Returns the sentence when it can't.
  virtual QString take_text(const QString&) = 0;  // not called for empty text
  virtual void take_nothing() = 0;
  [[nodiscard]] virtual bool has_value() const = 0;
  // The value as shown, without the unit where that is the field's own.
  [[nodiscard]] virtual QString shown_value() const = 0;
  [[nodiscard]] virtual QString shown_unit() const = 0;
  [[nodiscard]] virtual QString last_text() const = 0;  // "last: 12 psi", or empty
  // Beneath the field when the typed unit is not the shown one: "2.07 bar".
  [[nodiscard]] virtual QString other_reading(const QString& typed) const = 0;

  const Preferences& preferences() const { return preferences_; }
  void render();  // after set_value
  void refresh_last();

  void changeEvent(QEvent*) override;
  void resizeEvent(QResizeEvent*) override;

 private:
  void on_typed();
  void on_units();
  void on_left();
  void say();
  void place_unit();

  const Preferences& preferences_;
  QLineEdit* edit_;
  QLabel* unit_;
  FieldMessage* below_;
  QString reading_fault_;  // of the text as typed
  QString refusal_;
  bool required_ = false;
  bool fault_on_show_ = false;
};

}  // namespace ullage::ui
