// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/entry_form.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/cellar/register.h"
#include "core/report/names.h"
#include "core/units/present.h"
#include "ui/dialogs/forms/entry_fields.h"
#include "ui/dialogs/forms/enum_words.h"
#include "ui/dialogs/forms/faults_shown.h"
#include "ui/dialogs/forms/form_memory.h"
#include "ui/dialogs/forms/form_words.h"
#include "ui/dialogs/forms/hose_pieces.h"
#include "ui/dialogs/forms/hush.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/dialogs/leave_guard.h"
#include "ui/dialogs/lock_guard.h"
#include "ui/dialogs/text_limits.h"
#include "ui/preferences.h"
#include "ui/prompts.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/tag_list_edit.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {
namespace {

constexpr int settle_milliseconds = 250;

}  // namespace

EntryForm::EntryForm(const Context& context, const cellar::SuggestedTask& task, QWidget* parent)
    : QDialog(parent), context_(context), spec_(*form_spec(task.kind)), corrects_(task.corrects) {
  const QString title = regional(form_words(spec_.title), context_.preferences.words());
  setWindowTitle(corrects_             ? tr("Correct: %1").arg(title)
                 : changes_known(task) ? tr("Change: %1").arg(title)
                                       : title);
  setObjectName(QStringLiteral("form_") + QString::fromUtf8(spec_.kind.data()));
  settle_.setSingleShot(true);
  settle_.setInterval(settle_milliseconds);
  connect(&settle_, &QTimer::timeout, this, [this] {
    check_quietly();
    tell_consequences();
  });
  build(task);
  settle_.start();
}

EntryForm::~EntryForm() { hush(*this); }

// Of a thing that is registered: what is typed is a change of it from then on.
bool EntryForm::changes_known(const cellar::SuggestedTask& task) const {
  const auto about = task.prefill ? cellar::registers(*task.prefill) : std::nullopt;
  return about && !context_.cellar.journal().story(*about).empty();
}

cellar::Payload EntryForm::starting_payload(const cellar::SuggestedTask& task) const {
  if (task.prefill) return *task.prefill;
  cellar::Payload payload = present(cellar::make_payload(task.kind));
  auto last = task.about ? last_of_kind(context_.cellar.journal(), task.kind, task.about)
                         : std::optional<cellar::Payload>();
  if (!last) last = last_of_kind(context_.cellar.journal(), task.kind, {});
  if (last) remember(payload, *last, spec_);
  if (task.about) make_about(payload, *task.about);
  return payload;
}

void EntryForm::build(const cellar::SuggestedTask& task) {
  const cellar::Payload start = starting_payload(task);
  auto* inside = new QWidget;
  auto* all = new QVBoxLayout(inside);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  if (spec_.weight != CautionWeight::none) {
    all->addWidget(new Caution(regional(form_words(spec_.caution), context_.preferences.words()),
                               spec_.weight == CautionWeight::danger ? Caution::Weight::danger
                                                                     : Caution::Weight::caution));
  }
  fields_ = new EntryFields(context_, start, {},
                            corrects_ ? EntryFields::Start::as_given : EntryFields::Start::fresh);
  connect(fields_, &EntryFields::changed, this, &EntryForm::on_changed);
  all->addWidget(fields_);
  if (!corrects_) add_pieces(*all, start);
  if (!corrects_) add_vent(*all, task);
  add_ending(*all);
  all->addStretch(1);

  auto* scroll = scrolled(inside);
  never_squeeze(*inside);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scroll, 1);  // before the buttons, so that Tab comes to them last

  auto* buttons = new QDialogButtonBox(this);
  log_ = buttons->addButton(corrects_ ? tr("&Log the correction") : tr("&Log it"),
                            QDialogButtonBox::AcceptRole);
  log_->setObjectName(QStringLiteral("log_it"));
  make_default(log_);
  buttons->addButton(QDialogButtonBox::Cancel);
  connect(buttons, &QDialogButtonBox::accepted, this, &EntryForm::log);
  connect(buttons, &QDialogButtonBox::rejected, this, &EntryForm::reject);
  auto* foot = new QVBoxLayout;
  foot->setContentsMargins(space::xl, space::s, space::xl, space::l);
  refusal_ = new Banner(cellar::Severity::warning, {});
  refusal_->setObjectName(QStringLiteral("refusal"));
  refusal_->hide();
  foot->addWidget(refusal_);
  foot->addWidget(buttons);

  whole->addLayout(foot);
  inside->adjustSize();
  resize_within_screen(*this, {std::max(640, scroll->minimumWidth()),
                               std::min(760, inside->sizeHint().height() + 110)});
  drop_shared_mnemonics(*this);
  fields_->focus_first();
}

