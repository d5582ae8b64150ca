// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

namespace ullage::app {

namespace {

void install(QCoreApplication& application, const QString& name, const QString& folder) {
  auto* translator = new QTranslator(&application);
  if (translator->load(name, folder)) {
    QCoreApplication::installTranslator(translator);
  } else {
    delete translator;
  }
}

}  // namespace

void speak(QCoreApplication& application, const QString& language) {
  const QString ours = QStringLiteral(":/translations");
  install(application, QStringLiteral("ullage_en"), ours);
  if (language != QLatin1String("de")) return;
  // Qt's own words ("Cancel", the file dialog), where the system has them.
  install(application, QStringLiteral("qtbase_de"),
          QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  install(application, QStringLiteral("ullage_de"), ours);
}

}  // namespace ullage::app
