// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whatever of a window a person can read or have read out: what is painted (scrolled to
// where needed), the whole text of labels, buttons and fields, every choice and every
// row of what is listed, tool tips, names and descriptions.
#pragma once

#include <QStringList>

class QWidget;

namespace ullage::testing {

[[nodiscard]] QStringList readable_texts(QWidget& window);

}  // namespace ullage::testing
