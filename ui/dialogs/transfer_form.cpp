// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/transfer_form.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/units/present.h"
#include "ui/dialogs/forms/entry_fields.h"
#include "ui/dialogs/forms/faults_shown.h"
#include "ui/dialogs/forms/form_memory.h"
#include "ui/dialogs/forms/hush.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/dialogs/leave_guard.h"
#include "ui/dialogs/text_limits.h"
#include "ui/dialogs/transfer_gravity.h"
#include "ui/dialogs/transfer_step.h"
#include "ui/preferences.h"
#include "ui/prompts.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {
namespace {

using namespace cellar;

enum GasWay { way_burst, way_set_and_wait, way_sugar, way_none };

constexpr int settle_milliseconds = 250;

// Seals that somebody only looked at were not lubricated.
bool is_the_step(const PreparationStep& found) {
  return !found.result || found.result->key != MessageKey::step_looked_over;
}

// A payload of the kind with the settings used the last time.
template <class P>
Payload as_last_time(const Journal& journal) {
  Payload payload = P{};
  const std::string_view kind = P::kind;
  if (const auto last = last_of_kind(journal, kind, {})) remember(payload, *last, *form_spec(kind));
  return payload;
}

}  // namespace

struct TransferForm::Parts {
  KegPicker* keg = nullptr;
  BatchPicker* batch = nullptr;
  TransferStep *gravity = nullptr, *held = nullptr, *cleaned = nullptr, *sanitised = nullptr,
               *seals = nullptr, *purged = nullptr, *filled = nullptr, *gas = nullptr,
               *sugar = nullptr, *lid = nullptr;
  ChoiceBar* gas_way = nullptr;
  WhenEdit* when = nullptr;
  TextEdit* by = nullptr;
  TextEdit* note = nullptr;
  InkLabel* outlook = nullptr;
  Banner* warning = nullptr;
  Banner* refusal = nullptr;
};

TransferForm::TransferForm(const Context& context, std::optional<KegId> keg, QWidget* parent)
    : QDialog(parent), context_(context), parts_(std::make_unique<Parts>()) {
  setWindowTitle(tr("Log a transfer"));
  setObjectName(QStringLiteral("transfer_form"));
  settle_.setSingleShot(true);
  settle_.setInterval(settle_milliseconds);
  connect(&settle_, &QTimer::timeout, this, &TransferForm::tell_outlook);
  build();
  if (keg) choose_keg(*keg);
  on_gas_way();
  touched_ = false;
}

TransferForm::~TransferForm() { hush(*this); }

void TransferForm::build() {
  auto* inside = new QWidget;
  auto* all = new QVBoxLayout(inside);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::s);
  all->addWidget(build_subject());
  build_steps(*all);
  all->addWidget(build_ending());
  all->addStretch(1);
  auto* scroll = scrolled(inside);
  never_squeeze(*inside);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scroll, 1);
  whole->addWidget(build_foot());
  drop_shared_mnemonics(*this);
  resize_within_screen(*this, {std::max(720, scroll->minimumWidth()), 760});
}

QWidget* TransferForm::build_subject() {
  parts_->keg = new KegPicker(context_);
  parts_->keg->setObjectName(QStringLiteral("transfer_keg"));
  parts_->keg->set_required(true);
  parts_->batch = new BatchPicker(context_);
  parts_->batch->setObjectName(QStringLiteral("transfer_batch"));
  parts_->batch->set_required(true);
  parts_->batch->set_add(tr("New batch…"));
  auto* section = new FormSection;
  section->add(tr("Into &keg"), parts_->keg);
  section->add(tr("From &batch"), parts_->batch);
  connect(parts_->keg, &KegPicker::changed, this, &TransferForm::on_keg);
  connect(parts_->batch, &BatchPicker::changed, this, &TransferForm::on_batch);
  connect(parts_->batch, &BatchPicker::add_asked, this, [this](const QString& typed) {
    BatchRecord batch{.batch = context_.cellar.fresh<BatchId>()};
    batch.name = s(typed);
    const BatchId id = batch.batch;
    context_.navigator.open_task({"batch_record", {}, Payload(batch), {}});
    if (parts_->batch->offers(id.uuid)) choose_batch(id);
  });
  return section;
}

