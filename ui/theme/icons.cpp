// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/icons.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QSvgRenderer>
#include <array>

namespace ullage::ui {

namespace {

constexpr std::array<const char*, icon_count> icon_files = {
    "keg",          "tap",           "line",       "lock",         "gas",         "log",
    "settings",     "plus",          "search",     "warning",      "danger",      "info",
    "clock",        "ready",         "empty",      "on_tap",       "check",       "close",
    "undo",         "redo",          "print",      "filter",       "compact",     "comfortable",
    "chevron_left", "chevron_right", "chevron_up", "chevron_down", "thermometer", "transfer",
    "keg_change",   "stock",         "folder",     "restore",      "strike",      "edit",
    "slate",        "beers",         "round",      "safety",       "cleaning",    "ullage"};

QByteArray coloured_drawing(Icon which, const QColor& colour) {
  QFile file(icon_path(which));
  if (!file.open(QIODevice::ReadOnly)) return {};
  return file.readAll().replace("currentColor", colour.name().toLatin1());
}

// Draws the SVG at whatever size is asked, so a 2x screen gets a sharp icon.
class DrawnIcon : public QIconEngine {
 public:
  DrawnIcon(Icon which, const QColor& colour) : which_(which), colour_(colour) {}
  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    if (mode == QIcon::Disabled) painter->setOpacity(0.55);
    paint_icon(*painter, rect, which_, colour_);
    painter->setOpacity(1);
  }
  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap map(size);
    map.fill(Qt::transparent);
    QPainter painter(&map);
    paint(&painter, QRect(QPoint(0, 0), size), mode, state);
    return map;
  }
  [[nodiscard]] QIconEngine* clone() const override { return new DrawnIcon(which_, colour_); }

 private:
  Icon which_;
  QColor colour_;
};

}  // namespace

QString icon_path(Icon which) {
  return QStringLiteral(":/icons/%1.svg").arg(icon_files.at(static_cast<std::size_t>(which)));
}

QIcon icon(Icon which, const QColor& colour) { return QIcon(new DrawnIcon(which, colour)); }

void paint_icon(QPainter& painter, const QRectF& rect, Icon which, const QColor& colour) {
  QSvgRenderer drawing(coloured_drawing(which, colour));
  drawing.setAspectRatioMode(Qt::KeepAspectRatio);
  drawing.render(&painter, rect);
}

}  // namespace ullage::ui
