// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rail.h"

#include <QButtonGroup>
#include <QEvent>
#include <QStyleOptionToolButton>
#include <QStylePainter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr int open_width = 184;
constexpr int folded_width = 56;
constexpr int rail_padding = 10;
constexpr int alarm_dot = 8;

}  // namespace

// A page's name with its icon before it, and what stands behind it at the far
// edge, where numbers of all pages line up. Folded, an alarm is a dot.
class RailButton : public QToolButton {
 public:
  using QToolButton::QToolButton;
  void show_badge(const QString& words, bool alarming) {
    badge_ = words;
    alarming_ = alarming;
    update();
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    const Theme& theme = theme_of(this);
    QStylePainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QStyleOptionToolButton option;
    initStyleOption(&option);
    painter.drawPrimitive(QStyle::PE_PanelButtonTool, option);
    const bool folded = toolButtonStyle() == Qt::ToolButtonIconOnly;
    const int left = folded ? (width() - icon_size) / 2 : rail_padding;
    icon().paint(&painter, QRect(left, (height() - icon_size) / 2, icon_size, icon_size));
    if (!folded) {
      paint_words(painter, theme, left + icon_size + space::s);
    } else if (alarming_) {
      painter.setPen(QPen(theme.raised, 2));
      painter.setBrush(theme.danger);
      painter.drawEllipse(QRectF(left + icon_size - 4, (height() - icon_size) / 2.0 - 4,
                                 alarm_dot + 2, alarm_dot + 2));
    }
    if (hasFocus()) {
      paint_focus_ring(painter, QRectF(rect()).adjusted(1, 1, -1, -1), radius::control, theme);
    }
  }

 private:
  void paint_words(QPainter& painter, const Theme& theme, int left) const {
    const QRect words(left, 0, width() - rail_padding - left, height());
    painter.setPen(isChecked() ? theme.accent_ink : theme.text);
    painter.setFont(font_of(isChecked() ? TextRole::strong : TextRole::body));
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, text());
    painter.setPen(alarming_ ? theme.danger_ink : theme.text_secondary);
    painter.setFont(font_of(TextRole::small));
    painter.drawText(words, Qt::AlignRight | Qt::AlignVCenter, badge_);
  }

  QString badge_;
  bool alarming_ = false;
};

Rail::Rail(const Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("rail"));
  setAccessibleName(tr("Pages"));
  group_ = new QButtonGroup(this);
  name_ = new InkLabel(QStringLiteral("Ullage"), TextRole::heading);
  buttons_ = new QVBoxLayout;
  buttons_->setSpacing(space::xs);
  places_ = new QVBoxLayout;
  places_->setSpacing(space::s);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::m, space::l, space::m, space::l);
  all->setSpacing(space::l);
  all->addWidget(name_);
  all->addLayout(buttons_);
  all->addStretch(1);
  all->addLayout(places_);
  setFixedWidth(open_width);
}

void Rail::add_page(PageId id, const QString& title, Icon icon) {
  auto* button = new RailButton;
  button->setCheckable(true);
  button->setAutoRaise(true);
  button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  button->setMinimumHeight(control_height);
  button->setFocusPolicy(Qt::StrongFocus);
  button->setObjectName(QStringLiteral("page_") + title.toLower());
  group_->addButton(button);
  buttons_->addWidget(button);
  connect(button, &QToolButton::clicked, this, [this, id] { emit chosen(id); });
  pages_.push_back({id, title, {}, icon, false, button});
  dress(pages_.back());
}

Rail::Page& Rail::page(PageId id) {
  return *std::find_if(pages_.begin(), pages_.end(), [&](const Page& p) { return p.id == id; });
}

void Rail::dress(Page& page) {
  const Theme& theme = theme_of(this);
  page.button->setIcon(
      icon(page.icon, page.button->isChecked() ? theme.accent_ink : theme.text_secondary));
  page.button->setIconSize(QSize(icon_size, icon_size));
  page.button->setToolButtonStyle(folded_ ? Qt::ToolButtonIconOnly : Qt::ToolButtonTextBesideIcon);
  page.button->setText(page.title);
  page.button->show_badge(page.badge, page.alarming);
  page.button->setAccessibleName(
      page.badge.isEmpty() ? page.title : QStringLiteral("%1, %2").arg(page.title, page.badge));
  page.button->setToolTip(folded_ ? page.title : QString());
}

void Rail::set_current(PageId id) {
  page(id).button->setChecked(true);
  for (Page& each : pages_) dress(each);
}

void Rail::set_badge(PageId id, const QString& words, bool alarming) {
  Page& which = page(id);
  which.badge = words;
  which.alarming = alarming;
  dress(which);
}

void Rail::set_folded(bool folded) {
  if (folded == folded_) return;
  folded_ = folded;
  setFixedWidth(folded ? folded_width : open_width);
  name_->setVisible(!folded);
  for (Page& each : pages_) dress(each);
  refresh();
}

void Rail::refresh() {
  while (QLayoutItem* old = places_->takeAt(0)) {
    delete old->widget();
    delete old;
  }
  if (folded_) return;
  const report::Speaker speaker = context_.speaker();
  const auto status = context_.cellar.status();
  for (const cellar::PlaceStatus& place : status->places) {
    if (!place.record.in_use || !place.temperature) continue;
    const QString age = place.read_at ? q(report::say_age(*place.read_at, speaker)) : tr("as set");
    auto* line = new InkLabel(
        QStringLiteral("%1\n%2 · %3")
            .arg(q(place.record.name), q(speaker.printer.print(*place.temperature)), age),
        TextRole::small, Ink::secondary);
    line->setWordWrap(true);
    places_->addWidget(line);
  }
}

void Rail::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) {
    for (Page& each : pages_) dress(each);
  }
}

}  // namespace ullage::ui
