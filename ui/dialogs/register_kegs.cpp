// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/register_kegs.h"

#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/cellar/presets.h"
#include "ui/dialogs/forms/entry_fields.h"
#include "ui/dialogs/forms/hush.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/tag_list_edit.h"

namespace ullage::ui {

using cellar::KegRecord;

RegisterKegs::RegisterKegs(const Context& context, QWidget* parent)
    : QDialog(parent), context_(context) {
  setWindowTitle(tr("Register kegs"));
  setObjectName(QStringLiteral("register_kegs"));
  tags_ = new TagListEdit(context.cellar);
  tags_->setObjectName(QStringLiteral("tags"));
  KegRecord start = cellar::keg_from_preset(shown_kind_);
  const auto status = context_.cellar.status();
  if (!status->places.empty()) start.place = status->places.front().record.place;
  fields_ =
      new EntryFields(context, cellar::Payload(boost::variant2::in_place_type<KegRecord>, start),
                      {"tag", "in_use"});
  source_ = new InkLabel({}, TextRole::small, Ink::secondary);
  source_->setWordWrap(true);
  count_ = new InkLabel({}, TextRole::strong, Ink::accent);
  refusal_ = new Banner(cellar::Severity::warning, {});
  refusal_->setObjectName(QStringLiteral("refusal"));
  refusal_->hide();

  auto* tag_row = new FormSection;
  tag_row->add(tr("&Tags"), tags_, tr("One, several with commas, or a run such as K01..K08."));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  auto* rows = new QWidget;
  auto* column = new QVBoxLayout(rows);
  column->setContentsMargins(0, 0, space::s, 0);
  column->addWidget(tag_row);
  column->addWidget(fields_);
  column->addWidget(source_);
  column->addStretch(1);
  all->addWidget(scrolled(rows), 1);
  never_squeeze(*rows);
  all->addWidget(count_);
  all->addWidget(refusal_);
  auto* buttons = new QDialogButtonBox(this);
  auto* log_it = buttons->addButton(tr("&Register"), QDialogButtonBox::AcceptRole);
  log_it->setObjectName(QStringLiteral("log_it"));
  make_default(log_it);
  buttons->addButton(QDialogButtonBox::Cancel);
  all->addWidget(buttons);
  resize_within_screen(*this, {600, 480});

  connect(fields_, &EntryFields::changed, this, &RegisterKegs::on_kind);
  connect(tags_, &TagListEdit::changed, this, &RegisterKegs::tell_count);
  connect(buttons, &QDialogButtonBox::accepted, this, &RegisterKegs::log);
  connect(buttons, &QDialogButtonBox::rejected, this, &RegisterKegs::reject);
  on_kind();
  tell_count();
  tags_->line_edit()->setFocus();
  drop_shared_mnemonics(*this);
  guard_.watch(*this);
}

RegisterKegs::~RegisterKegs() { hush(*this); }

// Another kind brings its own figures: where they come from, or that none are known.
void RegisterKegs::on_kind() {
  const cellar::Payload payload = fields_->payload();
  const auto& typed = get<KegRecord>(payload);
  if (typed.keg_kind != shown_kind_) {
    shown_kind_ = typed.keg_kind;
    if (cellar::keg_preset(shown_kind_) == nullptr) fields_->open_further(true);
  }
  const cellar::KegPreset* preset = cellar::keg_preset(shown_kind_);
  source_->setText(preset
                       ? tr("Figures from: %1. The stamp on the keg decides.")
                             .arg(QString::fromUtf8(preset->source.data(),
                                                    static_cast<qsizetype>(preset->source.size())))
                       : tr("Fill in what is stamped on the keg."));
}

void RegisterKegs::tell_count() {
  const int count = static_cast<int>(tags_->tags().size());
  count_->setText(count == 0 ? QString() : tr("%n keg(s) will be registered", nullptr, count));
}

cellar::Act RegisterKegs::act() const {
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  const cellar::Payload payload = fields_->payload();
  for (const std::string& tag : tags_->tags()) {
    KegRecord keg = get<KegRecord>(payload);
    keg.keg = context_.cellar.fresh<cellar::KegId>();
    keg.tag = tag;
    act.drafts.push_back(
        {cellar::Payload(boost::variant2::in_place_type<KegRecord>, std::move(keg)),
         context_.cellar.now(),
         {},
         {}});
  }
  return act;
}

bool RegisterKegs::log() {
  tags_->show_fault();
  if (!tags_->fault().isEmpty() || tags_->tags().empty() || fields_->show_faults()) return false;
  const cellar::Act whole = act();
  const cellar::Outcome<cellar::ActId> outcome = context_.cellar.log(whole);
  if (!outcome) {
    QStringList elsewhere;
    for (const cellar::Fault& fault : outcome.error().faults) {
      const QString sentence = q(report::say(fault.why, context_.speaker()));
      if (fault.field == "tag") {
        tags_->set_refusal(sentence);
      } else if (!fields_->refuse(fault.field, sentence)) {
        elsewhere << sentence;
      }
    }
    refusal_->set(cellar::Severity::warning, tr("Not registered yet."),
                  elsewhere.join(QLatin1Char('\n')));
    refusal_->show();
    return false;
  }
  for (const cellar::Draft& draft : whole.drafts) {
    registered_.push_back(get<KegRecord>(draft.payload).keg);
  }
  accept();
  context_.navigator.announce(
      tr("%n keg(s) registered", nullptr, static_cast<int>(registered_.size())), true);
  return true;
}

void RegisterKegs::reject() {
  if (guard_.lets_go(context_, this)) QDialog::reject();
}

}  // namespace ullage::ui
