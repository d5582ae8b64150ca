// SPDX-License-Identifier: GPL-3.0-or-later
//
// The prompts as real boxes on the screen.
#pragma once

#include "ui/prompts.h"

namespace ullage::ui {

class BoxPrompts final : public Prompts {
 public:
  std::optional<QString> open_cellar_file(QWidget* parent) override;
  std::optional<QString> save_file(QWidget* parent, const QString& title, const QString& proposed,
                                   const QString& filter) override;
  std::optional<QString> open_file(QWidget* parent, const QString& title,
                                   const QString& filter) override;
  bool confirm(QWidget* parent, const QString& question, const QString& detail,
               const QString& action) override;
  bool confirm_risk(QWidget* parent, const QString& question, const QString& detail,
                    const QString& action, const QString& harmless) override;
  void tell(QWidget* parent, const QString& what, const QString& detail) override;
  int choose(QWidget* parent, const QString& what, const QString& detail,
             const QStringList& actions) override;
  std::optional<QString> ask_reason(QWidget* parent, const QString& question) override;

 private:
  std::optional<QString> taken(const QString& path);
  QString folder_;  // where the last file was; the person's documents at first
};

}  // namespace ullage::ui
