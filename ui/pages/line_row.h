// SPDX-License-Identifier: GPL-3.0-or-later
//
// One line on the Lines page: its tap, what it serves, when it was cleaned and
// is due, its state in words, and what can be done with it now. A locked line
// says "do not serve" across its whole width and offers nothing but its release.
#pragma once

#include <QFrame>

#include "core/cellar/status.h"
#include "ui/context.h"

class QGridLayout;
class QHBoxLayout;

namespace ullage::ui {

class LineRow : public QFrame {
  Q_OBJECT
 public:
  LineRow(const Context& context, const cellar::LineStatus& line,
          const cellar::CellarStatus& status, QWidget* parent = nullptr);

 signals:
  void task_asked(const QString& kind);  // "line_locked", "keg_change", ...

 private:
  void add_lock(const cellar::LineStatus& line);
  void add_facts(const cellar::LineStatus& line, const cellar::CellarStatus& status);
  void add_advice(const cellar::LineStatus& line);
  void add_actions(const cellar::LineStatus& line);
  [[nodiscard]] QString hose_words(const cellar::LineRecord& record) const;
  [[nodiscard]] QString cleaning_words(const cellar::LineStatus& line) const;

  Context context_;
  QGridLayout* grid_;
};

}  // namespace ullage::ui
