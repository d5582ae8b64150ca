// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/painted_text.h"

#include <qcustomplot.h>

#include <QAbstractScrollArea>
#include <QApplication>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QScrollBar>
#include <QWidget>
#include <algorithm>
#include <utility>

namespace ullage::testing {
namespace {

// Notes text and lets all else go.
class TextEngine final : public QPaintEngine {
 public:
  explicit TextEngine(std::vector<PaintedText>& into) : QPaintEngine(AllFeatures), into_(into) {}
  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  void updateState(const QPaintEngineState&) override {}
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
  void drawPath(const QPainterPath&) override {}
  // A window that lies over another paints its ground first.
  void drawRects(const QRectF* rects, int count) override {
    for (int i = 0; i < count; ++i) cover(rects[i]);
  }
  void drawRects(const QRect* rects, int count) override {
    for (int i = 0; i < count; ++i) cover(rects[i]);
  }
  void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
  void drawPolygon(const QPoint*, int, PolygonDrawMode) override {}
  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    if (item.text().trimmed().isEmpty()) return;
    const QRectF box(at.x(), at.y() - item.ascent(), item.width(), item.ascent() + item.descent());
    const QRect area = in_sight(box);
    if (area.width() < 3 || area.height() < 6) return;
    QColor ink = painter()->pen().color();
    ink.setAlphaF(ink.alphaF() * static_cast<float>(painter()->opacity()));
    into_.push_back({item.text(), area, ink});
  }
  [[nodiscard]] Type type() const override { return User; }

 private:
  [[nodiscard]] QRect in_sight(const QRectF& box) const {
    const QTransform to_device = painter()->deviceTransform();
    QRect area = to_device.mapRect(box).toAlignedRect();
    if (!systemClip().isEmpty()) area &= systemClip().boundingRect();
    if (painter()->hasClipping()) {
      area &= to_device.mapRect(painter()->clipBoundingRect()).toAlignedRect();
    }
    return area;
  }
  // What was painted below an opaque rectangle can't be seen any more.
  void cover(const QRectF& rect) {
    const QBrush& brush = painter()->brush();
    if (brush.style() != Qt::SolidPattern || !brush.isOpaque() || painter()->opacity() < 1) return;
    const QRect area = in_sight(rect);
    std::erase_if(into_, [&](const PaintedText& text) { return area.contains(text.area); });
  }

  std::vector<PaintedText>& into_;
};

class TextDevice final : public QPaintDevice {
 public:
  TextDevice(const QWidget& like, std::vector<PaintedText>& into)
      : size_(like.size()), dpi_x_(like.logicalDpiX()), dpi_y_(like.logicalDpiY()), engine_(into) {}
  [[nodiscard]] QPaintEngine* paintEngine() const override { return &engine_; }

 protected:
  [[nodiscard]] int metric(PaintDeviceMetric what) const override {
    switch (what) {
      case PdmWidth:
        return size_.width();
      case PdmHeight:
        return size_.height();
      case PdmDevicePixelRatio:
        return 1;
      case PdmDevicePixelRatioScaled:
        return static_cast<int>(devicePixelRatioFScale());
      case PdmDpiX:
      case PdmPhysicalDpiX:
        return dpi_x_;
      case PdmDpiY:
      case PdmPhysicalDpiY:
        return dpi_y_;
      default:
        return QPaintDevice::metric(what);
    }
  }

 private:
  QSize size_;
  int dpi_x_, dpi_y_;
  mutable TextEngine engine_;
};

// A plot paints itself into a picture of its own first: asked to paint again, straight
// into ours.
void add_texts_of(QCustomPlot& plot, QWidget& window, std::vector<PaintedText>& into) {
  const QRect in_sight =
      plot.visibleRegion().boundingRect().translated(plot.mapTo(&window, QPoint(0, 0)));
  if (in_sight.isEmpty()) return;
  std::vector<PaintedText> texts;
  TextDevice device(window, texts);
  {
    QCPPainter painter(&device);
    painter.setMode(QCPPainter::pmNoCaching);
    painter.translate(plot.mapTo(&window, QPoint(0, 0)));
    plot.toPainter(&painter, plot.width(), plot.height());
  }
  for (PaintedText& text : texts) {
    text.area &= in_sight;
    if (!text.area.isEmpty()) into.push_back(std::move(text));
  }
}

}  // namespace

std::vector<PaintedText> painted_texts(QWidget& window) {
  std::vector<PaintedText> texts;
  TextDevice device(window, texts);
  window.render(&device);
  for (auto* plot : window.findChildren<QCustomPlot*>()) {
    if (plot->isVisible()) add_texts_of(*plot, window, texts);
  }
  return texts;
}

void scroll_through(QWidget& window, const std::function<void()>& look) {
  constexpr int seen_twice = 40;
  std::vector<std::pair<QScrollBar*, int>> bars;
  for (auto* area : window.findChildren<QAbstractScrollArea*>()) {
    QScrollBar* bar = area->verticalScrollBar();
    if (area->isVisible() && bar && bar->maximum() > bar->minimum()) {
      bars.emplace_back(bar, bar->value());
      bar->setValue(bar->minimum());
    }
  }
  for (bool further = true; further;) {
    QApplication::processEvents();
    look();
    further = false;
    for (const auto& [bar, before] : bars) {
      const int at = bar->value();
      // Of a view that scrolls by rows a page is a number of rows.
      bar->setValue(at + std::max(1, bar->pageStep() > 2 * seen_twice ? bar->pageStep() - seen_twice
                                                                      : bar->pageStep() - 1));
      further = further || bar->value() != at;
    }
  }
  for (const auto& [bar, before] : bars) bar->setValue(before);
  QApplication::processEvents();
}

}  // namespace ullage::testing
