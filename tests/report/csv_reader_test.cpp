// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/csv_reader.h"

#include <gmock/gmock.h>

namespace ullage::report {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using Kind = CsvFaultKind;

CsvFault fault_of(std::string_view bytes) {
  const auto file = read_csv(bytes);
  EXPECT_FALSE(file);
  return file ? CsvFault{} : file.error();
}

TEST(CsvReader, ReadsWhatTheStandardWrites) {
  // The examples of RFC 4180, section 2, put into one file.
  const auto file = read_csv("a,b,c\r\n\"b \"\"CRLF\r\nbb\",zzz,\" y\"\r\nlast,,\r\n");
  ASSERT_TRUE(file) << say(file.error());
  EXPECT_THAT(file->header.fields, ElementsAre("a", "b", "c"));
  ASSERT_EQ(file->lines.size(), 2U);
  EXPECT_THAT(file->lines[0].fields, ElementsAre("b \"CRLF\nbb", "zzz", "y"));
  EXPECT_THAT(file->lines[1].fields, ElementsAre("last", "", ""));
  EXPECT_EQ(file->lines[0].number, 2U);
  EXPECT_EQ(file->lines[1].number, 4U);  // the quoted field took two lines
}

TEST(CsvReader, ReadsWhatProgramsWriteInItsPlace) {
  for (const char* text :
       {"tag;size\nK1;19\n", "tag\tsize\rK1\t19\r", "\xEF\xBB\xBFtag,size\nK1,19",
        "tag,size\n\n , \nK1,19\n\n", "\"tag\" ,size\n\"K1\" , 19 \n"}) {
    const auto file = read_csv(text);
    ASSERT_TRUE(file) << text;
    EXPECT_THAT(file->header.fields, ElementsAre("tag", "size")) << text;
    ASSERT_EQ(file->lines.size(), 1U) << text;
    EXPECT_THAT(file->lines[0].fields, ElementsAre("K1", "19")) << text;
  }
}

TEST(CsvReader, RefusesWithTheLine) {
  EXPECT_EQ(fault_of("").kind, Kind::empty);
  EXPECT_EQ(fault_of("tag,size\n").kind, Kind::empty);
  const CsvFault cut = fault_of("tag,size\nK1,19\nK2,\"19");
  EXPECT_EQ(cut.kind, Kind::quote_not_closed);
  EXPECT_EQ(cut.line, 3U);
  const CsvFault uneven = fault_of("tag,size\nK1,19\nK2\n");
  EXPECT_EQ(uneven.kind, Kind::uneven);
  EXPECT_EQ(uneven.line, 3U);
  EXPECT_THAT(say(uneven), HasSubstr("Line 3 has 1 fields, the headings have 2"));
  EXPECT_EQ(fault_of("tag,size\n\"K\"1,19\n").kind, Kind::text_after_quote);
  EXPECT_EQ(fault_of(std::string_view("tag,size\nK\0,19\n", 15)).kind, Kind::control_character);
}

TEST(CsvReader, RefusesWhatIsNotUtf8) {
  // Latin-1, an overlong slash, half a surrogate pair, beyond U+10FFFF, a lone
  // continuation byte, a character cut off at the end.
  for (const char* bad :
       {"K\xE4se", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\x80", "x\xE2\x82"}) {
    const CsvFault fault = fault_of(std::string("tag\nK1\n") + bad);
    EXPECT_EQ(fault.kind, Kind::not_utf8) << bad;
    EXPECT_EQ(fault.line, 3U);
  }
  EXPECT_TRUE(read_csv("tag\nK\xC3\xA4se\n"));
}

TEST(CsvReader, RefusesWhatIsTooLarge) {
  EXPECT_EQ(fault_of(std::string(csv_most_bytes + 1, 'a')).kind, Kind::too_large);
  std::string lines = "tag\n";
  for (std::size_t i = 0; i <= csv_most_lines; ++i) lines += "K\n";
  EXPECT_EQ(fault_of(lines).kind, Kind::too_many_lines);
  EXPECT_EQ(fault_of("tag\n" + std::string(csv_longest_field + 1, 'a')).kind, Kind::field_too_long);
  EXPECT_EQ(fault_of(std::string(csv_most_columns + 1, ',') + "\n").kind, Kind::too_many_columns);
  EXPECT_EQ(fault_of("tag\n\"" + std::string(csv_most_bytes - 10, '\n')).kind,
            Kind::quote_not_closed);
}

}  // namespace
}  // namespace ullage::report
