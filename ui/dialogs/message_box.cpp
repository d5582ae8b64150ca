// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/message_box.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {

namespace {

constexpr int box_width = 460;
constexpr int most_height_of_words = 300;

// A long list of findings is scrolled, by keyboard too, and not cut off by the screen.
QWidget* with_room(QLabel* words, const QString& name, int width) {
  if (words->heightForWidth(width) <= most_height_of_words) return words;
  auto* room = new QScrollArea;
  room->setObjectName(QStringLiteral("long_words"));
  room->setAccessibleName(name);
  room->setFrameShape(QFrame::NoFrame);
  room->setWidgetResizable(true);
  room->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  room->setFocusPolicy(Qt::StrongFocus);
  words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  room->setWidget(words);
  room->setFixedHeight(most_height_of_words);
  return room;
}

}  // namespace

MessageBox::MessageBox(const QString& what, const QString& detail, QWidget* parent)
    : QDialog(parent), column_(new QVBoxLayout(this)), ways_(new QHBoxLayout) {
  setObjectName(QStringLiteral("message_box"));
  setWindowTitle(QCoreApplication::applicationName());
  setAccessibleName(what);
  setAccessibleDescription(detail);
  auto* headline = new InkLabel(what, TextRole::heading, Ink::text, this);
  headline->setWordWrap(true);
  auto* words = new InkLabel(detail, TextRole::body, Ink::secondary, this);
  words->setWordWrap(true);
  words->setTextInteractionFlags(Qt::TextSelectableByMouse);
  words->setFocusPolicy(Qt::NoFocus);
  column_->setContentsMargins(space::xl, space::xl, space::xl, space::l);
  column_->setSpacing(space::s);
  column_->addWidget(headline);
  QWidget* with_words = with_room(words, what, box_width - 2 * space::xl);
  with_words->setVisible(!detail.isEmpty());
  column_->addWidget(with_words);
  column_->addSpacing(space::m);
  ways_->setSpacing(space::s);
  ways_->addStretch(1);
  column_->addLayout(ways_);
  // By the headline, so that a row of long buttons may ask for more.
  headline->setMinimumWidth(box_width - 2 * space::xl);
  grow_with_contents(*this);
}

void MessageBox::add_field(QWidget* field) {
  column_->insertWidget(2, field);
  field->setFocus();
}

void MessageBox::add_way(const QString& words, ButtonRole role) {
  auto* button = new QPushButton(words, this);
  set_role(button, role);
  button->setDefault(added_ == 0);
  ways_->addWidget(button);
  connect(button, &QPushButton::clicked, this, [this, way = added_] {
    if (ready_ && !ready_()) return;
    taken_ = way;
    accept();
  });
  ++added_;
}

QPushButton* MessageBox::add_no_way(const QString& words) {
  auto* button = new QPushButton(words, this);
  // Enter takes the way that has the focus, this one too.
  button->setAutoDefault(true);
  ways_->addWidget(button);
  connect(button, &QPushButton::clicked, this, &QDialog::reject);
  return button;
}

void MessageBox::add_cancel() { add_no_way(tr("Cancel")); }

void MessageBox::add_harmless(const QString& words) { make_default(add_no_way(words)); }

int MessageBox::ask() {
  taken_ = -1;
  exec();
  return taken_;
}

}  // namespace ullage::ui
