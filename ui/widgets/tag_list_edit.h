// SPDX-License-Identifier: GPL-3.0-or-later
//
// A field for the tags of several kegs at once ("K01..K08"), with what it expands
// to beneath. For new kegs a tag that a keg in use already has is refused by name;
// for registered ones a tag that no keg has, and nothing typed is no kegs.
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
  enum class Of { new_kegs, registered_kegs };
  explicit TagListEdit(const cellar::Facade&, Of of = Of::new_kegs, QWidget* parent = nullptr);
  ~TagListEdit() override;

  [[nodiscard]] std::vector<std::string> tags() const;    // empty when fault()
  [[nodiscard]] std::vector<cellar::KegId> kegs() const;  // of these tags
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
  [[nodiscard]] QString fault_of(const std::vector<std::string>& tags) const;
  [[nodiscard]] QString told() const;
  const cellar::Facade& cellar_;
  Of of_;
  QLineEdit* edit_;
  FieldMessage* below_;
  std::vector<std::string> tags_;
  QString fault_, refusal_;
  bool fault_on_show_ = false;
};

}  // namespace ullage::ui