void TransferForm::build_steps(QVBoxLayout& all) {
  using Need = TransferStep::Need;
  const Journal& journal = context_.cellar.journal();
  int number = 0;
  const auto step = [&](const QString& title, const Payload& start, Need need,
                        std::set<std::string> left_out = {}) {
    auto* made = new TransferStep(context_, ++number, title, start, need, std::move(left_out));
    connect(made, &TransferStep::changed, this, &TransferForm::on_changed);
    all.addWidget(made);
    return made;
  };
  GravityRead gravity;
  gravity.stage = GravityStage::final;
  parts_->gravity = step(tr("Gravity checked"), gravity, Need::optional_step);
  parts_->held =
      step(tr("Keg holds pressure"), as_last_time<HoldReading>(journal), Need::optional_step);
  parts_->cleaned = step(tr("Cleaned"), as_last_time<Cleaned>(journal), Need::optional_step);
  parts_->cleaned->set_caution(
      tr("Vent before opening. Gloves and goggles. Never acid with chlorine."));
  const bool american = context_.preferences.words() == report::RegionalWords::us;
  parts_->sanitised = step(american ? tr("Sanitized") : tr("Sanitised"),
                           as_last_time<Sanitised>(journal), Need::optional_step);
  Inspected seals;
  seals.seals_lubricated = true;
  parts_->seals = step(tr("Seals lubricated"), seals, Need::optional_step);
  parts_->purged = step(tr("Purged of air"), as_last_time<Purged>(journal), Need::optional_step);
  parts_->filled = step(tr("Filled"), as_last_time<Filled>(journal), Need::always);
  parts_->filled->set_caution(tr("Never push beer with gas out of glass: it can burst."));
  parts_->gas_way =
      new ChoiceBar({tr("Short burst"), tr("Set and wait"), tr("Sugar"), tr("No gas yet")});
  const QString how = tr("How it is carbonated");
  parts_->gas_way->set_name(how);
  parts_->gas_way->setObjectName(QStringLiteral("gas_way"));
  parts_->gas_way->set_index(way_set_and_wait);
  connect(parts_->gas_way, &ChoiceBar::changed, this, &TransferForm::on_gas_way);
  all.addSpacing(space::s);
  all.addWidget(new InkLabel(how, TextRole::strong));
  all.addWidget(parts_->gas_way);
  parts_->gas = step(tr("Gas set"), as_last_time<GasSet>(journal), Need::always);
  parts_->sugar =
      new TransferStep(context_, number, tr("Primed"), as_last_time<Primed>(journal), Need::always);
  connect(parts_->sugar, &TransferStep::changed, this, &TransferForm::on_changed);
  all.addWidget(parts_->sugar);
  LeakTested lid;
  lid.where = "lid and posts";
  // It is this keg that is looked at, whatever else can leak.
  parts_->lid =
      step(tr("Lid seated, no bubbles"), lid, Need::optional_step, {"line", "regulator", "bottle"});
}

QWidget* TransferForm::build_ending() {
  parts_->when = new WhenEdit(context_.cellar);
  parts_->when->setObjectName(QStringLiteral("when"));
  parts_->by = new TextEdit(initials_limit());
  parts_->by->setObjectName(QStringLiteral("by"));
  parts_->by->set_value(s(context_.preferences.initials()));
  parts_->note = new TextEdit(remark_limit());
  parts_->note->setObjectName(QStringLiteral("note"));
  auto* section = new FormSection;
  section->add(tr("&When"), parts_->when);
  section->add(tr("By"), parts_->by, tr("Initials."));
  section->add(tr("Remark"), parts_->note);
  connect(parts_->when, &WhenEdit::changed, this, &TransferForm::on_changed);
  connect(parts_->note, &TextEdit::changed, this, [this] { touched_ = true; });
  connect(&context_.preferences, &Preferences::changed, &settle_, qOverload<>(&QTimer::start));
  return section;
}

