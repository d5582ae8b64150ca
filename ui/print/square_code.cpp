// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/square_code.h"

#include <qrencode.h>

#include <QPainter>
#include <QPainterPath>
#include <memory>

namespace ullage::ui {
namespace {

constexpr int quiet_modules = 4;  // ISO 18004

struct FreeCode {
  void operator()(QRcode* code) const { QRcode_free(code); }
};

bool dark(const QRcode& code, int x, int y) { return (code.data[y * code.width + x] & 1U) != 0; }

}  // namespace

bool paint_square_code(QPainter& painter, const QRectF& area, const std::string& text) {
  const std::unique_ptr<QRcode, FreeCode> code(
      QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_Q));
  if (!code) return false;
  const double module = area.width() / (code->width + 2 * quiet_modules);
  // One path of runs: single squares would show seams between them.
  QPainterPath path;
  for (int y = 0; y < code->width; ++y) {
    for (int x = 0; x < code->width; ++x) {
      if (!dark(*code, x, y)) continue;
      int run = 1;
      while (x + run < code->width && dark(*code, x + run, y)) ++run;
      path.addRect(QRectF(area.left() + (quiet_modules + x) * module,
                          area.top() + (quiet_modules + y) * module, run * module, module));
      x += run - 1;
    }
  }
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.fillRect(area, Qt::white);
  path.setFillRule(Qt::WindingFill);
  painter.fillPath(path, Qt::black);
  painter.restore();
  return true;
}

}  // namespace ullage::ui
