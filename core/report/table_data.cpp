// SPDX-License-Identifier: GPL-3.0-or-later
//
// Sheets, tags and dates for other programs: CSV after RFC 4180, and JSON.
#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "core/report/calendar_feed.h"
#include "core/report/cellar_lists.h"
#include "core/report/log_rows.h"
#include "core/report/table_sheet.h"
#include "core/report/tags.h"

namespace ullage::report {

namespace {

namespace variant2 = boost::variant2;

std::string plain(const Datum& datum) {
  if (const auto* text = variant2::get_if<std::string>(&datum)) return csv_field(*text);
  if (const auto* number = variant2::get_if<double>(&datum)) return fmt::format("{}", *number);
  if (const auto* yes = variant2::get_if<bool>(&datum)) return *yes ? "yes" : "no";
  return {};
}

nlohmann::ordered_json json_value(const Datum& datum) {
  if (const auto* text = variant2::get_if<std::string>(&datum)) return *text;
  if (const auto* number = variant2::get_if<double>(&datum)) return *number;
  if (const auto* yes = variant2::get_if<bool>(&datum)) return *yes;
  return nullptr;
}

nlohmann::ordered_json json_rows(const TableSheet& sheet) {
  nlohmann::ordered_json rows = nlohmann::ordered_json::array();
  for (const TableRow& row : sheet.rows) {
    if (row.kind != RowKind::entry) continue;
    nlohmann::ordered_json object;
    for (std::size_t i = 0; i < sheet.keys.size() && i < row.data.size(); ++i) {
      object[sheet.keys[i]] = json_value(row.data[i]);
    }
    object["struck"] = row.struck;
    object["standing"] = row.standing;
    rows.push_back(std::move(object));
  }
  return rows;
}

template <class Fact>
nlohmann::ordered_json json_facts(const std::vector<Fact>& facts) {
  nlohmann::ordered_json all = nlohmann::ordered_json::array();
  for (const Fact& fact : facts) {
    if (!fact.label.empty()) all.push_back({{"label", fact.label}, {"value", fact.value}});
  }
  return all;
}

std::string written(const nlohmann::ordered_json& all) {
  return all.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace

std::string csv_field(const std::string& text) {
  std::string safe = text;
  if (!safe.empty() && std::string_view("=+-@\t\r").find(safe.front()) != std::string_view::npos) {
    safe.insert(safe.begin(), '\'');
  }
  if (safe.find_first_of(",\"\r\n") == std::string::npos) return safe;
  std::string quoted = "\"";
  for (const char c : safe) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + "\"";
}

std::string csv_of(const TableSheet& sheet) {
  std::string out;
  for (const std::string& key : sheet.keys) out += csv_field(key) + ",";
  out += "struck,standing\r\n";
  for (const TableRow& row : sheet.rows) {
    if (row.kind != RowKind::entry) continue;
    for (std::size_t i = 0; i < sheet.keys.size(); ++i) {
      if (i < row.data.size()) out += plain(row.data[i]);
      out += ",";
    }
    out += std::string(row.struck ? "yes" : "no") + "," + csv_field(row.standing) + "\r\n";
  }
  return out;
}

std::string json_of(const TableSheet& sheet) {
  nlohmann::ordered_json all;
  all["title"] = sheet.title;
  all["cellar"] = sheet.cellar;
  all["period"] = sheet.period;
  all["rows"] = json_rows(sheet);
  return written(all);
}

std::string json_of(const StatusSheet& sheet, const TableSheet& kegs) {
  nlohmann::ordered_json all;
  all["cellar"] = sheet.cellar;
  all["printed"] = sheet.printed;
  all["kegs"] = json_rows(kegs);
  nlohmann::ordered_json boxes = nlohmann::ordered_json::object();
  for (const SheetBox& box : sheet.boxes) boxes[box.title] = box.lines;
  all["boxes"] = std::move(boxes);
  all["to_read"] = sheet.readings;
  return written(all);
}

std::string json_of(const std::vector<KegTag>& tags) {
  nlohmann::ordered_json all = nlohmann::ordered_json::array();
  for (const KegTag& tag : tags) {
    nlohmann::ordered_json one;
    one["keg"] = tag.tag;
    one["code"] = tag.code;
    one["beer"] = tag.beer;
    one["kind"] = tag.kind;
    one["allergens"] = tag.allergens;
    one["use_by"] = tag.use_by;
    one["front"] = json_facts(tag.facts);
    one["back"] = json_facts(tag.back);
    all.push_back(std::move(one));
  }
  return written(all);
}

std::string json_of(const std::vector<WarningTag>& tags) {
  nlohmann::ordered_json all = nlohmann::ordered_json::array();
  for (const WarningTag& tag : tags) {
    nlohmann::ordered_json one;
    one["warning"] = tag.title;
    one["what"] = tag.subtitle;
    one["about"] = tag.subject;
    one["facts"] = json_facts(tag.facts);
    one["caution"] = tag.caution;
    all.push_back(std::move(one));
  }
  return written(all);
}

std::string json_of(const std::vector<CalendarItem>& items, const std::string& cellar) {
  nlohmann::ordered_json dates = nlohmann::ordered_json::array();
  for (const CalendarItem& item : items) {
    nlohmann::ordered_json one;
    one["day"] = iso_day(item.day);
    one["due"] = item.due ? nlohmann::ordered_json(iso_day(*item.due)) : nullptr;
    one["what"] = item.summary;
    one["why"] = item.description;
    one["uid"] = item.uid;
    dates.push_back(std::move(one));
  }
  nlohmann::ordered_json all;
  all["cellar"] = cellar;
  all["items"] = std::move(dates);
  return written(all);
}

}  // namespace ullage::report
