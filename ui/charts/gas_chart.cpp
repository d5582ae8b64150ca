// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/gas_chart.h"

#include <qcustomplot.h>

#include <QEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/charts/axis_decimals.h"
#include "ui/charts/day_ticks.h"
#include "ui/context.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

double gas_chart_seconds(cellar::Instant t) {
  return static_cast<double>(t.time_since_epoch().count());
}

}  // namespace

GasChart::GasChart(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this)) {
  setObjectName("gas_chart");
  setAccessibleName(tr("Gas weighed and expected over time"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(plot_);
  plot_->setAttribute(Qt::WA_TransparentForMouseEvents);
  plot_->setFocusPolicy(Qt::NoFocus);
  plot_->setAccessibleName(accessibleName());
}

GasChart::~GasChart() = default;

bool GasChart::has_curve() const { return account_ && account_->weighings.size() > 1; }

void GasChart::show_account(std::shared_ptr<const cellar::GasAccount> account,
                            const report::Speaker& speaker) {
  account_ = std::move(account);
  speaker_ = speaker;
  setAccessibleDescription(in_words());
  plot_->setAccessibleDescription(accessibleDescription());
  draw();
}

void GasChart::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && has_curve()) draw();
}

void GasChart::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (has_curve()) draw();
}

// Kilograms or pounds whatever the size: an axis keeps one unit.
double GasChart::y_of(units::Mass m) const {
  return speaker_.printer.units.mass == units::MassUnit::pound ? units::in_pounds(m)
                                                               : units::in_kilograms(m);
}

void GasChart::draw() {
  plot_->clearPlottables();
  plot_->clearItems();
  if (!has_curve()) return;
  plot_->setBufferDevicePixelRatio(devicePixelRatioF());
  plot_->setBackground(QBrush(theme_of(this).raised));
  draw_axes();
  draw_expected();
  draw_weighings();
  plot_->replot();
}

void GasChart::draw_axes() {
  const Theme& theme = theme_of(this);
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
  const double margin = (gas_chart_seconds(to) - gas_chart_seconds(from)) * 0.02;
  x->setRange(gas_chart_seconds(from) - margin, gas_chart_seconds(to) + margin);
  QSharedPointer<QCPAxisTickerText> days(new QCPAxisTickerText);
  for (const DayTick& tick : day_ticks(from, to, std::max(2, width() / 80), speaker_))
    days->addTick(gas_chart_seconds(tick.at), tick.label);
  x->setTicker(days);
  y->ticker()->setTickCount(4);
  for (QCPAxis* axis : {x, y}) {
    axis->setTickLabelFont(font_of(TextRole::small));
    axis->setTickLabelColor(theme.text_secondary);
    axis->setBasePen(Qt::NoPen);
    axis->setTickPen(axis == x ? QPen(theme.control_line, 1) : Qt::NoPen);
    axis->setSubTickPen(Qt::NoPen);
    axis->grid()->setPen(QPen(theme.line, 1));
    axis->grid()->setZeroLinePen(Qt::NoPen);
    axis->setTickLabelPadding(5);
  }
  x->grid()->setVisible(false);
  y->setNumberFormat("f");
  y->setNumberPrecision(axis_decimals(y->range().size(), 4));
  plot_->setLocale(speaker_.printer.style.decimal_mark == ',' ? QLocale(QLocale::German)
                                                              : QLocale(QLocale::C));
}

void GasChart::draw_expected() {
  const Theme& theme = theme_of(this);
  QCPGraph* upper = plot_->addGraph();
  QCPGraph* lower = plot_->addGraph();
  QCPGraph* likely = plot_->addGraph();
  QColor band = theme.accent;
  band.setAlphaF(0.22F);
  upper->setPen(Qt::NoPen);
  lower->setPen(Qt::NoPen);
  upper->setBrush(band);
  upper->setChannelFillGraph(lower);
  QPen dashes(theme.accent_ink, 2);
  dashes.setDashPattern({4, 2});
  likely->setPen(dashes);
  for (const cellar::ExpectedLeft& e : account_->expected) {
    const double x = gas_chart_seconds(e.at);
    upper->addData(x, y_of(e.high));
    lower->addData(x, y_of(e.low));
    likely->addData(x, y_of(e.likely));
  }
}

void GasChart::draw_weighings() {
  const Theme& theme = theme_of(this);
  QCPGraph* dots = plot_->addGraph();
  dots->setPen(QPen(theme.text, 1.8));
  dots->setScatterStyle(
      QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(theme.text, 1.8), QBrush(theme.raised), 8));
  auto* errors = new QCPErrorBars(plot_->xAxis, plot_->yAxis);
  errors->setDataPlottable(dots);
  errors->setPen(QPen(theme.text, 1.2));
  errors->setWhiskerWidth(6);
  errors->setSymbolGap(8);
  for (const cellar::AccountWeighing& w : account_->weighings) {
    const double value = y_of(w.gas.value());
    dots->addData(gas_chart_seconds(w.at), value);
    errors->addData(y_of(w.gas.high()) - value);
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
