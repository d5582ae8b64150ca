// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet_output.h"

#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>

#include "ui/print/paper.h"

namespace ullage::ui {
namespace {

template <class Device>
void paint_all(const Pages& pages, Device& device, QPainter& painter) {
  const double scale = device.resolution() / dots_per_inch;
  for (int page = 0; page < pages.count(); ++page) {
    if (page > 0) device.newPage();
    painter.save();
    painter.scale(scale, scale);
    pages.paint(painter, page);
    painter.restore();
  }
}

}  // namespace

std::expected<void, QString> write_pdf(const Pages& pages, const QString& path,
                                       const QString& title) {
  // A new file beside the old one, renamed when whole: a full disk leaves what
  // was there.
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly)) {
    return std::unexpected(QStringLiteral("Can't write %1: %2.").arg(path, file.errorString()));
  }
  {
    QPdfWriter writer(&file);
    writer.setResolution(static_cast<int>(dots_per_inch));
    writer.setPageLayout(pages.layout());
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Ullage"));
    QPainter painter;
    if (!painter.begin(&writer)) {
      return std::unexpected(QStringLiteral("Can't write %1: no PDF could be started.").arg(path));
    }
    paint_all(pages, writer, painter);
    painter.end();
  }
  if (!file.commit()) {
    return std::unexpected(QStringLiteral("Can't write %1: %2.").arg(path, file.errorString()));
  }
  return {};
}

std::expected<void, QString> print_pages(const Pages& pages, QPrinter& printer) {
  printer.setFullPage(true);
  printer.setPageOrientation(pages.layout().orientation());
  QPainter painter;
  if (!painter.begin(&printer)) {
    return std::unexpected(QStringLiteral("The printer %1 did not start. Is it switched on?")
                               .arg(printer.printerName()));
  }
  paint_all(pages, printer, painter);
  return {};
}

QImage picture_of(const Pages& pages, int page, int width) {
  const double scale = width / pages.size().width();
  QImage image(width, static_cast<int>(pages.size().height() * scale + 0.5),
               QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.scale(scale, scale);
  pages.paint(painter, page);
  return image;
}

}  // namespace ullage::ui
