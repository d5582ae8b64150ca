// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/round_value.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/units/magnitude.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::ui {
namespace {

using cellar::RoundAsk;
using cellar::RoundDoubt;
using cellar::RoundValue;

double size_of(const RoundValue& v) {
  return visit([](auto each) { return units::to_magnitude(each); }, v);
}

// A round step in the unit on screen, near the question's own.
RoundValue step_on_screen(const cellar::RoundQuestion& asked, const units::DisplayUnits& u) {
  const bool heavy = size_of(asked.step) > units::to_magnitude(units::kilograms(0.3));
  switch (asked.ask) {
    case RoundAsk::place_temperature:
      if (u.temperature == units::TemperatureUnit::fahrenheit) return units::kelvin(5.0 / 9);
      break;
    case RoundAsk::gas_pressure:
    case RoundAsk::rest_pressure:
    case RoundAsk::hold_pressure:
      if (u.pressure == units::PressureUnit::bar) return units::gauge_bar(0.05);
      if (u.pressure == units::PressureUnit::kilopascal) return units::gauge_pascals(5000);
      break;
    case RoundAsk::bottle_gauge:
      if (u.pressure == units::PressureUnit::psi) return units::gauge_psi(50);
      break;
    case RoundAsk::keg_weight:
    case RoundAsk::bottle_weight:
      if (u.mass == units::MassUnit::pound) return units::pounds(heavy ? 1 : 0.2);
      break;
    case RoundAsk::share_left:
    case RoundAsk::pour_time:
      break;
  }
  return asked.step;
}

// `value` moved by so many steps, kept within its range: a stepper ends there.
RoundValue stepped(const cellar::RoundQuestion& asked, const RoundValue& step,
                   const RoundValue& value, int steps) {
  const double moved = size_of(value) + steps * size_of(step);
  if (moved < size_of(asked.least)) return asked.least;
  if (moved > size_of(asked.greatest)) return asked.greatest;
  return visit(
      [&](auto like) -> RoundValue { return units::from_magnitude<decltype(like)>(moved); }, value);
}

// "half litre", where it is one of the usual glasses; else its volume.
QString round_glass_words(units::Volume glass, const units::Printer& printer) {
  const std::pair<units::Volume, QString> usual[] = {
      {units::imperial_pints(1), RoundValueEdit::tr("a pint")},
      {units::us_pints(1), RoundValueEdit::tr("a US pint")},
      {units::litres(0.5), RoundValueEdit::tr("half a litre")},
      {units::litres(1.0 / 3), RoundValueEdit::tr("a third of a litre")}};
  for (const auto& [volume, words] : usual) {
    if (std::abs(units::in_litres(volume) - units::in_litres(glass)) < 0.001) return words;
  }
  return q(printer.print(glass));
}

template <class Value>
std::string printed(const Value& v, const units::Printer& printer) {
  return visit([&](const auto& each) { return printer.print(each); }, v);
}

}  // namespace

QString say_ask(RoundAsk ask) {
  switch (ask) {
    case RoundAsk::place_temperature:
      return RoundValueEdit::tr("Temperature");
    case RoundAsk::gas_pressure:
      return RoundValueEdit::tr("Gas on the dial");
    case RoundAsk::rest_pressure:
      return RoundValueEdit::tr("Pressure at rest");
    case RoundAsk::hold_pressure:
      return RoundValueEdit::tr("Pressure it holds");
    case RoundAsk::share_left:
      return RoundValueEdit::tr("Left, by lifting it");
    case RoundAsk::keg_weight:
    case RoundAsk::bottle_weight:
      return RoundValueEdit::tr("On the scale");
    case RoundAsk::bottle_gauge:
      return RoundValueEdit::tr("High-pressure gauge");
    case RoundAsk::pour_time:
      return RoundValueEdit::tr("Seconds for a glass");
  }
  return {};
}

RoundValueEdit::RoundValueEdit(const Context& context, const cellar::RoundQuestion& question,
                               int side, QWidget* parent)
    : QWidget(parent), context_(context), question_(question) {
  make_edit();
  build(side);
}

void RoundValueEdit::make_edit() {
  const auto bind = [this]<class Edit>(std::type_identity<Edit>) {
    using Q = typename Edit::Value;
    auto* edit = new Edit(context_.preferences, this);
    read_ = [edit]() -> std::optional<RoundValue> {
      return edit->value() ? std::optional<RoundValue>(*edit->value()) : std::nullopt;
    };
    write_ = [edit](const RoundValue& v) { edit->set_value(get<Q>(v)); };
    edit_ = edit;
  };
  switch (question_.ask) {
    case RoundAsk::place_temperature:
      bind(std::type_identity<TemperatureEdit>{});
      break;
    case RoundAsk::share_left:
      bind(std::type_identity<FractionEdit>{});
      break;
    case RoundAsk::keg_weight:
    case RoundAsk::bottle_weight:
      bind(std::type_identity<MassEdit>{});
      break;
    case RoundAsk::pour_time: {
      // A watch shows seconds; a field for durations would take 8 for minutes.
      auto* edit = new NumberEdit(context_.preferences, this);
      read_ = [edit]() -> std::optional<RoundValue> {
        return edit->value() ? std::optional<RoundValue>(units::seconds(*edit->value()))
                             : std::nullopt;
      };
      write_ = [edit](const RoundValue& v) {
        edit->set_value(units::in_seconds(get<units::Duration>(v)));
      };
      edit_ = edit;
      break;
    }
    default:
      bind(std::type_identity<GaugePressureEdit>{});
      break;
  }
}

