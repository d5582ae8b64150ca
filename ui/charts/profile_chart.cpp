// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/profile_chart.h"

#include <qcustomplot.h>

#include <algorithm>

#include "core/units/shown.h"
#include "ui/charts/axis_decimals.h"
#include "ui/context.h"
#include "ui/dialogs/forms/enum_words.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

QPen profile_dashes(const QColor& colour, double width) {
  QPen pen(colour, width);
  pen.setDashPattern({4, 3});
  return pen;
}

}  // namespace

ProfileChart::ProfileChart(QWidget* parent) : PlotWidget(parent) {
  setObjectName("profile_chart");
  set_name(tr("Pressure along the line"));
}

void ProfileChart::show_profile(const cellar::PourOutlook& now, const cellar::PourSetting& setting,
                                const std::optional<cellar::PourOutlook>& tried,
                                const report::Speaker& speaker) {
  now_ = now;
  setting_ = setting;
  tried_ = tried;
  speaker_ = speaker;
  shown_ = true;
  set_in_words(in_words());
  redraw();
}

double ProfileChart::x_of(units::Length l) const {
  return speaker_.printer.units.length == units::LengthUnit::foot ? units::in_feet(l)
                                                                  : units::in_metres(l);
}

double ProfileChart::y_of(units::GaugePressure p) const {
  switch (speaker_.printer.units.pressure) {
    case units::PressureUnit::psi:
      return units::in_psi(p);
    case units::PressureUnit::bar:
      return units::in_bar(p);
    case units::PressureUnit::kilopascal:
      break;
  }
  return units::in_pascals(p) / 1000;
}

void ProfileChart::draw_plot() {
  if (!front().at_rest.empty()) {
    draw_axes();
    draw_equilibrium();
    draw_lines();
    draw_places();
    draw_legend();
  }
}

void ProfileChart::draw_axes() {
  const Theme& theme = theme_of(this);
  double top = 0;
  double bottom = 0;
  double far = 0;
  const auto take = [&](const std::vector<physics::ProfilePoint>& points) {
    for (const physics::ProfilePoint& p : points) {
      top = std::max(top, y_of(p.pressure));
      bottom = std::min(bottom, y_of(p.pressure));
      far = std::max(far, x_of(p.along));
    }
  };
  take(now_.at_rest);
  take(front().at_rest);
  take(front().pouring);
  for (const physics::StandingPlace& p : front().places)
    top = std::max(top, y_of(p.needed.value()));
  plot_->xAxis->setRange(0, far > 0 ? far * 1.02 : 1);
  // Room at the top for the legend.
  plot_->yAxis->setRange(bottom, top > 0 ? bottom + (top - bottom) * 1.35 : 1);
  plot_->xAxis->setLabel(
      tr("%1 from the keg").arg(q(units::unit_name(speaker_.printer.units.length))));
  plot_->yAxis->setLabel(q(units::unit_name(speaker_.printer.units.pressure)));
  for (QCPAxis* axis : {plot_->xAxis, plot_->yAxis}) {
    axis->setTickLabelFont(font_of(TextRole::small));
    axis->setLabelFont(font_of(TextRole::small));
    axis->setLabelColor(theme.text_secondary);
    axis->setTickLabelColor(theme.text_secondary);
    axis->setBasePen(QPen(theme.control_line, 1));
    axis->setTickPen(QPen(theme.control_line, 1));
    axis->setSubTickPen(Qt::NoPen);
    axis->grid()->setPen(QPen(theme.line, 1));
    axis->grid()->setZeroLinePen(QPen(theme.line, 1));
    axis->setNumberFormat("f");
    axis->setNumberPrecision(axis_decimals(axis->range().size(), 5));
    axis->ticker()->setTickCount(5);
  }
  plot_->xAxis->grid()->setVisible(false);
  plot_->setLocale(speaker_.printer.style.decimal_mark == ',' ? QLocale(QLocale::German)
                                                              : QLocale(QLocale::C));
}

void ProfileChart::draw_lines() {
  const Theme& theme = theme_of(this);
  const auto line = [&](const std::vector<physics::ProfilePoint>& points, const QPen& pen) {
    auto* curve = new QCPCurve(plot_->xAxis, plot_->yAxis);
    curve->setPen(pen);
    for (const physics::ProfilePoint& p : points) curve->addData(x_of(p.along), y_of(p.pressure));
  };
  if (tried_) line(now_.pouring, profile_dashes(theme.control_line, 1.4));
  line(front().at_rest, QPen(theme.text_secondary, 1.6));
  line(front().pouring, QPen(theme.accent, 2.4));
}

