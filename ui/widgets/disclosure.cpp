// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/disclosure.h"

#include <QStringList>
#include <QVBoxLayout>

#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {

Disclosure::Disclosure(const QString& word, const QString& about, QWidget* parent)
    : QWidget(parent), word_(word), toggle_(new QToolButton(this)), inside_(new QWidget(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  toggle_->setObjectName("disclosure");
  toggle_->setText(word);
  toggle_->setCheckable(true);
  toggle_->setAutoRaise(true);
  toggle_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  toggle_->setFont(font_of(TextRole::small));
  column->addWidget(toggle_, 0, Qt::AlignLeft);
  lines_ = new QVBoxLayout(inside_);
  lines_->setContentsMargins(space::l, 0, 0, space::xs);
  lines_->setSpacing(3);
  column->addWidget(inside_);
  connect(toggle_, &QToolButton::toggled, this, &Disclosure::show_open);
  set_about(about);
  show_open();
}

void Disclosure::set_about(const QString& about) {
  toggle_->setAccessibleName(about.isEmpty() ? word_ : word_ + QStringLiteral(": ") + about);
}

void Disclosure::set_open(bool open) { toggle_->setChecked(open); }

void Disclosure::set_lines(const QStringList& lines) {
  const std::vector<InkLabel*> labels = keep_count<InkLabel>(*lines_, lines.size(), [this] {
    auto* label = new InkLabel({}, TextRole::small, Ink::secondary, inside_);
    label->setWordWrap(true);
    return label;
  });
  for (qsizetype i = 0; i < lines.size(); ++i) {
    labels[static_cast<std::size_t>(i)]->setText(lines[i]);
  }
  setVisible(!lines.isEmpty());
}

void Disclosure::show_open() {
  const bool open = toggle_->isChecked();
  toggle_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
  inside_->setVisible(open);
  emit opened(open);
}

}  // namespace ullage::ui