QString RoundValueEdit::title() const {
  if (question_.glass) {
    return tr("Seconds for %1").arg(round_glass_words(*question_.glass, context_.printer()));
  }
  if (question_.with_regulator) return tr("On the scale, its regulator on");
  return say_ask(question_.ask);
}

void RoundValueEdit::build(int side) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::xs);
  auto* top = new QHBoxLayout;
  top->addWidget(new InkLabel(title(), TextRole::strong, Ink::text, this));
  top->addStretch(1);
  top->addWidget(new InkLabel(last_words(), TextRole::body, Ink::secondary, this));
  column->addLayout(top);
  const auto stepper = [&](const QString& text, const QString& name, int steps) {
    auto* button = new QPushButton(text, this);
    button->setObjectName(name);
    button->setAccessibleName(steps > 0 ? tr("More: %1").arg(title())
                                        : tr("Less: %1").arg(title()));
    button->setFocusPolicy(Qt::NoFocus);
    button->setFont(font_of(TextRole::number));
    button->setFixedSize(side, side);
    connect(button, &QPushButton::clicked, this, [this, steps] { step(steps); });
    return button;
  };
  auto* row = new QHBoxLayout;
  row->setSpacing(space::s);
  row->addWidget(stepper(QStringLiteral("−"), QStringLiteral("less"), -1), 0, Qt::AlignTop);
  edit_->line_edit()->setFont(font_of(TextRole::number));
  edit_->line_edit()->setMinimumHeight(side);
  edit_->line_edit()->setAccessibleName(title());
  edit_->line_edit()->installEventFilter(this);
  row->addWidget(edit_, 1, Qt::AlignTop);
  row->addWidget(stepper(QStringLiteral("+"), QStringLiteral("more"), 1), 0, Qt::AlignTop);
  if (!question_.instruments.empty()) {
    row->addWidget(instrument_button(side), 0, Qt::AlignTop);
  }
  if (question_.ask == RoundAsk::pour_time) row->addWidget(watch_button(side), 0, Qt::AlignTop);
  column->addLayout(row);
  doubt_ = new InkLabel({}, TextRole::body, Ink::warning, this);
  doubt_->setObjectName(QStringLiteral("doubt"));
  doubt_->setWordWrap(true);
  doubt_->hide();
  column->addWidget(doubt_);
  connect(edit_, &QuantityEdit::changed, this, &RoundValueEdit::judge);
}

QPushButton* RoundValueEdit::instrument_button(int side) {
  instrument_ = new QPushButton(this);
  instrument_->setObjectName(QStringLiteral("read_on"));
  instrument_->setFocusPolicy(Qt::NoFocus);  // by key it is F2
  instrument_->setFont(font_of(TextRole::small));
  instrument_->setFixedSize(2 * side, side);
  connect(instrument_, &QPushButton::clicked, this, &RoundValueEdit::take_next_instrument);
  show_instrument();
  return instrument_;
}

QPushButton* RoundValueEdit::watch_button(int side) {
  watch_ = new QPushButton(this);
  watch_->setObjectName(QStringLiteral("watch"));
  watch_->setFocusPolicy(Qt::NoFocus);  // by key it is F3
  watch_->setFixedSize(2 * side, side);
  connect(watch_, &QPushButton::clicked, this, &RoundValueEdit::press_watch);
  show_watch();
  return watch_;
}

void RoundValueEdit::show_watch() {
  watch_->setText(is_timing() ? tr("Stop\nF3") : tr("Start\nF3"));
  watch_->setAccessibleName(is_timing() ? tr("Stop the watch: %1").arg(title())
                                        : tr("Start the watch: %1").arg(title()));
}

void RoundValueEdit::press_watch() {
  if (is_timing()) {
    // To a tenth: no thumb is better.
    const double tenths = std::round(static_cast<double>(timed_.elapsed()) / 100);
    timed_.invalidate();
    write_(units::seconds(tenths / 10));
    judge();
  } else {
    edit_->set_text({});
    take_keyboard();
    timed_.start();
  }
  show_watch();
}

