// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/leave_guard.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QCoreApplication>
#include <QLineEdit>

#include "ui/context.h"
#include "ui/prompts.h"

namespace ullage::ui {

namespace {

struct LeaveText {
  Q_DECLARE_TR_FUNCTIONS(LeaveText)
};

}  // namespace

void LeaveGuard::watch(QWidget& inside) {
  const auto touch = [this] { touched_ = true; };
  for (QLineEdit* edit : inside.findChildren<QLineEdit*>()) {
    connect(edit, &QLineEdit::textEdited, this, touch);
  }
  for (QComboBox* box : inside.findChildren<QComboBox*>()) {
    connect(box, &QComboBox::activated, this, touch);
  }
  for (QAbstractButton* button : inside.findChildren<QAbstractButton*>()) {
    // Opening what is folded changes nothing.
    if (button->objectName() == QLatin1String("disclosure")) continue;
    if (button->isCheckable()) connect(button, &QAbstractButton::clicked, this, touch);
  }
}

bool LeaveGuard::lets_go(const Context& context, QWidget* dialog) const {
  return !touched_ || ask(context, dialog);
}

bool LeaveGuard::ask(const Context& context, QWidget* dialog) {
  return context.prompts.confirm_risk(dialog, LeaveText::tr("Leave without logging?"),
                                      LeaveText::tr("What you typed would be lost."),
                                      LeaveText::tr("Leave"), LeaveText::tr("Go on typing"));
}

}  // namespace ullage::ui