// What the beer needs in each place: a step for each piece of hose. Where it lies
// above the pressure at rest, gas breaks out: tinted.
void ProfileChart::draw_equilibrium() {
  const Theme& theme = theme_of(this);
  const cellar::PourOutlook& o = front();
  for (const physics::StandingPlace& place : o.places) {
    if (place.part + 1 >= o.at_rest.size()) continue;
    const physics::ProfilePoint& from = o.at_rest[place.part];
    const physics::ProfilePoint& to = o.at_rest[place.part + 1];
    if (to.along == from.along) continue;
    const double level = y_of(place.needed.value());
    auto* step = new QCPCurve(plot_->xAxis, plot_->yAxis);
    step->setPen(profile_dashes(theme.warning, 2));
    step->addData(x_of(from.along), level);
    step->addData(x_of(to.along), level);
    if (place.verdict != physics::AtRest::breaks_out) continue;
    auto* tint = new QCPItemRect(plot_);
    QColor colour = theme.danger;
    colour.setAlphaF(0.16F);
    tint->setPen(Qt::NoPen);
    tint->setBrush(colour);
    tint->setLayer("grid");
    tint->topLeft->setCoords(x_of(from.along), level);
    tint->bottomRight->setCoords(x_of(to.along), y_of(place.pressure));
  }
}

void ProfileChart::draw_places() {
  const Theme& theme = theme_of(this);
  const cellar::PourOutlook& o = front();
  for (std::size_t i = 0; i + 1 < o.at_rest.size() && i < setting_.place_names.size(); ++i) {
    const double from = x_of(o.at_rest[i].along);
    const double to = x_of(o.at_rest[i + 1].along);
    if (to <= from || setting_.place_names[i].empty()) continue;
    auto* label = new QCPItemText(plot_);
    label->setText(q(setting_.place_names[i]));
    label->setFont(font_of(TextRole::small));
    label->setColor(theme.text_secondary);
    label->setPositionAlignment(Qt::AlignHCenter | Qt::AlignBottom);
    label->position->setCoords((from + to) / 2, plot_->yAxis->range().lower);
    label->setPadding(QMargins(2, 2, 2, 4));
  }
}

// Named in the plot, by line and word: at most four entries in one row each.
void ProfileChart::draw_legend() {
  const Theme& theme = theme_of(this);
  struct Entry {
    QString word;
    QPen pen;
  };
  std::vector<Entry> entries{{tr("pouring"), QPen(theme.accent, 2.4)},
                             {tr("at rest"), QPen(theme.text_secondary, 1.6)}};
  if (!front().places.empty())
    entries.push_back({tr("beer needs"), profile_dashes(theme.warning, 2)});
  if (tried_) entries.push_back({tr("as it is"), profile_dashes(theme.control_line, 1.4)});
  // No line of the grid runs through the words.
  auto* ground = new QCPItemRect(plot_);
  for (QCPItemPosition* corner : {ground->topLeft, ground->bottomRight})
    corner->setType(QCPItemPosition::ptAxisRectRatio);
  ground->topLeft->setCoords(0.002, 0);
  ground->bottomRight->setCoords(1, 0.12);
  ground->setPen(Qt::NoPen);
  ground->setBrush(theme.surface);
  const double step = 1.0 / static_cast<double>(entries.size());
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const double x = 0.01 + step * static_cast<double>(i);
    auto* dash = new QCPItemLine(plot_);
    for (QCPItemPosition* end : {dash->start, dash->end})
      end->setType(QCPItemPosition::ptAxisRectRatio);
    dash->start->setCoords(x, 0.06);
    dash->end->setCoords(x + 0.055, 0.06);
    dash->setPen(entries[i].pen);
    auto* word = new QCPItemText(plot_);
    word->setText(entries[i].word);
    word->setFont(font_of(TextRole::small));
    word->setColor(theme.text);
    word->setPositionAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    word->position->setType(QCPItemPosition::ptAxisRectRatio);
    word->position->setCoords(x + 0.07, 0.06);
  }
}

QString ProfileChart::in_words() const {
  const cellar::PourOutlook& o = front();
  if (o.at_rest.empty()) return tr("No profile: there is nothing to compute it from.");
  const units::Printer& print = speaker_.printer;
  QStringList words;
  words << regional(tr("At rest %1 at the keg and %2 at the tap."), speaker_.words)
               .arg(q(print.print(o.at_rest.front().pressure)),
                    q(print.print(o.at_rest.back().pressure)));
  for (const physics::StandingPlace& place : o.places) {
    if (place.verdict != physics::AtRest::breaks_out) continue;
    const QString there = tr("Gas breaks out %1 from the keg: %2 there, %3 needed at %4.")
                              .arg(q(print.print(place.along)), q(print.print(place.pressure)),
                                   q(print.print(place.needed)), q(print.print(place.temperature)));
    if (!words.contains(there)) words << there;  // shank and faucet stand with the hose before
  }
  if (!o.untold_places.empty())
    words << tr("How warm it is there was never told: %1.").arg(q(o.untold_places));
  if (o.journey && o.journey->supersaturated_from) {
    words << regional(
                 tr("Pouring, the pressure falls below what the beer needs %1 from the keg, as "
                    "in every line before its tap."),
                 speaker_.words)
                 .arg(q(print.print(*o.journey->supersaturated_from)));
  }
  return words.join(QLatin1Char(' '));
}

}  // namespace ullage::ui
