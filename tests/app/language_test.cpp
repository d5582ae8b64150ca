// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/language.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>
#include <set>
#include <vector>

namespace ullage {
namespace {

struct Text {
  QString context, source, translation;
  bool finished = true;
};

std::vector<Text> texts_of(const char* file) {
  QFile ts(QStringLiteral(ULLAGE_SOURCE_DIR "/resources/translations/") + QLatin1String(file));
  EXPECT_TRUE(ts.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&ts);
  std::vector<Text> all;
  QString context;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("name")) context = xml.readElementText();
    if (xml.name() == QLatin1String("source")) all.push_back({context, xml.readElementText(), {}});
    if (xml.name() == QLatin1String("translation")) {
      all.back().finished = !xml.attributes().hasAttribute(QLatin1String("type"));
      all.back().translation = xml.readElementText(QXmlStreamReader::IncludeChildElements);
    }
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  return all;
}

std::multiset<QString> marks_in(const QString& text) {
  static const QRegularExpression mark(QStringLiteral("%(\\d|n)"));
  std::multiset<QString> marks;
  for (auto at = mark.globalMatch(text); at.hasNext();) marks.insert(at.next().captured());
  return marks;
}

TEST(Language, german_keeps_what_is_put_into_its_sentences) {
  for (const Text& text : texts_of("ullage_de.ts")) {
    if (!text.finished || text.source.contains(QLatin1String("%n"))) continue;
    EXPECT_EQ(marks_in(text.translation), marks_in(text.source)) << text.source.toStdString();
    EXPECT_EQ(text.translation.count(QLatin1Char('&')), text.source.count(QLatin1Char('&')))
        << text.source.toStdString();
  }
}

TEST(Language, german_of_the_main_screens_is_whole) {
  int seen = 0;
  for (const Text& text : texts_of("ullage_de.ts")) {
    for (const char* screen : {"MainWindow", "Rail", "KegsPage", "KegsBar", "KegTableModel",
                               "LogPage", "FirstStart", "NewCellar", "SettingsDialog"}) {
      if (text.context != QLatin1String("ullage::ui::") + QLatin1String(screen)) continue;
      ++seen;
      EXPECT_TRUE(text.finished) << screen << ": " << text.source.toStdString();
    }
  }
  EXPECT_GT(seen, 100);
}

// In the program, by its own resources.
TEST(Language, is_german_when_asked_for_and_counts_in_english_otherwise) {
  QTranslator english;
  ASSERT_TRUE(english.load(QStringLiteral(":/translations/ullage_en.qm")));
  EXPECT_EQ(english.translate("ullage::ui::KegsPage", "%n kegs", nullptr, 1), "%n keg");
  EXPECT_EQ(english.translate("ullage::ui::KegsPage", "%n kegs", nullptr, 3), "%n kegs");
  QTranslator german;
  ASSERT_TRUE(german.load(QStringLiteral(":/translations/ullage_de.qm")));
  EXPECT_EQ(german.translate("ullage::ui::KegsPage", "No kegs yet"), QString("Noch keine Fässer"));
}

}  // namespace
}  // namespace ullage
