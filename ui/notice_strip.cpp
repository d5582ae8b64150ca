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
  follow_ = new QPushButton(tr("Show the page"));
  follow_->setObjectName(QStringLiteral("notice_follow"));
  auto* close = new QPushButton(tr("Close"));
  close->setAccessibleName(tr("Close the notice"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(space::l, space::s, space::l, space::s);
  row->addWidget(words_, 1);
  row->addWidget(undo_);
  row->addWidget(follow_);
  row->addWidget(close);
  leaves_.setSingleShot(true);
  leaves_.setInterval(stays_milliseconds);
  connect(&leaves_, &QTimer::timeout, this, &QWidget::hide);
  connect(close, &QPushButton::clicked, this, &QWidget::hide);
  connect(undo_, &QPushButton::clicked, this, [this] {
    hide();
    emit undo_asked();
  });
  connect(follow_, &QPushButton::clicked, this, [this] {
    hide();
    emit followed();
  });
  hide();
}

void NoticeStrip::say(const QString& sentence, bool with_undo) {
  show_words(sentence);
  undo_->setVisible(with_undo);
  follow_->hide();
  leaves_.start();
}

void NoticeStrip::call(const QString& sentence) {
  show_words(sentence);
  undo_->hide();
  follow_->show();
  leaves_.stop();
}

void NoticeStrip::show_words(const QString& sentence) {
  words_->setText(sentence);
  words_->setAccessibleName(sentence);
  show();
}

QString NoticeStrip::sentence() const { return isHidden() ? QString() : words_->text(); }

}  // namespace ullage::ui