void EntryForm::add_pieces(QVBoxLayout& all, const cellar::Payload& start) {
  const auto* line = get_if<cellar::LineRecord>(&start);
  if (!line) return;
  pieces_ = new HosePieces(context_, line->line, [this] {
    const cellar::Payload typed = payload();
    cellar::SegmentRecord whole;
    if (const auto* l = get_if<cellar::LineRecord>(&typed)) {
      whole.length = l->length.value_or(whole.length);
      whole.bore = l->bore.value_or(whole.bore);
      whole.rise = l->rise;
      whole.material = l->material;
    }
    return whole;
  });
  connect(pieces_, &HosePieces::changed, this, &EntryForm::on_changed);
  all.addWidget(pieces_);
}

void EntryForm::add_vent(QVBoxLayout& all, const cellar::SuggestedTask& task) {
  if (task.kind != cellar::GasSet::kind) return;
  vented_ = new QCheckBox(tr("Vented down to it"));
  vented_->setObjectName(QStringLiteral("vented_down_to_it"));
  vented_->setChecked(task.vent_to_it);
  connect(vented_, &QCheckBox::toggled, this, &EntryForm::on_changed);
  all.addWidget(vented_);
}

void EntryForm::add_ending(QVBoxLayout& all) {
  when_ = new WhenEdit(context_.cellar);
  when_->setObjectName(QStringLiteral("when"));
  by_ = new TextEdit(initials_limit());
  by_->setObjectName(QStringLiteral("by"));
  by_->set_value(s(context_.preferences.initials()));
  note_ = new TextEdit(remark_limit());
  note_->setObjectName(QStringLiteral("note"));
  auto* section = new FormSection;
  if (!corrects_ && done_to_several(spec_.kind)) {
    also_ = new TagListEdit(context_.cellar, TagListEdit::Of::registered_kegs);
    also_->setObjectName(QStringLiteral("also_kegs"));
    section->add(tr("And of kegs"), also_, tr("The same of these, too: all in one act."));
    connect(also_, &TagListEdit::changed, this, &EntryForm::on_changed);
  }
  section->add(tr("&When"), when_);
  section->add(tr("By"), by_, tr("Initials."));
  section->add(tr("Remark"), note_);
  if (corrects_) {
    const cellar::Entry* entry = context_.cellar.journal().find(*corrects_);
    when_->set_value(entry->header.happened_at);
    note_->set_value(entry->header.note);
    reason_ = new TextEdit(reason_limit());
    reason_->setObjectName(QStringLiteral("reason_of_correction"));
    reason_->set_required(true);
    section->add(tr("Why &corrected"), reason_, tr("Both versions stay readable in the log."));
  }
  all.addWidget(section);
  consequence_ = new InkLabel({}, TextRole::body, Ink::secondary);
  consequence_->setWordWrap(true);
  consequence_->setObjectName(QStringLiteral("consequence"));
  warning_ = new Banner(cellar::Severity::warning, {});
  warning_->setObjectName(QStringLiteral("warning"));
  warning_->hide();
  all.addWidget(warning_);
  all.addWidget(consequence_);
  connect(when_, &WhenEdit::changed, this, &EntryForm::on_changed);
  connect(note_, &TextEdit::changed, this, [this] { touched_ = true; });
  connect(&context_.preferences, &Preferences::changed, &settle_, qOverload<>(&QTimer::start));
}

void EntryForm::on_changed() {
  touched_ = true;
  refusal_->hide();
  settle_.start();
}

cellar::Payload EntryForm::payload() const { return fields_->payload(); }

cellar::Act EntryForm::act() const {
  cellar::Draft draft{
      payload(), when_->value().value_or(context_.cellar.now()), note_->value(), {}};
  cellar::Act whole{{std::move(draft)}, by_->value()};
  const cellar::Instant at = whole.drafts.front().happened_at;
  if (vented_ && vented_->isChecked()) {
    // After the gas was turned down: before, the keg would have filled up again.
    const auto& gas = get<cellar::GasSet>(whole.drafts.front().payload);
    whole.drafts.push_back({cellar::Payload(cellar::Vented{gas.keg, gas.pressure}), at, {}, {}});
  }
  if (also_) add_to_others(whole);
  if (!pieces_) return whole;
  for (cellar::SegmentRecord& piece : pieces_->changes())
    whole.drafts.push_back({cellar::Payload(std::move(piece)), at, {}, {}});
  return whole;
}

// The same entries once more for each further keg, those above apart.
void EntryForm::add_to_others(cellar::Act& whole) const {
  const std::vector<cellar::Draft> of_one = whole.drafts;
  const auto first = main_subject(of_one.front().payload);
  for (const cellar::KegId keg : also_->kegs()) {
    if (first == cellar::subject(keg)) continue;
    for (cellar::Draft draft : of_one) {
      make_about(draft.payload, cellar::subject(keg));
      whole.drafts.push_back(std::move(draft));
    }
  }
}

