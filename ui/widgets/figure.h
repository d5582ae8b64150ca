// SPDX-License-Identifier: GPL-3.0-or-later
//
// A displayed number that opens its reasons: a text with a dotted line beneath,
// reached by Tab, opened by a click, Space or Enter. To a screen reader it is a
// button that says its name, its answer and that it has reasons.
//
//   auto* left = new Figure(TextRole::body, Ink::text, this);
//   left->show_number(tr("Left"), q(text), [=] { return report::level_grounds(...); });
//
// The grounds are worked out when they are asked for. Without grounds it is a
// plain text that takes no focus.
#pragma once

#include <QAbstractButton>
#include <functional>

#include "core/report/grounds.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/wrapped_lines.h"

namespace ullage::ui {

class Figure final : public QAbstractButton {
  Q_OBJECT
 public:
  using Reasons = std::function<report::Grounds()>;
  explicit Figure(TextRole role = TextRole::body, Ink ink = Ink::text, QWidget* parent = nullptr);

  // `name` is what the number is of, for a screen reader and the pop-up's title.
  void show_number(const QString& name, const QString& text, Reasons reasons);
  [[nodiscard]] bool has_reasons() const { return static_cast<bool>(reasons_); }
  [[nodiscard]] report::Grounds grounds() const;
  void open_reasons();
  void set_ink(Ink);
  // As it is painted at this width: broken at spaces alone, so that no unit ("g/L") is
  // parted, and never between a number and its unit where both fit on one line.
  [[nodiscard]] QStringList lines_at(int width) const;

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  bool event(QEvent*) override;

 private:
  [[nodiscard]] WrappedText& wrapped() const;
  Ink ink_;
  mutable WrappedText wrapped_;
  Reasons reasons_;
};

}  // namespace ullage::ui
