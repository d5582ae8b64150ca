// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_entries.h"

#include <QAbstractButton>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/context.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/cell_style.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {

namespace {

class EntryLine final : public QAbstractButton {
 public:
  explicit EntryLine(QWidget* parent) : QAbstractButton(parent) {
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAttribute(Qt::WA_Hover);
  }
  void show_entry(const QString& when, const QString& what) {
    when_ = when;
    setText(what);
    setAccessibleName(when + QStringLiteral(": ") + what);
    setToolTip(what);
    update();
  }
  [[nodiscard]] QSize sizeHint() const override { return {200, 28}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {120, 28}; }

 protected:
  void paintEvent(QPaintEvent*) override {
    const Theme& theme = theme_of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box(rect());
    if (underMouse()) painter.fillRect(box, theme.hover);
    painter.fillRect(QRectF(0, box.bottom() - 1, box.width(), 1), theme.line);
    const QFont font = font_of(TextRole::small);
    const qreal baseline = box.center().y() + QFontMetricsF(font).capHeight() / 2;
    draw_elided(painter, 0, baseline, when_width, font, theme.text_secondary, when_);
    draw_elided(painter, when_width + 8, baseline, box.width() - when_width - 8, font, theme.text,
                text());
    if (hasFocus()) {
      painter.setPen(QPen(theme.focus, 2));
      painter.setBrush(Qt::NoBrush);
      painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), 3, 3);
    }
  }

 private:
  static constexpr qreal when_width = 100;
  QString when_;
};

}  // namespace

KegPanelEntries::KegPanelEntries(Context& context, QWidget* parent)
    : QWidget(parent), context_(context) {
  setObjectName("entries");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::s);
  lines_ = new QVBoxLayout;
  lines_->setContentsMargins(0, 0, 0, 0);
  lines_->setSpacing(0);
  column->addLayout(lines_);
  all_ = new QPushButton(this);
  set_role(all_, ButtonRole::quiet);
  connect(all_, &QPushButton::clicked, this,
          [this] { context_.navigator.show_entries_of(about_); });
  column->addWidget(all_, 0, Qt::AlignLeft);
  none_ = new InkLabel(tr("Nothing logged about it yet."), TextRole::small, Ink::secondary, this);
  column->addWidget(none_);
}

void KegPanelEntries::show_keg(const PanelSubject& subject) {
  about_ = cellar::subject(subject.keg.record.keg);
  const auto story = context_.cellar.journal().story(about_);
  const std::size_t shown = std::min(story.size(), at_most);
  const auto lines = keep_count<EntryLine>(*lines_, static_cast<qsizetype>(shown), [this] {
    auto* line = new EntryLine(this);
    connect(line, &QAbstractButton::clicked, this,
            [this] { context_.navigator.show_entries_of(about_); });
    return line;
  });
  for (std::size_t i = 0; i < shown; ++i) {
    const cellar::Entry& entry = *story[story.size() - 1 - i];
    lines[i]->show_entry(q(report::say_time(entry.header.happened_at, subject.speaker)),
                         q(report::say_entry(entry.payload, subject.cellar, subject.speaker)));
  }
  all_->setText(tr("All %1 entries").arg(story.size()));
  all_->setVisible(!story.empty());
  none_->setVisible(story.empty());
}

}  // namespace ullage::ui