void RoundValueEdit::show_instrument() {
  if (instrument_ == nullptr) return;
  const auto at = std::find_if(question_.instruments.begin(), question_.instruments.end(),
                               [&](const auto& i) { return i.instrument == question_.instrument; });
  QString name = tr("Read on?");
  QString within = tr("none named");
  if (at != question_.instruments.end()) {
    name = q(at->name);
    within = tr("± %1").arg(q(printed(at->within, context_.printer())));
  }
  instrument_->setAccessibleName(tr("%1, read on: %2, %3").arg(title(), name, within));
  const int room = instrument_->width() - 2 * space::l;
  const QFontMetrics letters(instrument_->font());
  QString shown = letters.elidedText(name, Qt::ElideRight, room);
  shown.replace(QLatin1Char('&'), QStringLiteral("&&"));  // no mnemonic
  instrument_->setText(
      QStringLiteral("%1\n%2\n%3")
          .arg(shown, letters.elidedText(within, Qt::ElideRight, room), tr("F2: next")));
}

void RoundValueEdit::take_next_instrument() {
  const auto& all = question_.instruments;
  if (all.empty()) return;
  auto at = std::find_if(all.begin(), all.end(),
                         [&](const auto& i) { return i.instrument == question_.instrument; });
  at = at == all.end() ? all.begin() : at + 1;
  question_.instrument = at == all.end() ? std::nullopt : std::optional(at->instrument);
  show_instrument();
  emit instrument_taken();
}

QString RoundValueEdit::last_words() const {
  if (!question_.last) return tr("not read yet");
  // To the digits that what it was read on can tell.
  const QString value = q(question_.last_read ? printed(*question_.last_read, context_.printer())
                                              : printed(*question_.last, context_.printer()));
  return question_.last_at
             ? tr("last %1, %2")
                   .arg(value, q(report::say_age(*question_.last_at, context_.speaker())))
             : tr("set to %1").arg(value);
}

std::optional<RoundValue> RoundValueEdit::value() const { return read_(); }
bool RoundValueEdit::is_empty() const { return edit_->is_empty(); }
bool RoundValueEdit::is_wrong() const { return !edit_->fault().isEmpty(); }
bool RoundValueEdit::has_keyboard() const { return edit_->line_edit()->hasFocus(); }

void RoundValueEdit::take_keyboard() {
  edit_->line_edit()->setFocus();
  edit_->select_all();
}

void RoundValueEdit::type(const QString& character) {
  QLineEdit* line = edit_->line_edit();
  edit_->set_text((line->hasSelectedText() ? QString() : line->text()) + character);
}

void RoundValueEdit::take_back() {
  QLineEdit* line = edit_->line_edit();
  edit_->set_text(line->hasSelectedText() ? QString()
                                          : line->text().chopped(line->text().isEmpty() ? 0 : 1));
}

bool RoundValueEdit::may_be_below_zero() const {
  return question_.ask == RoundAsk::place_temperature;
}

// Of what is typed, or of what will be: the sign may come first.
void RoundValueEdit::change_sign() {
  const QString text = edit_->text();
  const bool below = text.startsWith(QLatin1Char('-')) || text.startsWith(QChar(0x2212));
  edit_->set_text(below ? text.mid(1) : QLatin1Char('-') + text);
}

// From what is typed; else from what it read last; else from about what it will read.
void RoundValueEdit::step(int steps) {
  const auto now = value();
  if (now) {
    write_(
        stepped(question_, step_on_screen(question_, context_.preferences.units()), *now, steps));
  } else {
    write_(question_.last.value_or(question_.begins.value_or(question_.least)));
  }
  judge();
}

void RoundValueEdit::judge() {
  const auto now = value();
  const RoundDoubt doubt = now ? cellar::doubt_about(question_, *now) : RoundDoubt::none;
  const units::Printer printer = context_.printer();
  if (doubt == RoundDoubt::below_range) {
    edit_->set_refusal(tr("The least is %1.").arg(q(printed(question_.least, printer))));
  } else if (doubt == RoundDoubt::above_range) {
    edit_->set_refusal(tr("The most is %1.").arg(q(printed(question_.greatest, printer))));
  }
  const QString last = question_.last_read ? q(printed(*question_.last_read, printer))
                       : question_.last    ? q(printed(*question_.last, printer))
                                           : QString();
  QString words;
  if (doubt == RoundDoubt::much_higher)
    words = tr("Much more than the last %1. Read it again?").arg(last);
  if (doubt == RoundDoubt::much_lower)
    words = tr("Much less than the last %1. Read it again?").arg(last);
  if (doubt == RoundDoubt::fuller)
    words = tr("More than the last %1. Is it the same keg?").arg(last);
  if (doubt == RoundDoubt::heavier)
    words = tr("Heavier than the last %1. Is it the same one?").arg(last);
  doubt_->setText(words);
  doubt_->setVisible(!words.isEmpty());
}

bool RoundValueEdit::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn) emit got_keyboard();
  return QWidget::eventFilter(watched, event);
}

}  // namespace ullage::ui
