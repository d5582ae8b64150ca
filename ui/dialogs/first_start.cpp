// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/first_start.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/theme/icons.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

namespace {
constexpr int start_width = 440;
constexpr int start_picture_side = 48;
}  // namespace

FirstStart::FirstStart(QWidget* parent) : QDialog(parent) {
  setObjectName(QStringLiteral("first_start"));
  setWindowTitle(tr("Ullage"));
  auto* picture = new QLabel(this);
  picture->setPixmap(icon(Icon::ullage, theme_of(this).accent)
                         .pixmap(QSize(start_picture_side, start_picture_side)));
  auto* sentence = new InkLabel(
      tr("Keeps track of your kegs: what is in them, when it is ready, what to do next."),
      TextRole::body, Ink::secondary, this);
  sentence->setWordWrap(true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(space::xxl, space::xxl, space::xxl, space::xxl);
  column->setSpacing(space::xs);
  column->addWidget(picture);
  column->addSpacing(space::s);
  column->addWidget(new InkLabel(tr("Welcome to Ullage"), TextRole::title, Ink::text, this));
  column->addWidget(sentence);
  add_way(column, QStringLiteral("start_create"), tr("&New cellar…"),
          tr("One file on your disk holds it. Nothing leaves this machine."), Choice::create, true);
  add_way(column, QStringLiteral("start_open"), tr("&Open a cellar…"),
          tr("A .cellar file you or somebody else made."), Choice::open, false);
  add_way(column, QStringLiteral("start_demo"), tr("Look at the &demo"),
          tr("An invented cellar in full swing, to try things out. It is not kept."), Choice::demo,
          false);
  setFixedWidth(start_width);
}

void FirstStart::add_way(QVBoxLayout* column, const QString& name, const QString& text,
                         const QString& what, Choice choice, bool first) {
  auto* button = new QPushButton(text, this);
  button->setObjectName(name);
  button->setAccessibleDescription(what);
  button->setDefault(first);
  if (first) set_role(button, ButtonRole::primary);
  auto* below = new InkLabel(what, TextRole::small, Ink::secondary, this);
  below->setWordWrap(true);
  column->addSpacing(space::l);
  column->addWidget(button);
  column->addWidget(below);
  connect(button, &QPushButton::clicked, this, [this, choice] {
    choice_ = choice;
    accept();
  });
}

}  // namespace ullage::ui
