// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/kegs_bar.h"

#include <QAction>
#include <QActionGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/theme/icons.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/chip.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

KegsBar::KegsBar(QWidget* parent)
    : QWidget(parent),
      search_(new QLineEdit(this)),
      sheet_(new QPushButton(tr("Status &sheet"), this)),
      transfer_(new QPushButton(tr("Log a &transfer"), this)),
      chip_row_(new QWidget(this)),
      order_(new QToolButton(this)),
      orders_(new QActionGroup(this)),
      density_(new QToolButton(this)),
      panel_(new QToolButton(this)),
      stock_row_(new QWidget(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(space::xl, space::l, space::l, space::xs);
  column->setSpacing(space::s);
  build_top();
  build_tools();
  build_stock();
  draw_icons();
}

void KegsBar::build_top() {
  auto* row = new QHBoxLayout;
  row->setSpacing(space::s);
  auto* title = new InkLabel(tr("Kegs"), TextRole::title, Ink::text, this);
  title->setMinimumHeight(control_height);  // stays where it is without the buttons
  row->addWidget(title);
  row->addSpacing(space::m);
  search_->setObjectName("keg_search");
  search_->setAccessibleName(tr("Find a keg"));
  search_->setPlaceholderText(tr("Find a keg, beer, state or place"));
  search_->setClearButtonEnabled(true);
  search_->setMaximumWidth(320);
  search_->setMinimumWidth(160);
  search_sign_ = search_->addAction(QIcon(), QLineEdit::LeadingPosition);
  connect(search_, &QLineEdit::textChanged, this, &KegsBar::text_changed);
  row->addWidget(search_, 1);
  row->addStretch(1);
  sheet_->setObjectName("status_sheet");
  connect(sheet_, &QPushButton::clicked, this, &KegsBar::status_sheet_wanted);
  row->addWidget(sheet_);
  transfer_->setObjectName("log_transfer");
  set_role(transfer_, ButtonRole::primary);
  connect(transfer_, &QPushButton::clicked, this, &KegsBar::transfer_wanted);
  row->addWidget(transfer_);
  static_cast<QVBoxLayout*>(layout())->addLayout(row);
}

void KegsBar::build_tools() {
  auto* row = new QHBoxLayout;
  row->setSpacing(space::s);
  auto* flow = new FlowLayout(chip_row_, space::s);
  // In no button group: Tab would then lead to one of them only.
  for (std::size_t i = 0; i < all_keg_filters.size(); ++i) {
    const KegFilter filter = all_keg_filters.at(i);
    auto* chip = new Chip(filter_name(filter), chip_row_);
    chip->setCheckable(true);
    chip->setObjectName(QStringLiteral("chip_%1").arg(static_cast<int>(filter)));
    // A pressed chip pressed again goes back to all.
    connect(chip, &Chip::clicked, this, [this, filter](bool on) {
      const KegFilter chosen = on ? filter : KegFilter::all;
      set_filter(chosen);
      emit filter_chosen(chosen);
    });
    chips_.at(i) = chip;
    flow->addWidget(chip);
  }
  row->addWidget(chip_row_, 1);

  auto* menu = new QMenu(order_);
  menu->setObjectName("keg_order_menu");
  for (const KegOrder order : all_keg_orders) {
    QAction* action = menu->addAction(order_name(order));
    action->setCheckable(true);
    action->setData(static_cast<int>(order));
    orders_->addAction(action);
  }
  connect(orders_, &QActionGroup::triggered, this, [this](QAction* action) {
    const auto order = static_cast<KegOrder>(action->data().toInt());
    set_order(order);
    emit order_chosen(order);
  });
  order_->setObjectName("keg_order");
  order_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  order_->setLayoutDirection(Qt::RightToLeft);  // the arrow behind the word
  connect(order_, &QToolButton::clicked, this,
          [this, menu] { menu->popup(order_->mapToGlobal(QPoint(0, order_->height()))); });
  density_->setObjectName("keg_density");
  density_->setCheckable(true);
  connect(density_, &QToolButton::toggled, this, &KegsBar::compact_chosen);
  panel_->setObjectName("keg_panel_toggle");
  panel_->setCheckable(true);
  panel_->setText(tr("Details"));
  panel_->setShortcut(QKeySequence(tr("Ctrl+I")));
  panel_->setToolTip(tr("Details of the chosen keg (Ctrl+I)"));
  panel_->setAccessibleName(tr("Details of the chosen keg"));
  connect(panel_, &QToolButton::toggled, this, &KegsBar::panel_wanted);
  for (QToolButton* button : {order_, density_, panel_}) {
    button->setFocusPolicy(Qt::StrongFocus);
    row->addWidget(button, 0, Qt::AlignTop);
  }
  static_cast<QVBoxLayout*>(layout())->addLayout(row);
  set_filter(KegFilter::all);
  set_order(KegOrder::tag);
  set_compact(false);
}

void KegsBar::build_stock() {
  stock_row_->setObjectName("stock_row");
  auto* row = new QHBoxLayout(stock_row_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::m);
  uncounted_ = new InkLabel({}, TextRole::body, Ink::text, stock_row_);
  uncounted_->setWordWrap(true);
  auto* count = new QPushButton(tr("Take stoc&k…"), stock_row_);
  count->setObjectName("take_stock");
  connect(count, &QPushButton::clicked, this, &KegsBar::stock_taking_wanted);
  row->addWidget(uncounted_, 1);
  row->addWidget(count);
  stock_row_->hide();
  layout()->addWidget(stock_row_);
}

void KegsBar::set_uncounted(int kegs) {
  uncounted_->setText(
      tr("%n keg(s) registered, contents not known yet. Say what is in them now.", nullptr, kegs));
  stock_row_->setVisible(kegs > 1);  // a single one says so in its row
}

void KegsBar::set_counts(const std::vector<std::size_t>& by_filter) {
  for (std::size_t i = 0; i < by_filter.size(); ++i) {
    chips_.at(i)->set_count(static_cast<int>(by_filter[i]));
  }
}

void KegsBar::set_filter(KegFilter filter) {
  for (std::size_t i = 0; i < chips_.size(); ++i) {
    chips_.at(i)->setChecked(all_keg_filters.at(i) == filter);
  }
}

void KegsBar::set_order(KegOrder order) {
  for (QAction* action : orders_->actions()) {
    action->setChecked(action->data().toInt() == static_cast<int>(order));
  }
  order_->setText(tr("Sort: %1").arg(order_name(order)));
  order_->setAccessibleName(order_->text());
  order_->setAccessibleDescription(tr("Opens a menu"));
}

void KegsBar::set_compact(bool on) {
  // Sixty rows need the room.
  layout()->setContentsMargins(space::xl, on ? space::s : space::l, space::l, on ? 0 : space::xs);
  const QSignalBlocker quiet(density_);
  density_->setChecked(on);
  density_->setAccessibleName(tr("Compact rows"));
  density_->setToolTip(on ? tr("Comfortable rows") : tr("Compact rows"));
  draw_icons();
}

void KegsBar::set_panel_shown(bool on) {
  const QSignalBlocker quiet(panel_);
  panel_->setChecked(on);
}

void KegsBar::set_any_kegs(bool any) {
  for (QWidget* part : {static_cast<QWidget*>(search_), chip_row_, static_cast<QWidget*>(order_),
                        static_cast<QWidget*>(density_), static_cast<QWidget*>(panel_),
                        static_cast<QWidget*>(sheet_), static_cast<QWidget*>(transfer_)}) {
    part->setVisible(any);
  }
}

void KegsBar::draw_icons() {
  const QColor ink = theme_of(this).text;
  search_sign_->setIcon(icon(Icon::search, ink));
  order_->setIcon(icon(Icon::chevron_down, ink));
  density_->setIcon(icon(density_->isChecked() ? Icon::comfortable : Icon::compact, ink));
}

void KegsBar::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && search_sign_ != nullptr) draw_icons();
}

}  // namespace ullage::ui
