// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/as_of_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {

AsOfDialog::AsOfDialog(const Context& context, QWidget* parent)
    : QDialog(parent), context_(context) {
  setWindowTitle(tr("The cellar as of a past time"));
  when_ = new WhenEdit(context.cellar);
  when_->setObjectName(QStringLiteral("as_of_time"));
  // What can be typed is read in English.
  when_->set_text(QStringLiteral("yesterday 20:00"));
  recorded_only_ = new QCheckBox(tr("Only what had been &recorded by then"));
  auto* form = new FormSection;
  form->add(tr("&As of"), when_, tr("Such as “24 Nov 18:00” or “Sun 09:00”."));
  form->add_wide(recorded_only_);
  form->add_text(
      tr("Without it: what is known today about that time, later corrections included."));
  auto* buttons = new QDialogButtonBox(this);
  QPushButton* show = buttons->addButton(tr("&Show the sheet"), QDialogButtonBox::AcceptRole);
  make_default(show);
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::m);
  grow_with_contents(*this);
  all->addWidget(form);
  all->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(buttons, &QDialogButtonBox::accepted, this, [this] {
    when_->show_fault();
    if (when_->value()) accept();
  });
}

std::optional<cellar::AsOf> AsOfDialog::as_of() const {
  const std::optional<cellar::Instant> when = when_->value();
  if (!when) return std::nullopt;
  cellar::AsOf as_of{.happened_by = when, .recorded_through = {}};
  if (recorded_only_->isChecked()) {
    std::int64_t last = 0;
    for (const cellar::Entry& entry : context_.cellar.journal().entries()) {
      if (entry.header.recorded_at <= *when) last = std::max(last, entry.header.sequence);
    }
    as_of.recorded_through = last;
  }
  return as_of;
}

}  // namespace ullage::ui
