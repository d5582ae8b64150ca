// SPDX-License-Identifier: GPL-3.0-or-later
//
// A file that is written whole or not at all: under another name beside it, which becomes
// its own when all is on the disk. A full disk leaves what was there, and is said.
#pragma once

#include <QString>
#include <expected>
#include <functional>
#include <string>

class QIODevice;

namespace ullage::ui {

// `fill` writes into the file and tells whether it could. The error is a sentence.
[[nodiscard]] std::expected<void, QString> write_whole(const QString& path,
                                                       const std::function<bool(QIODevice&)>& fill);
[[nodiscard]] std::expected<void, QString> write_whole(const QString& path,
                                                       const std::string& text);

}  // namespace ullage::ui
