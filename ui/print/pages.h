// SPDX-License-Identifier: GPL-3.0-or-later
//
// Anything that is printed: so many pages of one size, each painted in dots
// (paper.h) from the paper's corner. The preview, the printer and the PDF ask
// for nothing else.
#pragma once

#include <QPageLayout>
#include <QSizeF>

class QPainter;

namespace ullage::ui {

class Pages {
 public:
  virtual ~Pages() = default;
  [[nodiscard]] virtual int count() const = 0;
  [[nodiscard]] virtual QPageLayout layout() const = 0;  // size and orientation, no margins
  virtual void paint(QPainter& painter, int page) const = 0;

  [[nodiscard]] QSizeF size() const;  // in dots
};

}  // namespace ullage::ui
