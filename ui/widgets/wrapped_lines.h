// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFontMetrics>
#include <QStringList>

namespace ullage::ui {

// The lines of a text in that width, broken at spaces: "g/L" is not parted at its
// slash, and a number stays with its unit where both fit on one line. Only a word
// that is wider than the line is parted, after a hyphen or the like.
[[nodiscard]] QStringList wrapped_lines(const QString& text, const QFontMetrics& letters,
                                        int width);

}  // namespace ullage::ui
