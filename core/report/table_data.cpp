// SPDX-License-Identifier: GPL-3.0-or-later
//
// A sheet for other programs: CSV after RFC 4180, and JSON.
#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "core/report/table_sheet.h"

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
  nlohmann::ordered_json all;
  all["title"] = sheet.title;
  all["cellar"] = sheet.cellar;
  all["period"] = sheet.period;
  all["rows"] = std::move(rows);
  return all.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace ullage::report
