// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fusion with our own fields, buttons, boxes and focus ring, drawn with the
// theme's tokens. A button with the property `role` "primary" is filled,
// "danger" is outlined in red, "quiet" has no border until it is pointed at.
#pragma once

#include <QProxyStyle>

class QAbstractButton;
class QPushButton;
class QRectF;

namespace ullage::ui {

struct Theme;

inline constexpr const char* style_name = "ullage";

class Style : public QProxyStyle {
  Q_OBJECT
 public:
  Style();

  void drawPrimitive(PrimitiveElement, const QStyleOption*, QPainter*,
                     const QWidget*) const override;
  void drawControl(ControlElement, const QStyleOption*, QPainter*, const QWidget*) const override;
  void drawComplexControl(ComplexControl, const QStyleOptionComplex*, QPainter*,
                          const QWidget*) const override;
  int pixelMetric(PixelMetric, const QStyleOption*, const QWidget*) const override;
  int styleHint(StyleHint, const QStyleOption*, const QWidget*, QStyleHintReturn*) const override;
  QSize sizeFromContents(ContentsType, const QStyleOption*, const QSize&,
                         const QWidget*) const override;
  QRect subElementRect(SubElement, const QStyleOption*, const QWidget*) const override;
  QRect subControlRect(ComplexControl, const QStyleOptionComplex*, SubControl,
                       const QWidget*) const override;
  void polish(QWidget*) override;
  using QProxyStyle::polish;
};

// Where a button stands in a row of joined buttons.
enum class Segment { whole, first, middle, last };
void set_segment(QAbstractButton*, Segment);

enum class ButtonRole { plain, primary, danger, quiet };
void set_role(QAbstractButton*, ButtonRole);
// The one that Enter presses: it is filled, so that people see which.
void make_default(QPushButton*);
[[nodiscard]] ButtonRole role_of(const QWidget*);

// Two pixels around what has the keyboard. On a filled control the ring lies
// inside, in the colour of its text.
void paint_focus_ring(QPainter&, const QRectF& body, double corner, const Theme&,
                      bool on_filled = false);

}  // namespace ullage::ui
