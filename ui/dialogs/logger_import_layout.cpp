// SPDX-License-Identifier: GPL-3.0-or-later
//
// How the file is written: the fields that show what was found out, and take what a
// person says instead.
#include <QComboBox>
#include <algorithm>
#include <array>

#include "ui/dialogs/logger_import.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

using cellar::DateOrder;
using cellar::DegreesOf;

QComboBox* layout_choice(const char* name, const QStringList& words) {
  auto* combo = new QComboBox;
  combo->setObjectName(QString::fromLatin1(name));
  combo->addItems(words);
  return combo;
}

constexpr std::array<char, 4> delimiters{',', ';', '\t', '|'};

}  // namespace

QWidget* LoggerImport::build_layout() {
  delimiter_ = layout_choice("delimiter", {tr("Comma"), tr("Semicolon"), tr("Tab"), tr("Bar")});
  decimal_ = layout_choice("decimal", {tr("Point: 4.5"), tr("Comma: 4,5")});
  time_ = layout_choice("time_column", {});
  clock_ = layout_choice("clock_column", {});
  temperature_ = layout_choice("temperature_column", {});
  degrees_ = layout_choice("degrees", {tr("°C"), tr("°F")});
  order_ = layout_choice("date_order",
                         {tr("Year, month, day"), tr("Day, month, year"), tr("Month, day, year")});
  certainty_ = new InkLabel({}, TextRole::small, Ink::secondary);
  certainty_->setObjectName(QStringLiteral("certainty"));
  certainty_->setWordWrap(true);
  auto* section = new FormSection(tr("How the file is written"));
  section->add(tr("&Columns divided by"), delimiter_);
  section->add(tr("&Decimal mark"), decimal_);
  section->add(tr("Ti&me in"), time_);
  section->add(tr("&Hour in"), clock_);
  section->add(tr("T&emperature in"), temperature_);
  section->add(tr("&Unit"), degrees_);
  section->add(tr("D&ates are"), order_);
  section->add_wide(certainty_);
  found_ = section;
  for (QComboBox* combo : {delimiter_, decimal_, time_, clock_, temperature_, degrees_, order_}) {
    combo->setPlaceholderText(tr("not found"));
    connect(combo, &QComboBox::activated, this, &LoggerImport::read_again);
  }
  return section;
}

// What stands in the fields, once there is a file they were filled from.
cellar::LoggerChoices LoggerImport::choices() const {
  cellar::LoggerChoices c;
  const bool us = context_.printer().units.temperature == units::TemperatureUnit::fahrenheit;
  c.order_if_uncertain = us ? DateOrder::month_day_year : DateOrder::day_month_year;
  if (filling_ || !fields_filled_) return c;
  const auto chosen = [](const QComboBox& combo) {
    const int index = combo.currentIndex();
    return index >= 0 ? std::optional(static_cast<std::size_t>(index)) : std::nullopt;
  };
  if (const auto i = chosen(*delimiter_)) c.delimiter = delimiters.at(*i);
  if (const auto i = chosen(*decimal_)) c.decimal_comma = *i == 1;
  if (const auto i = chosen(*degrees_))
    c.degrees = *i == 1 ? DegreesOf::fahrenheit : DegreesOf::celsius;
  if (const auto i = chosen(*order_)) c.order = static_cast<DateOrder>(*i);
  // Other columns: those of the old delimiter mean nothing any more.
  const char before = file_ ? file_->layout.delimiter : columns_ ? columns_->delimiter : '\0';
  if (c.delimiter && *c.delimiter != before) return c;
  c.time_column = chosen(*time_);
  c.temperature_column = chosen(*temperature_);
  if (const auto i = chosen(*clock_)) {
    c.clock.emplace();
    if (*i > 0) c.clock->column = *i - 1;
  }
  return c;
}

// Nothing was found out, so the fields stand empty for the person to fill; not for
// what is no table at all.
void LoggerImport::offer_columns(cellar::LoggerFault fault) {
  using cellar::LoggerFault;
  const bool a_table = fault == LoggerFault::no_columns || fault == LoggerFault::no_time_column ||
                       fault == LoggerFault::no_temperature_column ||
                       fault == LoggerFault::no_such_column;
  const std::optional<char> told = filling_ ? std::nullopt : choices().delimiter;
  const bool as_before = columns_ && !filling_ && told == columns_->delimiter;
  fields_filled_ = a_table;
  if (as_before && a_table) return;  // what the person chose so far stays
  columns_ = a_table ? cellar::logger_columns(bytes_, told) : std::nullopt;
  show_layout();
}

void LoggerImport::list_columns(char delimiter, const std::vector<std::string>& names) {
  const auto* at = std::find(delimiters.begin(), delimiters.end(), delimiter);
  delimiter_->setCurrentIndex(static_cast<int>(at - delimiters.begin()));
  for (QComboBox* combo : {time_, clock_, temperature_}) {
    combo->clear();
    if (combo == clock_) combo->addItem(tr("with the date"));
    for (const std::string& name : names) combo->addItem(q(name));
    combo->setCurrentIndex(-1);
  }
}

void LoggerImport::show_layout() {
  found_->setVisible(file_ || columns_);
  if (columns_) {
    list_columns(columns_->delimiter, columns_->names);
    for (QComboBox* combo : {decimal_, degrees_, order_}) combo->setCurrentIndex(-1);
    certainty_->hide();
  }
  if (!file_) return;
  const cellar::LoggerLayout& layout = file_->layout;
  list_columns(layout.delimiter, file_->columns);
  decimal_->setCurrentIndex(layout.decimal_comma ? 1 : 0);
  time_->setCurrentIndex(static_cast<int>(layout.time_column));
  clock_->setCurrentIndex(layout.clock_column ? static_cast<int>(*layout.clock_column) + 1 : 0);
  temperature_->setCurrentIndex(static_cast<int>(layout.temperature_column));
  degrees_->setCurrentIndex(layout.degrees == DegreesOf::fahrenheit ? 1 : 0);
  order_->setCurrentIndex(static_cast<int>(layout.order));
  QStringList doubts;
  if (!layout.degrees_stated)
    doubts << tr("The file does not state its unit: it is guessed from the values.");
  if (!layout.order_certain)
    doubts << tr("Day and month can’t be told apart in this file: check the dates below.");
  certainty_->setText(doubts.join(QLatin1Char(' ')));
  certainty_->set_ink(doubts.isEmpty() ? Ink::secondary : Ink::warning);
  certainty_->setVisible(!doubts.isEmpty());
}

}  // namespace ullage::ui
