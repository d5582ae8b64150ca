// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/slate_answer.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "ui/charts/answer_chart.h"
#include "ui/context.h"
#include "ui/theme/theme.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {
namespace {

using report::slate::Answer;
using report::slate::AnswerValue;
using report::slate::Computation;
using report::slate::Inputs;

constexpr int room_above_figure = 2;  // Figure keeps so much for its ring

// A smaller figure: its name and the number.
class OtherFigure final : public QWidget {
 public:
  explicit OtherFigure(QWidget* parent) : QWidget(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::m);
    name_ = new InkLabel({}, TextRole::body, Ink::secondary, this);
    name_->setWordWrap(true);
    name_->setContentsMargins(0, room_above_figure, 0, 0);  // on one line with the number
    number_ = new Figure(TextRole::strong, Ink::text, this);
    row->addWidget(name_, 1, Qt::AlignTop);
    row->addWidget(number_, 1, Qt::AlignTop);
  }
  void show_value(const QString& name, const QString& text, Figure::Reasons reasons) {
    name_->setText(name);
    number_->show_number(name, text, std::move(reasons));
  }

 private:
  InkLabel* name_;
  Figure* number_;
};

QVBoxLayout* tight_column() {
  auto* column = new QVBoxLayout;
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::xs);
  return column;
}

}  // namespace

SlateAnswer::SlateAnswer(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("slate_answer"));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  nothing_ = new InkLabel({}, TextRole::body, Ink::secondary, this);
  nothing_->setObjectName(QStringLiteral("no_answer"));
  nothing_->setWordWrap(true);
  content_ = new QWidget(this);
  all->addWidget(nothing_);
  all->addWidget(content_);
  all->addStretch(1);

  auto* column = new QVBoxLayout(content_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::m);
  auto* top = tight_column();
  main_name_ = new InkLabel({}, TextRole::body, Ink::secondary, content_);
  main_name_->setWordWrap(true);
  main_ = new Figure(TextRole::number, Ink::text, content_);
  main_->setObjectName(QStringLiteral("main_answer"));
  top->addWidget(main_name_);
  top->addWidget(main_);
  column->addLayout(top);
  others_ = tight_column();
  sentences_ = tight_column();
  cautions_ = tight_column();
  column->addLayout(others_);
  column->addLayout(sentences_);
  column->addLayout(cautions_);
  chart_title_ = new InkLabel({}, TextRole::strong, Ink::text, content_);
  chart_title_->setWordWrap(true);
  chart_ = new AnswerChart(content_);
  column->addWidget(chart_title_);
  column->addWidget(chart_);
  show_nothing({});
}

QString SlateAnswer::main_text() const { return has_answer_ ? main_->text() : QString(); }

void SlateAnswer::show_nothing(const QString& why) {
  has_answer_ = false;
  nothing_->setText(why);
  nothing_->setVisible(true);
  content_->setVisible(false);
}

void SlateAnswer::show_values(const Computation& computation, const Inputs& inputs,
                              const Answer& answer, const report::Speaker& speaker) {
  const auto reasons = [&](const AnswerValue& value) -> Figure::Reasons {
    return [&computation, inputs, value, printer = speaker.printer, words = speaker.words] {
      return report::slate::grounds_of(computation, inputs, value, printer, words);
    };
  };
  const AnswerValue& first = answer.values.front();
  main_name_->setText(q(first.name));
  main_->show_number(q(first.name), q(print(first, speaker.printer)), reasons(first));
  const auto rows =
      keep_count<OtherFigure>(*others_, static_cast<qsizetype>(answer.values.size()) - 1,
                              [this] { return new OtherFigure(content_); });
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const AnswerValue& value = answer.values[i + 1];
    rows[i]->show_value(q(value.name), q(print(value, speaker.printer)), reasons(value));
  }
}

void SlateAnswer::show_answer(const Computation& computation, const Inputs& inputs,
                              const Answer& answer, const report::Speaker& speaker) {
  has_answer_ = true;
  nothing_->setVisible(false);
  content_->setVisible(true);
  show_values(computation, inputs, answer, speaker);
  const auto labels =
      keep_count<InkLabel>(*sentences_, static_cast<qsizetype>(answer.sentences.size()), [this] {
        auto* label = new InkLabel({}, TextRole::body, Ink::text, content_);
        label->setWordWrap(true);
        return label;
      });
  for (std::size_t i = 0; i < labels.size(); ++i) labels[i]->setText(q(answer.sentences[i]));
  const auto cautions =
      keep_count<Caution>(*cautions_, static_cast<qsizetype>(answer.cautions.size()),
                          [this] { return new Caution({}, Caution::Weight::caution, content_); });
  for (std::size_t i = 0; i < cautions.size(); ++i) {
    cautions[i]->set_sentence(q(answer.cautions[i]));
  }
  chart_->show_chart(answer.chart, speaker.printer);
  chart_->setVisible(chart_->has_chart());
  chart_title_->setText(q(answer.chart.title));
  chart_title_->setVisible(chart_->has_chart());
}

}  // namespace ullage::ui