QWidget* TransferForm::build_foot() {
  auto* foot = new QWidget(this);
  auto* all = new QVBoxLayout(foot);
  all->setContentsMargins(space::xl, space::s, space::xl, space::l);
  parts_->outlook = new InkLabel({}, TextRole::heading, Ink::accent);
  parts_->outlook->setObjectName(QStringLiteral("outlook"));
  parts_->outlook->setWordWrap(true);
  parts_->warning = new Banner(Severity::warning, {});
  parts_->warning->hide();
  parts_->refusal = new Banner(Severity::warning, {});
  parts_->refusal->setObjectName(QStringLiteral("refusal"));
  parts_->refusal->hide();
  auto* buttons = new QDialogButtonBox(foot);
  auto* log_it = buttons->addButton(tr("&Log the transfer"), QDialogButtonBox::AcceptRole);
  log_it->setObjectName(QStringLiteral("log_it"));
  make_default(log_it);
  buttons->addButton(QDialogButtonBox::Cancel);
  connect(buttons, &QDialogButtonBox::accepted, this, &TransferForm::log);
  connect(buttons, &QDialogButtonBox::rejected, this, &TransferForm::reject);
  all->addWidget(parts_->warning);
  all->addWidget(parts_->outlook);
  all->addWidget(parts_->refusal);
  all->addWidget(buttons);
  return foot;
}

std::vector<TransferStep*> TransferForm::steps() const {
  std::vector<TransferStep*> all = {parts_->gravity,   parts_->held,  parts_->cleaned,
                                    parts_->sanitised, parts_->seals, parts_->purged,
                                    parts_->filled};
  const int way = parts_->gas_way->index();
  if (way == way_burst || way == way_set_and_wait) all.push_back(parts_->gas);
  if (way == way_sugar) all.push_back(parts_->sugar);
  all.push_back(parts_->lid);
  return all;
}

std::vector<TransferStep*> TransferForm::logging() const {
  std::vector<TransferStep*> now = steps();
  std::erase_if(now, [](const TransferStep* step) { return !step->logs_now(); });
  return now;
}

void TransferForm::choose_keg(KegId keg) {
  parts_->keg->set_value(keg);
  on_keg();
}

void TransferForm::choose_batch(BatchId batch) {
  parts_->batch->set_value(batch);
  on_batch();
}

void TransferForm::on_keg() {
  const std::optional<KegId> keg = parts_->keg->value();
  const auto all = context_.cellar.status();
  const KegStatus* status = keg ? all->find(*keg) : nullptr;
  for (TransferStep* step :
       {parts_->held, parts_->cleaned, parts_->sanitised, parts_->seals, parts_->purged,
        parts_->filled, parts_->gas, parts_->sugar, parts_->lid}) {
    if (keg) step->set_subject(subject(*keg));
    const PreparationStep* found = nullptr;
    if (status) {
      const auto at = std::find_if(
          status->preparation.begin(), status->preparation.end(),
          [&](const PreparationStep& p) { return p.kind == step->fields().spec().kind; });
      if (at != status->preparation.end() && is_the_step(*at)) found = &*at;
    }
    if (step != parts_->lid) step->set_found(found);
  }
  on_changed();
}

void TransferForm::on_batch() {
  if (const std::optional<BatchId> batch = parts_->batch->value()) {
    const BatchGravity known = gravity_of(*batch, context_.cellar.journal());
    parts_->gravity->set_found(known.read ? &*known.read : nullptr);
    parts_->gravity->set_subject(subject(*batch));
    parts_->filled->set_subject(subject(*batch));
  }
  on_changed();
}

void TransferForm::on_gas_way() {
  const int way = parts_->gas_way->index();
  parts_->gas->setVisible(way == way_burst || way == way_set_and_wait);
  parts_->sugar->setVisible(way == way_sugar);
  if (way == way_burst || way == way_set_and_wait) {
    Payload payload = parts_->gas->fields().payload();
    auto& gas = get<GasSet>(payload);
    gas.purpose = way == way_burst ? GasPurpose::burst : GasPurpose::set_and_wait;
    parts_->gas->fields().set_payload(payload);
  }
  on_changed();
}

void TransferForm::on_changed() {
  touched_ = true;
  parts_->refusal->hide();
  settle_.start();
}

