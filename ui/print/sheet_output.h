// SPDX-License-Identifier: GPL-3.0-or-later
//
// Pages to a PDF file, to a printer, or to a picture for the preview.
#pragma once

#include <QImage>
#include <QString>
#include <expected>

#include "ui/print/pages.h"

class QPrinter;

namespace ullage::ui {

// Writes a PDF with selectable text. The error is a sentence: the path and what
// the system said.
[[nodiscard]] std::expected<void, QString> write_pdf(const Pages& pages, const QString& path,
                                                     const QString& title);

[[nodiscard]] std::expected<void, QString> print_pages(const Pages& pages, QPrinter& printer);

// One page `width` device pixels wide.
[[nodiscard]] QImage picture_of(const Pages& pages, int page, int width);

}  // namespace ullage::ui
