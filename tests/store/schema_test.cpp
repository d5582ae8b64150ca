// SPDX-License-Identifier: GPL-3.0-or-later
//
// Payloads and tables say the same, both ways.
#include "core/store/schema.h"

#include <gmock/gmock.h>

#include <map>
#include <set>

#include "core/cellar/field_walk.h"
#include "core/store/field_binding.h"
#include "core/store/kind_table.h"
#include "tests/store/store_fixture.h"

namespace ullage::testing {
namespace {

using store::Connection;
using store::ConnectionMode;

struct Column {
  std::string name;
  std::string type;
  bool required = false;
  friend bool operator==(const Column&, const Column&) = default;
  friend void PrintTo(const Column& c, std::ostream* out) {
    *out << c.name << ' ' << c.type << (c.required ? " NOT NULL" : "");
  }
};

class SchemaTest : public ::testing::Test {
 protected:
  SchemaTest() : db_(std::move(*Connection::open("schema", ConnectionMode::in_memory))) {
    const auto made = store::create_schema(db_, store::schema_version);
    EXPECT_TRUE(made) << why(made);
  }
  [[nodiscard]] std::vector<Column> columns_of(std::string_view table) const {
    auto rows =
        db_.prepare("SELECT name, type, \"notnull\" FROM pragma_table_info(?1) ORDER BY cid");
    rows->bind(1, table);
    std::vector<Column> columns;
    while (rows->step() == SQLITE_ROW) {
      columns.push_back(
          {std::string(rows->text(0)), std::string(rows->text(1)), rows->integer(2) != 0});
    }
    return columns;
  }
  Connection db_;
};

template <class T>
Column described(std::string_view name) {
  static const std::map<store::ColumnType, std::string> words = {
      {store::ColumnType::integer, "INTEGER"},
      {store::ColumnType::real, "REAL"},
      {store::ColumnType::text, "TEXT"},
      {store::ColumnType::blob, "BLOB"}};
  return {std::string(name), words.at(store::column_type<T>()), !cellar::IsOptional<T>::value};
}

TEST_F(SchemaTest, EveryPayloadHasItsTable) {
  for (const cellar::Payload& payload : cellar::blank_payloads()) {
    const std::string_view kind = cellar::kind_of(payload);
    std::vector<Column> wanted = {{"sequence", "INTEGER", false}};
    cellar::for_each_field(payload, [&]<class T>(std::string_view name, const T&) {
      wanted.push_back(described<T>(name));
    });
    EXPECT_EQ(columns_of(kind), wanted) << kind;
  }
}

TEST_F(SchemaTest, EveryTableHasItsPayload) {
  std::vector<std::string> wanted = {"entry", "kind", "subject", "cellar_file"};
  for (const auto& ops : store::kind_table()) wanted.emplace_back(ops.kind);
  std::vector<std::string> tables;
  auto rows = db_.prepare(
      "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'");
  while (rows->step() == SQLITE_ROW) tables.emplace_back(rows->text(0));
  EXPECT_THAT(tables, ::testing::UnorderedElementsAreArray(wanted));
}

TEST_F(SchemaTest, EveryTableIsStrict) {
  auto rows = db_.prepare(
      "SELECT name FROM pragma_table_list WHERE NOT strict AND schema = 'main' AND name NOT LIKE "
      "'sqlite%'");
  EXPECT_EQ(rows->step(), SQLITE_DONE) << rows->text(0);
}

TEST_F(SchemaTest, EveryKindIsNumbered) {
  std::vector<std::string> words;
  auto rows = db_.prepare("SELECT word FROM kind ORDER BY code");
  while (rows->step() == SQLITE_ROW) words.emplace_back(rows->text(0));
  std::vector<std::string> wanted;
  for (const auto& ops : store::kind_table()) wanted.emplace_back(ops.kind);
  EXPECT_EQ(words, wanted);
}

// The words of each enum, as the table's rule has them: a word one side lacks
// would be refused by the file or unreadable to us.
TEST_F(SchemaTest, EveryEnumsWordsAreThoseOfItsRule) {
  for (const cellar::Payload& payload : cellar::blank_payloads()) {
    const std::string_view kind = cellar::kind_of(payload);
    auto row = db_.prepare("SELECT sql FROM sqlite_schema WHERE name = ?1");
    row->bind(1, kind);
    ASSERT_EQ(row->step(), SQLITE_ROW);
    std::string sql(row->text(0));
    std::erase_if(sql, [](char c) { return c == ' ' || c == '\n'; });
    cellar::for_each_field(payload, [&]<class T>(std::string_view name, const T&) {
      if constexpr (cellar::WordedEnum<T>) {
        std::string rule = "CHECK(" + std::string(name) + "IN(";
        for (const auto word : cellar::EnumText<T>::words) {
          rule += (rule.back() == '(' ? "'" : ",'") + std::string(word) + "'";
        }
        EXPECT_THAT(sql, ::testing::HasSubstr(rule + "))")) << kind;
      }
    });
  }
}

// What stands in a file made now and in one brought here step by step, without spaces.
std::map<std::string, std::string> texts_of(const Connection& db) {
  std::map<std::string, std::string> texts;
  auto rows = db.prepare("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL");
  while (rows->step() == SQLITE_ROW) {
    std::string& text = texts[std::string(rows->text(0))];
    text = rows->text(1);
    std::erase_if(text, [](char c) { return c == ' ' || c == '\n'; });
  }
  return texts;
}

TEST_F(SchemaTest, ANewFileHasTheTablesThatTheStepsLeadTo) {
  const Connection stepped = std::move(*Connection::open("steps", ConnectionMode::in_memory));
  ASSERT_TRUE(store::create_schema(stepped, 1));
  for (const store::MigrationStep& step : store::released_steps()) {
    const auto taken = stepped.run(step.sql);
    ASSERT_TRUE(taken) << why(taken);
  }
  const auto by_steps = texts_of(stepped);
  EXPECT_GT(by_steps.size(), store::kind_table().size());
  EXPECT_EQ(texts_of(db_), by_steps);
}

TEST_F(SchemaTest, NoFieldIsCalledLikeTheHeadersKeys) {
  const std::set<std::string_view> header = {
      "sequence",       "id", "act",      "kind", "happened_at", "recorded_at",
      "utc_offset_min", "by", "replaces", "note"};
  for (const cellar::Payload& payload : cellar::blank_payloads()) {
    const std::string_view kind = cellar::kind_of(payload);
    cellar::for_each_field(payload, [&](std::string_view name, const auto&) {
      EXPECT_FALSE(header.contains(name)) << kind << '.' << name;
    });
  }
}

}  // namespace
}  // namespace ullage::testing
