// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/enum_picker.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>

#include "ui/theme/style.h"

namespace ullage::ui {

namespace {
constexpr qsizetype most_buttons = 4;
}

ChoiceBar::ChoiceBar(const QStringList& words, Look look, QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  if (look == Look::buttons || (look == Look::automatic && words.size() <= most_buttons)) {
    build_buttons(words);
    return;
  }
  combo_ = new QComboBox(this);
  combo_->addItems(words);
  combo_->setCurrentIndex(-1);
  row->addWidget(combo_);
  setFocusProxy(combo_);
  connect(combo_, &QComboBox::currentIndexChanged, this, &ChoiceBar::changed);
}

void ChoiceBar::build_buttons(const QStringList& words) {
  group_ = new QButtonGroup(this);
  group_->setExclusive(true);
  for (int i = 0; i < words.size(); ++i) {
    auto* button = new QPushButton(words.at(i), this);
    button->setCheckable(true);
    button->setAutoDefault(false);
    set_segment(button, words.size() == 1       ? Segment::whole
                        : i == 0                ? Segment::first
                        : i + 1 == words.size() ? Segment::last
                                                : Segment::middle);
    group_->addButton(button, i);
    layout()->addWidget(button);
  }
  static_cast<QHBoxLayout*>(layout())->addStretch(1);
  stop_tab_at_choice();
  connect(group_, &QButtonGroup::idToggled, this, [this](int, bool on) {
    stop_tab_at_choice();
    if (on) emit changed();
  });
}

// Tab comes to what is chosen, arrows go on from there. Qt would stop at the first.
void ChoiceBar::stop_tab_at_choice() {
  QAbstractButton* at = group_->checkedButton() ? group_->checkedButton() : group_->button(0);
  for (QAbstractButton* button : group_->buttons()) {
    button->setFocusPolicy(button == at ? Qt::StrongFocus : Qt::ClickFocus);
  }
  setFocusProxy(at);
}

int ChoiceBar::index() const { return combo_ ? combo_->currentIndex() : group_->checkedId(); }

void ChoiceBar::set_index(int index) {
  if (combo_) {
    combo_->setCurrentIndex(index);
  } else if (auto* button = group_->button(index)) {
    button->setChecked(true);
  } else if (auto* checked = group_->checkedButton()) {
    group_->setExclusive(false);
    checked->setChecked(false);
    group_->setExclusive(true);
    emit changed();
  }
}

void ChoiceBar::set_words(const QStringList& words) {
  for (int i = 0; i < words.size(); ++i) {
    if (combo_) {
      combo_->setItemText(i, words.at(i));
    } else {
      group_->button(i)->setText(words.at(i));
    }
  }
  if (!name_.isEmpty()) set_name(name_);
}

void ChoiceBar::set_name(const QString& name) {
  name_ = name;
  setAccessibleName(name);
  if (combo_) {
    combo_->setAccessibleName(name);
    return;
  }
  for (QAbstractButton* button : group_->buttons()) {
    button->setAccessibleName(name + ": " + button->text().remove('&'));
  }
}

}  // namespace ullage::ui
