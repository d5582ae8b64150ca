// SPDX-License-Identifier: GPL-3.0-or-later
//
// The layout of forms: a heading, then rows of a label and its field. Labels
// are buddies of their fields (Alt+letter goes there, screen readers say them);
// a hint stands under a field in small type, a caution across the whole width.
#pragma once

#include <QFrame>
#include <QString>
#include <QWidget>
#include <vector>

class QGridLayout;
class QLabel;

namespace ullage::ui {

// One short safety sentence with its mark, at the step where it matters.
class Caution : public QFrame {
  Q_OBJECT
 public:
  enum class Weight { caution, danger };
  explicit Caution(const QString& sentence, Weight weight = Weight::caution,
                   QWidget* parent = nullptr);
  void set_sentence(const QString&);
  [[nodiscard]] QString sentence() const;

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  QLabel* words_;
  Weight weight_;
};

class FormSection : public QWidget {
  Q_OBJECT
 public:
  explicit FormSection(const QString& heading = {}, QWidget* parent = nullptr);

  // `label` may carry a mnemonic ("&Pressure"). Returns the label, so that a
  // caller can change or hide the row.
  QLabel* add(const QString& label, QWidget* field, const QString& hint = {});
  // The row of `field` in other words, as when the region or the units change. A
  // hint stays a hint: a row without one gets none.
  void set_row_words(QWidget* field, const QString& label, const QString& hint);
  // Across both columns, without a label.
  void add_wide(QWidget*);
  Caution* add_caution(const QString& sentence, Caution::Weight = Caution::Weight::caution);
  QLabel* add_text(const QString& sentence);  // in the secondary colour
  // Shows or hides the row of `field`: label, field and hint.
  void set_row_visible(QWidget* field, bool visible);

 private:
  struct Words {
    QWidget* field;
    QLabel* label;
    QLabel* hint;  // null where there is none
  };
  static void name_field(QWidget* field, const QString& label);

  QGridLayout* grid_;
  std::vector<Words> words_;
};

// "2.4 ± 0.2": a value and its error beside each other, for one row of a form. The
// error is spoken as `error_name`.
[[nodiscard]] QWidget* with_error(QWidget* value, QWidget* error, const QString& error_name);

// No letter is underlined twice in a dialog: Alt and that letter would only go from
// one to the other. Buttons keep theirs, then the labels from above.
void drop_shared_mnemonics(QWidget& dialog);

// What a label may be pinned to: the widget inside an editor that takes focus.
[[nodiscard]] QWidget* focus_target(QWidget* field);

// Gives the field the keyboard and scrolls what it stands in to it.
void lead_to(QWidget* field);

}  // namespace ullage::ui
