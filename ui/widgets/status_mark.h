// SPDX-License-Identifier: GPL-3.0-or-later
//
// A state by shape and word. The shapes differ without colour: ring (empty),
// half ring (dirty), dot (ready), clock (on its way), cup (on tap), triangle
// (warning), octagon (danger), padlock (locked), bar (held back), question.
#pragma once

#include <QWidget>

#include "core/cellar/status.h"

class QPainter;

namespace ullage::ui {

struct Theme;

enum class Mark {
  ring,
  half_ring,
  dot,
  clock,
  cup,
  triangle,
  octagon,
  padlock,
  bar,
  question,
  info
};

// For delegates. `box` is usually 14 to 20 pixels square.
void paint_mark(QPainter&, const QRectF& box, Mark, const Theme&);
[[nodiscard]] QColor mark_colour(Mark, const Theme&);

[[nodiscard]] Mark mark_of(cellar::Severity);
// What a keg's row shows: danger and warning first, then lock, quarantine, and
// the phase.
[[nodiscard]] Mark mark_of(const cellar::KegStatus&);
[[nodiscard]] Mark mark_of(const cellar::LineStatus&);

class StatusMark : public QWidget {
  Q_OBJECT
 public:
  explicit StatusMark(Mark mark = Mark::question, const QString& word = {},
                      QWidget* parent = nullptr);
  void set(Mark, const QString& word);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  Mark mark_;
  QString word_;
};

}  // namespace ullage::ui
