// SPDX-License-Identifier: GPL-3.0-or-later
//
// Free text with a limit: one line or several. Text over the limit is kept as
// typed and refused with a sentence that says by how much.
#pragma once

#include <QWidget>
#include <string>

class QLineEdit;
class QPlainTextEdit;

namespace ullage::ui {

class FieldMessage;

class TextEdit : public QWidget {
  Q_OBJECT
 public:
  enum class Lines { one, several };
  // `limit` in characters.
  explicit TextEdit(std::size_t limit, Lines lines = Lines::one, QWidget* parent = nullptr);
  ~TextEdit() override;

  [[nodiscard]] std::string value() const;  // trimmed
  void set_value(const std::string&);
  void set_placeholder(const QString&);
  void set_required(bool required) { required_ = required; }
  [[nodiscard]] QString text() const;
  [[nodiscard]] QString fault() const;
  void show_fault();
  void set_refusal(const QString&);
  [[nodiscard]] QWidget* focus_widget() const;
  [[nodiscard]] QLineEdit* line_edit() const { return line_; }  // null when several lines

 signals:
  void changed();

 private:
  void on_typed();
  void say();
  int limit_;
  QLineEdit* line_ = nullptr;
  QPlainTextEdit* box_ = nullptr;
  FieldMessage* below_;
  bool required_ = false;
  bool fault_on_show_ = false;
  QString refusal_;
};

}  // namespace ullage::ui
