// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/gas_chart.h"

#include <qcustomplot.h>

#include <algorithm>

#include "ui/context.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

GasChart::GasChart(QWidget* parent) : PlotWidget(parent) {
  setObjectName("gas_chart");
  lie_on(&Theme::raised);
  set_name(tr("Gas weighed and expected over time"));
}

bool GasChart::has_curve() const { return account_ && account_->weighings.size() > 1; }

void GasChart::show_account(std::shared_ptr<const cellar::GasAccount> account,
                            const report::Speaker& speaker) {
  account_ = std::move(account);
  speaker_ = speaker;
  set_in_words(in_words());
  redraw();
}

// Kilograms or pounds whatever the size: an axis keeps one unit.
double GasChart::y_of(units::Mass m) const {
  return speaker_.printer.units.mass == units::MassUnit::pound ? units::in_pounds(m)
                                                               : units::in_kilograms(m);
}

void GasChart::draw_plot() {
  draw_axes();
  draw_expected();
  draw_weighings();
}

void GasChart::draw_axes() {
  QCPAxis* x = plot_->xAxis;
  QCPAxis* y = plot_->yAxis;
  double low = y_of(account_->weighings.front().gas.low());
  double high = y_of(account_->weighings.front().gas.high());
  const auto take_in = [&](double v) {
    low = std::min(low, v);
    high = std::max(high, v);
  };
  for (const cellar::AccountWeighing& w : account_->weighings) {
    take_in(y_of(w.gas.low()));
    take_in(y_of(w.gas.high()));
  }
  for (const cellar::ExpectedLeft& e : account_->expected) {
    take_in(y_of(e.low));
    take_in(y_of(e.high));
  }
  const double room = std::max(0.02, (high - low) * 0.08);
  y->setRange(low - room, high + room);
  const cellar::Instant from = account_->expected.front().at;
  const cellar::Instant to = std::max(account_->expected.back().at, account_->weighings.back().at);
  const double margin = (along(to) - along(from)) * 0.02;
  x->setRange(along(from) - margin, along(to) + margin);
  mark_days(from, to, 80, speaker_);
}

void GasChart::draw_expected() {
  const Theme& theme = theme_of(this);
  const Band band = add_band(theme.accent, 0.22F);
  QCPGraph* likely = plot_->addGraph();
  QPen dashes(theme.accent_ink, 2);
  dashes.setDashPattern({4, 2});
  likely->setPen(dashes);
  for (const cellar::ExpectedLeft& e : account_->expected) {
    const double x = along(e.at);
    band.add(x, y_of(e.low), y_of(e.high));
    likely->addData(x, y_of(e.likely));
  }
}

void GasChart::draw_weighings() {
  const ReadPoints points = add_read_points();
  points.rings->setLineStyle(QCPGraph::lsLine);
  points.rings->setPen(QPen(theme_of(this).text, 1.8));
  for (const cellar::AccountWeighing& w : account_->weighings) {
    const double value = y_of(w.gas.value());
    points.add(along(w.at), value, y_of(w.gas.high()) - value);
  }
}

QString GasChart::in_words() const {
  if (!has_curve()) return tr("No curve: weigh the bottle twice.");
  QStringList words;
  for (const cellar::AccountWeighing& w : account_->weighings) {
    words << tr("Weighed %1: %2.")
                 .arg(q(report::say_time(w.at, speaker_)), q(speaker_.printer.print(w.gas)));
  }
  const cellar::ExpectedLeft& last = account_->expected.back();
  words << tr("By the work of the kegs %1 should be left %2.")
               .arg(q(speaker_.printer.print(last.likely)), q(report::say_time(last.at, speaker_)));
  return words.join(QLatin1Char(' '));
}

}  // namespace ullage::ui
