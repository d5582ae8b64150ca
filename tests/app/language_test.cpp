// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/language.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>
#include <set>
#include <utility>
#include <vector>

#include "ui/commands/commands.h"
#include "ui/dialogs/forms/form_spec.h"

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

TEST(Language, german_is_whole) {
  const std::vector<Text> all = texts_of("ullage_de.ts");
  for (const Text& text : all) {
    EXPECT_TRUE(text.finished && !text.translation.isEmpty())
        << text.context.toStdString() << ": " << text.source.toStdString();
  }
  EXPECT_GT(all.size(), 1500U);
}

TEST(Language, english_knows_one_from_many_in_every_sentence_that_counts) {
  std::set<QString> counted;
  for (const Text& text : texts_of("ullage_en.ts")) {
    EXPECT_TRUE(text.finished) << text.source.toStdString();
    counted.insert(text.context + text.source);
  }
  for (const Text& text : texts_of("ullage_de.ts")) {
    if (text.source.contains(QLatin1String("%n"))) {
      EXPECT_TRUE(counted.contains(text.context + text.source)) << text.source.toStdString();
    }
  }
}

// The literal that stands at `at` in a source, its pieces put together.
QString spoken_literal_at(const QString& source, qsizetype at) {
  static const QRegularExpression piece(QStringLiteral("\\G\\s*\"((?:[^\"\\\\]|\\\\.)*)\""));
  QString text;
  for (auto found = piece.match(source, at); found.hasMatch(); found = piece.match(source, at)) {
    text += found.captured(1);
    at = found.capturedEnd();
  }
  return text.replace(QLatin1String("\\n"), QLatin1String("\n"))
      .replace(QLatin1String("\\\""), QLatin1String("\""));
}

TEST(Language, no_text_of_the_windows_is_missing_in_german) {
  std::set<QString> known;
  for (const Text& text : texts_of("ullage_de.ts")) known.insert(text.source);
  static const QRegularExpression spoken(
      QStringLiteral("(?:\\btr\\(|QT_TRANSLATE_NOOP\\(\\s*\"\\w+\",)"));
  int seen = 0;
  for (const char* folder : {"/ui", "/app"}) {
    QDirIterator files(QStringLiteral(ULLAGE_SOURCE_DIR) + QLatin1String(folder),
                       {QStringLiteral("*.cpp")}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
      QFile file(files.next());
      ASSERT_TRUE(file.open(QIODevice::ReadOnly));
      const QString source = QString::fromUtf8(file.readAll());
      for (auto at = spoken.globalMatch(source); at.hasNext();) {
        const QString text = spoken_literal_at(source, at.next().capturedEnd());
        if (text.isEmpty()) continue;
        ++seen;
        EXPECT_TRUE(known.contains(text))
            << file.fileName().toStdString() << ": " << text.toStdString();
      }
    }
  }
  EXPECT_GT(seen, 1500);
}

// The tables whose words are looked up while the program runs.
TEST(Language, every_form_and_command_has_its_german_words) {
  QTranslator german;
  ASSERT_TRUE(german.load(QStringLiteral(":/translations/ullage_de.qm")));
  const auto has = [&](const char* context, const char* text) {
    if (!*text) return;
    EXPECT_FALSE(german.translate(context, text).isEmpty()) << context << ": " << text;
  };
  for (const ui::FormSpec* spec : ui::all_form_specs()) {
    for (const char* text : {spec->title, spec->keywords, spec->caution}) has("Forms", text);
    for (const ui::FieldSpec& field : spec->fields) {
      if (field.use == ui::Use::hidden) continue;
      has("Forms", field.label);
      has("Forms", field.hint);
    }
  }
  for (const ui::CommandSpec& spec : ui::commands()) {
    has("Command", spec.text);
    has("Command", spec.does);
  }
}

// Every underlined letter of a German menu once.
TEST(Language, no_two_commands_of_a_german_menu_share_a_letter) {
  QTranslator german;
  ASSERT_TRUE(german.load(QStringLiteral(":/translations/ullage_de.qm")));
  std::set<std::pair<ui::Menu, QChar>> taken;
  for (const ui::CommandSpec& spec : ui::commands()) {
    const QString text = german.translate("Command", spec.text);
    const qsizetype at = text.indexOf(QLatin1Char('&'));
    ASSERT_GE(at, 0) << spec.text;
    EXPECT_TRUE(taken.emplace(spec.menu, text.at(at + 1).toLower()).second) << text.toStdString();
  }
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
