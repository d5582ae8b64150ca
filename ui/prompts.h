// SPDX-License-Identifier: GPL-3.0-or-later
//
// The few boxes that interrupt: choosing files, confirming what can't be undone
// or could hurt. Handed in, so that tests answer them from a queue.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

class QWidget;

namespace ullage::ui {

class Prompts {
 public:
  virtual ~Prompts() = default;
  virtual std::optional<QString> open_cellar_file(QWidget* parent) = 0;
  virtual std::optional<QString> save_file(QWidget* parent, const QString& title,
                                           const QString& proposed, const QString& filter) = 0;
  virtual std::optional<QString> open_file(QWidget* parent, const QString& title,
                                           const QString& filter) = 0;
  // True when the person chose the named action ("Release line", "Restore").
  virtual bool confirm(QWidget* parent, const QString& question, const QString& detail,
                       const QString& action) = 0;
  // The same where the action loses something or could hurt. `harmless` names the
  // other way ("Go on typing"); Enter takes that one.
  virtual bool confirm_risk(QWidget* parent, const QString& question, const QString& detail,
                            const QString& action, const QString& harmless) = 0;
  virtual void tell(QWidget* parent, const QString& what, const QString& detail) = 0;
  // One of several ways out, by index; -1 for none (Esc).
  virtual int choose(QWidget* parent, const QString& what, const QString& detail,
                     const QStringList& actions) = 0;
  virtual std::optional<QString> ask_reason(QWidget* parent, const QString& question) = 0;
};

}  // namespace ullage::ui
