// SPDX-License-Identifier: GPL-3.0-or-later
//
// The drawings behind style.cpp: one function a control.
#pragma once

#include <QColor>
#include <QRect>
#include <QStyle>

class QPainter;
class QStyleOption;
class QStyleOptionSlider;
class QWidget;

namespace ullage::ui {

enum class Segment;
[[nodiscard]] Segment segment_of(const QWidget*);

void paint_field(QPainter&, const QStyleOption&, const QWidget*);
void paint_frame(QPainter&, const QStyleOption&);
void paint_button(QPainter&, const QStyleOption&, const QWidget*);
void paint_tool_button(QPainter&, const QStyleOption&);
void paint_check_box(QPainter&, const QStyleOption&);
void paint_radio(QPainter&, const QStyleOption&);
void paint_chevron(QPainter&, const QRect&, bool down, const QColor&);
void paint_scroll_bar(QPainter&, const QStyleOptionSlider&, const QRect& slider);
// The colour of a button's words.
[[nodiscard]] QColor button_ink(const QStyleOption&, const QWidget*);
// A scroll bar without arrows: the groove is the whole bar.
[[nodiscard]] QRect scroll_bar_part(const QStyleOptionSlider&, QStyle::SubControl);

}  // namespace ullage::ui
