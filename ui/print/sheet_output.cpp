// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet_output.h"

#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>

#include "ui/print/paper.h"
#include "ui/print/whole_file.h"

namespace ullage::ui {
namespace {

template <class Device>
bool paint_all(const Pages& pages, Device& device, QPainter& painter) {
  const double scale = device.resolution() / dots_per_inch;
  for (int page = 0; page < pages.count(); ++page) {
    if (page > 0 && !device.newPage()) return false;
    painter.save();
    painter.scale(scale, scale);
    pages.paint(painter, page);
    painter.restore();
  }
  return painter.end();
}

}  // namespace

std::expected<void, QString> write_pdf(const Pages& pages, const QString& path,
                                       const QString& title) {
  return write_whole(path, [&](QIODevice& file) {
    QPdfWriter writer(&file);
    writer.setResolution(static_cast<int>(dots_per_inch));
    writer.setPageLayout(pages.layout());
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Ullage"));
    QPainter painter;
    return painter.begin(&writer) && paint_all(pages, writer, painter);
  });
}

std::expected<void, QString> print_pages(const Pages& pages, QPrinter& printer) {
  printer.setFullPage(true);
  printer.setPageOrientation(pages.layout().orientation());
  QPainter painter;
  if (!painter.begin(&printer)) {
    return std::unexpected(QStringLiteral("The printer %1 did not start. Is it switched on?")
                               .arg(printer.printerName()));
  }
  if (!paint_all(pages, printer, painter)) {
    return std::unexpected(QStringLiteral("The printer %1 broke off.").arg(printer.printerName()));
  }
  return {};
}

QImage picture_of(const Pages& pages, int page, int width) {
  const double scale = width / pages.size().width();
  QImage image(width, qRound(pages.size().height() * scale), QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.scale(scale, scale);
  pages.paint(painter, page);
  return image;
}

}  // namespace ullage::ui
