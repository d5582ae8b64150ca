// SPDX-License-Identifier: GPL-3.0-or-later
//
// When something happened (a moment, never in the future) and on which day
// something falls. What may be typed is in when_text.h; below the field stands
// how it was read ("Tue 24 Nov 2026, 22:00, 9 h ago").
#pragma once

#include <QWidget>
#include <optional>

#include "core/cellar/facade.h"

class QLineEdit;

namespace ullage::ui {

class FieldMessage;

class WhenEdit : public QWidget {
  Q_OBJECT
 public:
  // Starts at "now", which stays now until something else is typed.
  explicit WhenEdit(const cellar::Facade&, QWidget* parent = nullptr);
  ~WhenEdit() override;

  [[nodiscard]] std::optional<cellar::Instant> value() const;  // nullopt when fault()
  void set_value(std::optional<cellar::Instant>);
  void set_required(bool required) { required_ = required; }  // true at first
  void set_text(const QString&);
  [[nodiscard]] QString text() const;
  [[nodiscard]] QString fault() const;
  void show_fault();
  void set_refusal(const QString&);
  [[nodiscard]] QLineEdit* line_edit() const { return edit_; }

 signals:
  void changed();

 private:
  void read();
  void offer(const QString& text);
  const cellar::Facade& cellar_;
  QLineEdit* edit_;
  FieldMessage* below_;
  std::optional<cellar::Instant> value_;  // as set or read; unset while it is "now"
  bool is_now_ = true;
  bool required_ = true;
  QString fault_, refusal_;
  bool fault_on_show_ = false;
};

class DateEdit : public QWidget {
  Q_OBJECT
 public:
  explicit DateEdit(const cellar::Facade&, QWidget* parent = nullptr);  // starts empty
  ~DateEdit() override;

  [[nodiscard]] std::optional<cellar::Date> value() const { return value_; }
  void set_value(std::optional<cellar::Date>);
  void set_required(bool required) { required_ = required; }
  void set_text(const QString&);
  [[nodiscard]] QString text() const;
  [[nodiscard]] QString fault() const;
  void show_fault();
  void set_refusal(const QString&);
  [[nodiscard]] QLineEdit* line_edit() const { return edit_; }

 signals:
  void changed();

 private:
  void read();
  const cellar::Facade& cellar_;
  QLineEdit* edit_;
  FieldMessage* below_;
  std::optional<cellar::Date> value_;
  bool required_ = false;
  QString fault_, refusal_;
  bool fault_on_show_ = false;
};

}  // namespace ullage::ui
