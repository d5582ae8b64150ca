// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/notice_strip.h"

#include <QHBoxLayout>
#include <QPushButton>

#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr int stays_milliseconds = 12000;

}  // namespace

NoticeStrip::NoticeStrip(QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("notice"));
  words_ = new InkLabel({}, TextRole::body);
  words_->setObjectName(QStringLiteral("notice_words"));
  undo_ = new QPushButton(tr("&Undo"));
  undo_->setObjectName(QStringLiteral("notice_undo"));
  auto* close = new QPushButton(tr("Close"));
  close->setAccessibleName(tr("Close the notice"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(space::l, space::s, space::l, space::s);
  row->addWidget(words_, 1);
  row->addWidget(undo_);
  row->addWidget(close);
  leaves_.setSingleShot(true);
  leaves_.setInterval(stays_milliseconds);
  connect(&leaves_, &QTimer::timeout, this, &QWidget::hide);
  connect(close, &QPushButton::clicked, this, &QWidget::hide);
  connect(undo_, &QPushButton::clicked, this, [this] {
    hide();
    emit undo_asked();
  });
  hide();
}

void NoticeStrip::say(const QString& sentence, bool with_undo) {
  words_->setText(sentence);
  words_->setAccessibleName(sentence);
  undo_->setVisible(with_undo);
  show();
  leaves_.start();
}

QString NoticeStrip::sentence() const { return isHidden() ? QString() : words_->text(); }

}  // namespace ullage::ui
