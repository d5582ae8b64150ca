// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/line_row.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

LineRow::LineRow(const Context& context, const cellar::LineStatus& line,
                 const cellar::CellarStatus& status, QWidget* parent)
    : QFrame(parent), context_(context) {
  setObjectName(QStringLiteral("line_row_") + q(line.record.name));
  setAccessibleName(q(line.record.name));
  setFrameShape(QFrame::NoFrame);
  grid_ = new QGridLayout(this);
  grid_->setContentsMargins(0, space::m, 0, space::m);
  grid_->setHorizontalSpacing(space::xl);
  grid_->setVerticalSpacing(space::s);
  grid_->setColumnMinimumWidth(0, 84);
  grid_->setColumnStretch(1, 3);
  grid_->setColumnStretch(2, 3);
  if (line.lock) add_lock(line);
  add_facts(line, status);
  add_advice(line);
  add_actions(line);
}

void LineRow::add_lock(const cellar::LineStatus& line) {
  auto* banner = new Banner(
      cellar::Severity::danger, tr("DO NOT SERVE"),
      tr("%1 in the line since %2, %3. Only a passed check releases it.")
          .arg(q(line.lock->agent), q(report::say_time(line.lock->since, context_.speaker())),
               q(line.lock->by)));
  grid_->addWidget(banner, 0, 0, 1, 3);
}

QString LineRow::hose_words(const cellar::LineRecord& record) const {
  const units::Printer printer = context_.printer();
  QStringList parts;
  if (record.length) parts << q(printer.print(*record.length));
  if (record.bore) parts << tr("%1 bore").arg(q(printer.print_bore(*record.bore)));
  if (record.rise) parts << tr("rises %1").arg(q(printer.print(*record.rise)));
  return parts.isEmpty() ? tr("length and bore not known") : parts.join(QStringLiteral(" · "));
}

QString LineRow::cleaning_words(const cellar::LineStatus& line) const {
  const report::Speaker speaker = context_.speaker();
  const QString last = line.last_cleaned
                           ? tr("Cleaned %1").arg(q(report::say_age(*line.last_cleaned, speaker)))
                           : tr("No cleaning logged");
  if (!line.clean_due) return last + tr("; no rule set");
  const QString due = q(report::say_date(*line.clean_due, speaker));
  QString words = last + (line.overdue ? tr("; was due %1").arg(due) : tr("; due %1").arg(due));
  if (!line.record.clean_source.empty()) words += tr(" (%1)").arg(q(line.record.clean_source));
  return words;
}

void LineRow::add_facts(const cellar::LineStatus& line, const cellar::CellarStatus& status) {
  const bool us = context_.preferences.words() == report::RegionalWords::us;
  auto* tap = new InkLabel(
      us ? tr("Faucet %1").arg(q(line.record.tap)) : tr("Tap %1").arg(q(line.record.tap)),
      TextRole::heading);
  auto* name = new InkLabel(q(line.record.name), TextRole::small, Ink::secondary);
  const cellar::KegStatus* keg = line.keg ? status.find(*line.keg) : nullptr;
  QString serves = tr("Nothing on it");
  if (keg) {
    serves = keg->contents ? tr("%1 from %2").arg(q(keg->contents->beer.name), q(keg->record.tag))
                           : q(keg->record.tag);
  }
  auto* beer = new InkLabel(serves, TextRole::strong);
  auto* hose = new InkLabel(hose_words(line.record), TextRole::small, Ink::secondary);
  hose->setWordWrap(true);
  auto* state = new InkLabel(q(report::say(line.state, context_.speaker())), TextRole::strong,
                             line.lock      ? Ink::danger
                             : line.overdue ? Ink::warning
                                            : Ink::text);
  state->setWordWrap(true);
  auto* cleaning = new InkLabel(cleaning_words(line), TextRole::small, Ink::secondary);
  cleaning->setWordWrap(true);
  grid_->addWidget(tap, 1, 0);
  grid_->addWidget(name, 2, 0, Qt::AlignTop);
  grid_->addWidget(beer, 1, 1);
  grid_->addWidget(hose, 2, 1, Qt::AlignTop);
  grid_->addWidget(state, 1, 2);
  grid_->addWidget(cleaning, 2, 2, Qt::AlignTop);
}

void LineRow::add_advice(const cellar::LineStatus& line) {
  const report::Speaker speaker = context_.speaker();
  int row = 3;
  for (const cellar::Advice& advice : line.advice) {
    if (line.lock && advice.severity == cellar::Severity::danger) continue;  // said above
    auto* banner = new Banner(advice.severity, q(report::say(advice.headline, speaker)),
                              advice.detail ? q(report::say(*advice.detail, speaker)) : QString());
    grid_->addWidget(banner, row++, 0, 1, 3);
  }
}

void LineRow::add_actions(const cellar::LineStatus& line) {
  auto* row = new QHBoxLayout;
  row->setSpacing(space::s);
  const auto action = [&](const QString& text, const char* kind) {
    auto* button = new QPushButton(text);
    button->setObjectName(QString::fromLatin1(kind));
    button->setAccessibleName(tr("%1, %2").arg(text, q(line.record.name)));
    button->setEnabled(!context_.cellar.read_only());
    connect(button, &QPushButton::clicked, this,
            [this, kind] { emit task_asked(QString::fromLatin1(kind)); });
    row->addWidget(button);
  };
  if (line.lock) {
    action(tr("Release by a check…"), "line_released");
    action(tr("Log the cleaning…"), "line_cleaned");
  } else {
    action(tr("Lock to clean…"), "line_locked");
    action(tr("Keg change…"), "keg_change");
    action(tr("Timed pour…"), "timed_pour");
  }
  action(tr("Change the line…"), "line_record");
  row->addStretch(1);
  grid_->addLayout(row, 10, 1, 1, 2);
}

}  // namespace ullage::ui