Act TransferForm::act() const {
  Act act;
  act.by = parts_->by->value();
  const Instant at = parts_->when->value().value_or(context_.cellar.now());
  for (auto* step : logging()) act.drafts.push_back({step->fields().payload(), at, {}, {}});
  const auto filled = std::find_if(act.drafts.begin(), act.drafts.end(), [](const Draft& d) {
    return holds_alternative<Filled>(d.payload);
  });
  if (filled != act.drafts.end()) filled->note = parts_->note->value();
  return act;
}

void TransferForm::tell_gravity() {
  const std::optional<BatchId> batch = parts_->batch->value();
  if (!batch) return parts_->gravity->set_outcome({});
  BatchGravity known = gravity_of(*batch, context_.cellar.journal());
  const EntryFields& typed = parts_->gravity->fields();
  if (parts_->gravity->logs_now() && !typed.blank("gravity_sg"))
    known.now = get<GravityRead>(typed.payload()).gravity;
  parts_->gravity->set_outcome(fermented_words(known, context_.printer()));
}

void TransferForm::tell_outlook() {
  tell_gravity();
  parts_->warning->hide();
  parts_->outlook->clear();
  if (!complete() || !context_.cellar.check(act()).empty()) return;
  const std::optional<KegStatus> after =
      context_.cellar.preview(act(), present(parts_->keg->value()));
  if (!after) return;
  const report::Speaker speaker = context_.speaker();
  parts_->outlook->setText(q(report::say(after->readiness.headline, speaker)));
  for (const PreparationStep& step : after->preparation) {
    if (step.kind == "purged" && parts_->purged->logs_now() && step.result) {
      parts_->purged->set_outcome(q(report::say(*step.result, speaker)));
    }
  }
  const auto worst = std::find_if(after->advice.begin(), after->advice.end(),
                                  [](const Advice& a) { return a.severity >= Severity::warning; });
  if (worst == after->advice.end()) return;
  parts_->warning->set(worst->severity, q(report::say(worst->headline, speaker)));
  parts_->warning->show();
}

bool TransferForm::complete() const {
  return parts_->keg->value() && parts_->batch->value() &&
         std::ranges::all_of(logging(), [](auto* step) { return step->fields().complete(); });
}

QString TransferForm::outlook() const { return parts_->outlook->text(); }

bool TransferForm::show_faults() {
  bool any = faults_shown(false, parts_->keg, parts_->batch);
  for (TransferStep* step : logging()) any = step->fields().show_faults(!any) || any;
  return faults_shown(any, parts_->when, parts_->by, parts_->note);
}

bool TransferForm::log() {
  if (show_faults()) return false;
  const Act whole = act();
  const Outcome<ActId> outcome = context_.cellar.log(whole);
  if (!outcome) {
    show_refusal(outcome.error());
    return false;
  }
  touched_ = false;
  if (!whole.by.empty()) context_.preferences.set_initials(q(whole.by));
  const KegId keg = present(parts_->keg->value());
  const auto status = context_.cellar.status();
  const KegStatus* now = status->find(keg);
  const QString ready =
      now ? q(report::say(now->readiness.headline, context_.speaker())) : QString();
  emit logged(*outcome);
  accept();
  context_.navigator.show_keg(keg);
  context_.navigator.announce(tr("Transfer logged. %1").arg(ready), true);
  return true;
}

void TransferForm::show_refusal(const Refusal& refusal) {
  const std::vector<TransferStep*> logged = logging();
  QStringList elsewhere;
  bool first = true;
  for (const Fault& fault : refusal.faults) {
    const QString sentence = q(report::say(fault.why, context_.speaker()));
    if (fault.draft < logged.size() &&
        logged[fault.draft]->fields().refuse(fault.field, sentence, first)) {
      first = false;
      continue;
    }
    elsewhere << sentence;
  }
  parts_->refusal->set(Severity::warning, tr("Not logged yet. What you typed is still here."),
                       elsewhere.join(QLatin1Char('\n')));
  parts_->refusal->show();
}

void TransferForm::reject() {
  if (!touched_ || LeaveGuard::ask(context_, this)) QDialog::reject();
}

}  // namespace ullage::ui
