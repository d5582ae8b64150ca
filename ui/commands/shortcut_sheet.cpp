// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/shortcut_sheet.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QKeySequence>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/commands/commands.h"
#include "ui/theme/theme.h"
#include "ui/widgets/chip.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {

namespace {

constexpr QSize sheet_size(460, 560);

QString plain(const QString& text) {
  return QString(text).remove(QLatin1Char('&')).remove(QStringLiteral("…"));
}

QString what_it_does(const CommandSpec& spec) {
  return *spec.does ? does_of(spec) : plain(text_of(spec));
}

}  // namespace

ShortcutSheet::ShortcutSheet(QWidget* parent) : QDialog(parent) {
  setObjectName(QStringLiteral("shortcut_sheet"));
  setWindowTitle(tr("Shortcuts"));
  auto* inside = new QWidget(this);
  auto* grid = new QGridLayout(inside);
  grid->setContentsMargins(space::xl, space::xl, space::xl, space::m);
  grid->setHorizontalSpacing(space::l);
  grid->setVerticalSpacing(space::xs);
  grid->setColumnStretch(1, 1);
  int row = 0;
  const auto add_row = [&](const QString& keys, const QString& does) {
    grid->addWidget(new Pill(keys, Pill::Tone::plain, inside), row, 0, Qt::AlignLeft);
    grid->addWidget(new InkLabel(does, TextRole::body, Ink::text, inside), row++, 1);
  };
  for (const Menu menu : {Menu::cellar, Menu::edit, Menu::log, Menu::the_register, Menu::paper,
                          Menu::view, Menu::help}) {
    bool headed = false;
    for (const CommandSpec& spec : commands()) {
      if (spec.menu != menu || !*spec.shortcut) continue;
      if (!headed) {
        if (row > 0) grid->setRowMinimumHeight(row++, space::s);
        grid->addWidget(new InkLabel(plain(title_of(menu)), TextRole::heading, Ink::text, inside),
                        row++, 0, 1, 2);
        headed = true;
      }
      const QKeySequence keys(QString::fromLatin1(spec.shortcut), QKeySequence::PortableText);
      add_row(keys.toString(QKeySequence::NativeText), what_it_does(spec));
    }
  }
  grid->setRowMinimumHeight(row++, space::s);
  grid->addWidget(new InkLabel(tr("In the table of kegs"), TextRole::heading, Ink::text, inside),
                  row++, 0, 1, 2);
  add_row(tr("Enter"), tr("All about the chosen keg"));
  add_row(tr("Space"), tr("Why its numbers are what they are"));
  add_row(tr("A letter"), tr("Find a keg by tag, beer, state or place"));
  grid->setRowStretch(row, 1);
  auto* scroll = new QScrollArea(this);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setWidget(inside);
  scroll->setAccessibleName(tr("Shortcuts"));
  auto* buttons = new QDialogButtonBox(this);
  buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(scroll, 1);
  buttons->setContentsMargins(space::xl, 0, space::xl, space::l);
  column->addWidget(buttons);
  resize_within_screen(*this, sheet_size);
}

}  // namespace ullage::ui
