// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/whole_file.h"

#include <QCoreApplication>
#include <QSaveFile>

namespace ullage::ui {
namespace {

struct WholeFile {
  Q_DECLARE_TR_FUNCTIONS(WholeFile)
};

}  // namespace

std::expected<void, QString> write_whole(const QString& path,
                                         const std::function<bool(QIODevice&)>& fill) {
  QSaveFile file(path);
  // What Qt still holds back is written by flush(): that there is no room for it, commit()
  // alone would not tell.
  const bool written =
      file.open(QIODevice::WriteOnly) && fill(file) && file.flush() && file.commit();
  if (written) return {};
  return std::unexpected(WholeFile::tr("Can’t write %1: %2.").arg(path, file.errorString()));
}

std::expected<void, QString> write_whole(const QString& path, const std::string& text) {
  return write_whole(path, [&](QIODevice& file) {
    return file.write(text.data(), static_cast<qint64>(text.size())) ==
           static_cast<qint64>(text.size());
  });
}

}  // namespace ullage::ui
