// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fields of one computation as editors: what people often change on top,
// the rest folded away. An open form follows a change of units and region. What can't be read or
// reckoned with is told at its field.
#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "core/report/slate/computation.h"

class QToolButton;

namespace ullage::ui {

class FormSection;
class Preferences;

class SlateForm final : public QWidget {
  Q_OBJECT
 public:
  SlateForm(const report::slate::Computation&, report::slate::Inputs start, const Preferences&,
            QWidget* parent = nullptr);

  [[nodiscard]] report::slate::Inputs inputs() const;
  // The label of a field whose text can't be read; empty when all can be.
  [[nodiscard]] QString unreadable() const;
  // At its field; folded fields open. Nothing clears what was said before.
  void show_problem(const std::optional<report::slate::Problem>&);
  void focus_first();
  [[nodiscard]] QWidget* editor(std::string_view key) const;

 signals:
  void changed();

 private:
  struct Row {
    const report::slate::Field* field = nullptr;
    QWidget* widget = nullptr;
    std::function<std::optional<report::slate::Value>()> read;
    std::function<void(const QString&)> refuse;
    std::function<bool()> unreadable;
    std::optional<report::slate::Value> shown;  // as it was put there
    FormSection* section = nullptr;
  };
  void say_words();
  [[nodiscard]] QString hint_for(const report::slate::Field&) const;
  void add(const report::slate::Field&, FormSection&);
  void fold(bool folded);
  template <class Edit, class ToValue, class FromValue>
  Row edit_row(const report::slate::Field&, ToValue, FromValue);
  Row row_for(const report::slate::Field&);
  Row quantity_row(const report::slate::Field&);
  Row choice_row(const report::slate::Field&);

  const Preferences& preferences_;
  report::slate::Inputs start_;
  std::vector<Row> rows_;
  FormSection* further_ = nullptr;
  QToolButton* unfold_ = nullptr;
};

}  // namespace ullage::ui
