// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/number_pad.h"

#include <QGridLayout>
#include <QPushButton>

#include "ui/theme/theme.h"

namespace ullage::ui {

NumberPad::NumberPad(int side, char decimal_mark, QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("number_pad"));
  setAccessibleName(tr("Number pad"));
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setSpacing(space::s);
  const auto key = [&](const QString& text, const QString& name, int row, int column) {
    auto* button = new QPushButton(text, this);
    button->setObjectName(QStringLiteral("pad_") + name);
    button->setAccessibleName(name);
    button->setFocusPolicy(Qt::NoFocus);
    button->setFont(font_of(TextRole::number));
    button->setFixedSize(side, side);
    grid->addWidget(button, row, column);
    return button;
  };
  sign_ = key(QStringLiteral("±"), tr("change of sign"), 3, 0);
  sign_->setObjectName(QStringLiteral("pad_sign"));
  sign_->hide();
  connect(sign_, &QPushButton::clicked, this, &NumberPad::sign_changed);
  for (int digit = 1; digit <= 9; ++digit) {
    const QString text = QString::number(digit);
    connect(key(text, text, (digit - 1) / 3, 1 + (digit - 1) % 3), &QPushButton::clicked, this,
            [this, text] { emit typed(text); });
  }
  const QString mark = QString(QLatin1Char(decimal_mark));
  connect(key(mark, tr("decimal mark"), 3, 1), &QPushButton::clicked, this,
          [this, mark] { emit typed(mark); });
  connect(key(QStringLiteral("0"), QStringLiteral("0"), 3, 2), &QPushButton::clicked, this,
          [this] { emit typed(QStringLiteral("0")); });
  connect(key(QStringLiteral("⌫"), tr("take back"), 3, 3), &QPushButton::clicked, this,
          &NumberPad::taken_back);
}

void NumberPad::offer_sign(bool offered) { sign_->setVisible(offered); }

}  // namespace ullage::ui
