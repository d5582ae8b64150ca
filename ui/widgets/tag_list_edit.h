// SPDX-License-Identifier: GPL-3.0-or-later
//
// A field for the tags of several new kegs at once ("K01..K08"), with what it
// expands to beneath. A tag that a keg in use already has is refused by name.
#pragma once

#include <QWidget>
#include <string>
#include <vector>

#include "core/cellar/facade.h"

class QLineEdit;

namespace ullage::ui {

class FieldMessage;

class TagListEdit : public QWidget {
  Q_OBJECT
 public:
  explicit TagListEdit(const cellar::Facade&, QWidget* parent = nullptr);
  ~TagListEdit() override;

  [[nodiscard]] std::vector<std::string> tags() const;  // empty when fault()
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
  std::vector<std::string> tags_;
  QString fault_, refusal_;
  bool fault_on_show_ = false;
};

}  // namespace ullage::ui
