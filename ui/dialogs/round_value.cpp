// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/round_value.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

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

// `value` moved by so many of the question's steps, kept within its range: a
// stepper ends there.
RoundValue stepped(const cellar::RoundQuestion& asked, const RoundValue& value, int steps) {
  const double moved = size_of(value) + steps * size_of(asked.step);
  if (moved < size_of(asked.least)) return asked.least;
  if (moved > size_of(asked.greatest)) return asked.greatest;
  return visit(
      [&](auto like) -> RoundValue { return units::from_magnitude<decltype(like)>(moved); }, value);
}

std::string printed(const RoundValue& v, const units::Printer& printer) {
  return visit([&](auto each) { return printer.print(each); }, v);
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
    default:
      bind(std::type_identity<GaugePressureEdit>{});
      break;
  }
}

void RoundValueEdit::build(int side) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::xs);
  auto* top = new QHBoxLayout;
  top->addWidget(new InkLabel(say_ask(question_.ask), TextRole::strong, Ink::text, this));
  top->addStretch(1);
  top->addWidget(new InkLabel(last_words(), TextRole::body, Ink::secondary, this));
  column->addLayout(top);
  const auto stepper = [&](const QString& text, const QString& name, int steps) {
    auto* button = new QPushButton(text, this);
    button->setObjectName(name);
    button->setAccessibleName(steps > 0 ? tr("More: %1").arg(say_ask(question_.ask))
                                        : tr("Less: %1").arg(say_ask(question_.ask)));
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
  edit_->line_edit()->setAccessibleName(say_ask(question_.ask));
  edit_->line_edit()->installEventFilter(this);
  row->addWidget(edit_, 1, Qt::AlignTop);
  row->addWidget(stepper(QStringLiteral("+"), QStringLiteral("more"), 1), 0, Qt::AlignTop);
  column->addLayout(row);
  doubt_ = new InkLabel({}, TextRole::body, Ink::warning, this);
  doubt_->setObjectName(QStringLiteral("doubt"));
  doubt_->setWordWrap(true);
  doubt_->hide();
  column->addWidget(doubt_);
  connect(edit_, &QuantityEdit::changed, this, &RoundValueEdit::judge);
}

QString RoundValueEdit::last_words() const {
  if (!question_.last) return tr("not read yet");
  const QString value = q(printed(*question_.last, context_.printer()));
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

// From what is typed; else from what it read last; else from the least it can be.
void RoundValueEdit::step(int steps) {
  const auto now = value();
  if (now) {
    write_(stepped(question_, *now, steps));
  } else {
    write_(question_.last.value_or(question_.least));
  }
  judge();
}

void RoundValueEdit::refuse(const QString& sentence) { edit_->set_refusal(sentence); }

void RoundValueEdit::judge() {
  const auto now = value();
  const RoundDoubt doubt = now ? cellar::doubt_about(question_, *now) : RoundDoubt::none;
  const units::Printer printer = context_.printer();
  if (doubt == RoundDoubt::below_range) {
    edit_->set_refusal(tr("The least is %1.").arg(q(printed(question_.least, printer))));
  } else if (doubt == RoundDoubt::above_range) {
    edit_->set_refusal(tr("The most is %1.").arg(q(printed(question_.greatest, printer))));
  }
  const QString last = question_.last ? q(printed(*question_.last, printer)) : QString();
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
