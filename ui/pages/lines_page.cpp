// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/lines_page.h"

#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/dialogs/forms/scrolled.h"
#include "ui/pages/line_row.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr int minute = 60 * 1000;  // ages and due dates move with the clock

// A thin rule in the theme's own line colour.
QFrame* rule(const QWidget* like) {
  auto* line = new QFrame;
  line->setFixedHeight(1);
  line->setAutoFillBackground(true);
  QPalette palette = line->palette();
  palette.setColor(QPalette::Window, theme_of(like).line);
  line->setPalette(palette);
  return line;
}

}  // namespace

LinesPage::LinesPage(const Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("lines_page"));
  build();
  listening_ = context_.cellar.on_change([this](const cellar::Change&) { refresh(); });
  connect(&context_.preferences, &Preferences::changed, this, &LinesPage::refresh);
  auto* clock = new QTimer(this);
  connect(clock, &QTimer::timeout, this, &LinesPage::refresh);
  clock->start(minute);
  refresh();
}

LinesPage::~LinesPage() = default;

void LinesPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) refresh();
}

void LinesPage::build() {
  auto* add = new QPushButton(tr("Add a line…"));
  add->setObjectName(QStringLiteral("add_line"));
  const auto add_line = [this] {
    cellar::LineRecord line{.line = context_.cellar.fresh<cellar::LineId>()};
    context_.navigator.open_task(
        {"line_record", {}, cellar::Payload(boost::variant2::in_place_type<cellar::LineRecord>, line), {}});
  };
  connect(add, &QPushButton::clicked, this, add_line);
  summary_ = new InkLabel({}, TextRole::small, Ink::secondary);
  auto* header = new QHBoxLayout;
  header->addWidget(new InkLabel(tr("Lines"), TextRole::title));
  header->addWidget(summary_);
  header->addStretch(1);
  header->addWidget(add);

  scroll_ = scrolled();
  auto* empty = new EmptyState(Icon::line, tr("No lines yet"),
                               tr("Register each tap with its hose: then cleaning days, locks and "
                                  "keg changes have a home."));
  connect(empty->add_action(tr("Add a line…")), &QPushButton::clicked, this, add_line);
  stack_ = new QStackedWidget;
  stack_->addWidget(scroll_);
  stack_->addWidget(empty);

  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addLayout(header);
  all->addWidget(stack_, 1);
}

void LinesPage::refresh() {
  const auto status = context_.cellar.status();
  const int scrolled = scroll_->verticalScrollBar()->value();
  auto* rows = new QWidget;
  auto* column = new QVBoxLayout(rows);
  column->setContentsMargins(0, 0, space::m, 0);
  column->setSpacing(0);
  int shown = 0;
  int locked = 0;
  for (const cellar::LineStatus& line : status->lines) {
    if (!line.record.in_use) continue;
    if (shown++ > 0) column->addWidget(rule(this));
    if (line.lock) ++locked;
    auto* row = new LineRow(context_, line, *status);
    connect(row, &LineRow::task_asked, this,
            [this, line](const QString& kind) { open(kind, line); });
    column->addWidget(row);
  }
  column->addStretch(1);
  // A row's own button may have led here: the old rows go once it is done.
  if (QWidget* old = scroll_->takeWidget()) old->deleteLater();
  scroll_->setWidget(rows);
  scroll_->verticalScrollBar()->setValue(scrolled);
  stack_->setCurrentIndex(shown == 0 ? 1 : 0);
  summary_->setText(locked > 0  ? tr("%1 in use, %2 locked").arg(shown).arg(locked)
                    : shown > 0 ? tr("%1 in use").arg(shown)
                                : QString());
}

void LinesPage::open(const QString& kind, const cellar::LineStatus& line) {
  cellar::SuggestedTask task{s(kind), cellar::subject(line.record.line), {}, {}};
  if (kind == QLatin1String("line_record")) {
    task.prefill = cellar::Payload(boost::variant2::in_place_type<cellar::LineRecord>, line.record);
  }
  context_.navigator.open_task(task);
}

}  // namespace ullage::ui