void EntryForm::check_quietly() {
  for (const cellar::Fault& fault : context_.cellar.check(act())) {
    if (fault.draft > 0) continue;  // a piece that is not filled in yet
    fields_->refuse_typed(fault.field, q(report::say(fault.why, context_.speaker())));
  }
}

void EntryForm::tell_consequences() {
  warning_->hide();
  consequence_->clear();
  const cellar::Act would = act();
  if (const auto* pour = get_if<cellar::TimedPour>(&would.drafts.front().payload)) {
    const auto status = context_.cellar.status();
    const cellar::LineStatus* line = status->find(pour->line);
    if (line && line->do_not_serve() && !line->advice.empty()) warn(line->advice.front());
  }
  const std::optional<cellar::SubjectRef> about = main_subject(would.drafts.front().payload);
  if (corrects_ || !about || about->kind != cellar::SubjectKind::keg) return;
  if (!fields_->complete() || !context_.cellar.check(would).empty()) return;
  const std::optional<cellar::KegStatus> after =
      context_.cellar.preview(would, cellar::KegId{about->uuid});
  if (!after) return;
  const report::Speaker speaker = context_.speaker();
  QString words =
      tr("%1 will be: %2").arg(q(after->record.tag), q(report::say(after->state, speaker)));
  if (after->next_step) words += QStringLiteral(" – ") + q(report::say(*after->next_step, speaker));
  consequence_->setText(words);
  const auto worst =
      std::find_if(after->advice.begin(), after->advice.end(),
                   [](const auto& advice) { return advice.severity >= cellar::Severity::warning; });
  if (worst != after->advice.end()) warn(*worst);
}

void EntryForm::warn(const cellar::Advice& advice) {
  const report::Speaker speaker = context_.speaker();
  warning_->set(advice.severity, q(report::say(advice.headline, speaker)),
                advice.detail ? q(report::say(*advice.detail, speaker)) : QString());
  warning_->show();
}

bool EntryForm::show_all_faults() {
  const bool in_fields = fields_->show_faults();
  const bool in_pieces = pieces_ && pieces_->show_faults();
  return faults_shown(in_fields || in_pieces, also_, when_, by_, note_, reason_);
}

cellar::Outcome<cellar::ActId> EntryForm::send(const cellar::Act& what) {
  if (!corrects_) return context_.cellar.log(what);
  return context_.cellar.correct(*corrects_, what.drafts.front(), reason_->value(), what.by);
}

bool EntryForm::log() {
  if (show_all_faults()) return false;
  if (corrects_ && !may_correct(context_, this, *corrects_, act().drafts.front())) return false;
  const cellar::Outcome<cellar::ActId> outcome = send(act());
  if (!outcome) {
    show_refusal(outcome.error());
    return false;
  }
  touched_ = false;
  if (!by_->value().empty()) context_.preferences.set_initials(q(by_->value()));
  const QString words =
      q(report::say_entry(payload(), *context_.cellar.status(), context_.speaker()));
  const auto others = also_ ? static_cast<int>(also_->kegs().size()) : 0;
  context_.navigator.announce(
      others > 0 ? tr("Logged, and of %n more keg(s): %1", nullptr, others).arg(words)
                 : tr("Logged: %1").arg(words),
      true);
  emit logged(*outcome);
  accept();
  return true;
}

// Which keg a further draft is about.
QString EntryForm::name_of_draft(std::size_t at) const {
  const cellar::Act whole = act();
  const auto about = main_subject(whole.drafts.at(at).payload);
  return about ? q(report::name_of(*about, *context_.cellar.status())) : QString();
}

void EntryForm::show_refusal(const cellar::Refusal& refusal) {
  QStringList elsewhere;
  bool first = true;
  for (const cellar::Fault& fault : refusal.faults) {
    const QString sentence = q(report::say(fault.why, context_.speaker()));
    if (pieces_ && fault.draft > 0) {
      pieces_->refuse(fault.draft - 1, fault.field, sentence);
      continue;
    }
    if (fault.draft > 0) {
      elsewhere << tr("%1: %2").arg(name_of_draft(fault.draft), sentence);
      continue;
    }
    if (fields_->refuse(fault.field, sentence, first)) {
      first = false;
      continue;
    }
    if (fault.field == "happened_at") {
      when_->set_refusal(sentence);
    } else {
      elsewhere << sentence;
    }
  }
  refusal_->set(cellar::Severity::warning, tr("Not logged yet. What you typed is still here."),
                elsewhere.join(QLatin1Char('\n')));
  refusal_->show();
}

QString EntryForm::refusal() const {
  return refusal_->isHidden() ? QString() : refusal_->headline();
}

void EntryForm::reject() {
  if (!touched_ || LeaveGuard::ask(context_, this)) QDialog::reject();
}

}  // namespace ullage::ui
