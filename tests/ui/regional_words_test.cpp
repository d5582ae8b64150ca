// SPDX-License-Identifier: GPL-3.0-or-later
//
// The forms in the words of either region.
#include <gtest/gtest.h>

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include "ui/dialogs/forms/enum_words.h"
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {
namespace {

using report::RegionalWords;

void expect_words_of_the_us(const QString& text) {
  EXPECT_FALSE(text.contains(QStringLiteral("sanitis"), Qt::CaseInsensitive)) << qPrintable(text);
  // Beer is on tap everywhere, and tap water runs from no beer faucet.
  QString rest = text;
  rest.remove(QRegularExpression(QStringLiteral("\\b([Oo]n|[Oo]ff) tap\\b|\\btap water\\b")));
  rest.remove(QLatin1Char('&'));
  EXPECT_FALSE(rest.contains(QRegularExpression(QStringLiteral("\\b[Tt]aps?\\b"))))
      << qPrintable(text);
}

TEST(RegionalWordsOfForms, AreThoseOfOneRegionAtATime) {
  std::size_t told = 0;
  for (const FormSpec* spec : all_form_specs()) {
    std::vector<const char*> texts{spec->title, spec->caution};
    for (const FieldSpec& field : spec->fields) {
      texts.push_back(field.label);
      texts.push_back(field.hint);
    }
    for (const char* text : texts) {
      const QString british = regional(text, RegionalWords::british);
      EXPECT_FALSE(british.contains(QStringLiteral("faucet"), Qt::CaseInsensitive)) << text;
      const QString us = regional(text, RegionalWords::us);
      expect_words_of_the_us(us);
      told += us != british ? 1U : 0U;
    }
  }
  EXPECT_GE(told, 6U);
}

TEST(RegionalWordsOfForms, ChoicesFollowToo) {
  const report::Speaker us{{}, nullptr, RegionalWords::us, {}};
  const report::Speaker british{{}, nullptr, RegionalWords::british, {}};
  EXPECT_EQ(words_of_choice("empty_sanitised", us), "Empty, sanitized");
  EXPECT_EQ(words_of_choice("empty_sanitised", british), "Empty, sanitised");
  EXPECT_EQ(words_of_choice("acid_sanitiser", us), "Acid sanitizer");
  EXPECT_EQ(words_of_choice("strip_down", us), "Faucet apart");
  EXPECT_EQ(words_of_choice("strip_down", british), "Tap apart");
}

// What has been translated is no English any more: nothing in it is changed.
TEST(RegionalWordsOfForms, LeaveGermanAsItIs) {
  QFile file(QStringLiteral(ULLAGE_TESTS_DIR "/../resources/translations/ullage_de.ts"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  int texts = 0;
  QString english;
  while (!xml.atEnd()) {
    xml.readNext();
    if (!xml.isStartElement()) continue;
    if (xml.name() == QLatin1String("source")) english = xml.readElementText();
    if (xml.name() != QLatin1String("translation")) continue;
    const QString german = xml.readElementText(QXmlStreamReader::IncludeChildElements);
    if (german == english) continue;  // the names of the English words themselves
    EXPECT_EQ(regional(german, RegionalWords::us), german);
    ++texts;
  }
  EXPECT_FALSE(xml.hasError()) << qPrintable(xml.errorString());
  EXPECT_GT(texts, 1000);
}

}  // namespace
}  // namespace ullage::ui
