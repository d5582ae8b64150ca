// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/rules_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/cellar/work_rules.h"
#include "core/report/cleaning_words.h"
#include "core/report/page_lists.h"
#include "ui/dialogs/log_preview.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/wrapped_rows.h"

namespace ullage::ui {
namespace {

// Ids from the façade, for core functions that ask for a source of them.
class FacadeIds final : public cellar::IdSource {
 public:
  explicit FacadeIds(cellar::Facade& cellar) : cellar_(cellar) {}
  cellar::Uuid next() override { return cellar_.fresh_uuid(); }

 private:
  cellar::Facade& cellar_;
};

constexpr int narrowest_rules_column = 96;
constexpr int rule_row_height = 26;

QString capitalised(QString line) { return line.replace(0, 1, line.left(1).toUpper()); }

QPushButton* rules_button(const QString& text, const char* name) {
  auto* made = new QPushButton(text);
  made->setObjectName(QLatin1String(name));
  made->setAutoDefault(false);
  return made;
}

// Stands in the table as long as it holds nothing.
void say_when_empty(QWidget& table) {
  auto* none =
      new InkLabel(RulesDialog::tr("No rules of your own yet. A line with an interval of its own "
                                   "goes by that; for the rest, make a rule or take over a ready "
                                   "set."),
                   TextRole::body, Ink::secondary);
  none->setObjectName(QStringLiteral("no_rules"));
  none->setWordWrap(true);
  none->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  auto* over = new QVBoxLayout(&table);
  over->setContentsMargins(space::m, space::m, space::m, space::m);
  over->addWidget(none);
}

}  // namespace

RulesDialog::RulesDialog(const Context& context, QWidget* parent)
    : QDialog(parent), context_(context) {
  setObjectName(QStringLiteral("rules_dialog"));
  setWindowTitle(tr("Rules"));
  resize_within_screen(*this, {980, 600});
  build();
  listening_ = context_.cellar.on_change([this](const cellar::Change&) { refresh(); });
  refresh();
  show_set();
}

QLayout* RulesDialog::build_sets() {
  sets_ = new QComboBox;
  sets_->setObjectName(QStringLiteral("rule_sets"));
  sets_->setAccessibleName(tr("Ready sets"));
  for (const cellar::ReadySet& set : cellar::ready_rule_sets()) {
    sets_->addItem(q(std::string(set.name)));
  }
  auto* take = rules_button(tr("&Take these over"), "rule_take_set");
  about_ = new InkLabel({}, TextRole::small, Ink::secondary);
  about_->setWordWrap(true);
  about_->setMinimumHeight(84);
  about_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  auto* sets = new QHBoxLayout;
  sets->setSpacing(space::s);
  sets->addWidget(sets_, 1);
  sets->addWidget(take);
  take->setEnabled(!context_.cellar.read_only());
  connect(take, &QPushButton::clicked, this, &RulesDialog::take_set);
  connect(sets_, &QComboBox::currentIndexChanged, this, &RulesDialog::show_set);
  return sets;
}

void RulesDialog::build_table() {
  table_ = new QTreeWidget;
  table_->setObjectName(QStringLiteral("rules_table"));
  table_->setAccessibleName(tr("Rules"));
  table_->setHeaderLabels({tr("For"), tr("Work"), tr("How often"), tr("Source"), tr("In force")});
  table_->setRootIsDecorated(false);
  table_->setTabKeyNavigation(false);
  table_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  for (const int long_words : {0, 3}) {
    table_->header()->setSectionResizeMode(long_words, QHeaderView::Stretch);
  }
  table_->header()->setStretchLastSection(false);
  table_->header()->setMinimumSectionSize(narrowest_rules_column);
  wrap_rows(*table_, rule_row_height);
}

void RulesDialog::build() {
  auto* note = new InkLabel(
      tr("These are your rules, not the program’s: what the law asks differs by place. Where "
         "several fit, the one that falls due first counts."),
      TextRole::body, Ink::secondary);
  note->setWordWrap(true);
  build_table();
  say_when_empty(*table_->viewport());
  auto* add = rules_button(tr("&New rule…"), "rule_new");
  change_ = rules_button(tr("&Change…"), "rule_change");
  force_ = rules_button(tr("Take out of &force"), "rule_force");
  auto* list = rules_button(tr("&Print, save as CSV…"), "rule_list");
  auto* row = new QHBoxLayout;
  row->setSpacing(space::s);
  row->addWidget(add);
  row->addWidget(change_);
  row->addWidget(force_);
  row->addStretch(1);
  row->addWidget(list);

  QLayout* sets = build_sets();
  outcome_ = new InkLabel;
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::s);
  all->addWidget(note);
  all->addWidget(table_, 1);
  all->addLayout(row);
  all->addWidget(new InkLabel(tr("Ready sets, strictest first"), TextRole::heading));
  all->addLayout(sets);
  all->addWidget(about_);
  all->addWidget(outcome_);
  all->addWidget(buttons);
  add->setEnabled(!context_.cellar.read_only());
  connect(add, &QPushButton::clicked, this,
          [this] { context_.navigator.open_task({"rule_record", {}, {}, {}}); });
  connect(list, &QPushButton::clicked, this,
          [this] { LogPreview(context_, report::LogBook::rules, this).exec(); });
  connect(change_, &QPushButton::clicked, this, &RulesDialog::change);
  connect(force_, &QPushButton::clicked, this, &RulesDialog::switch_force);
  connect(table_, &QTreeWidget::currentItemChanged, this, [this] {
    const auto rule = chosen();
    const bool can = rule && !context_.cellar.read_only();
    change_->setEnabled(can);
    force_->setEnabled(can);
    force_->setText(!rule || rule->in_force ? tr("Take out of &force") : tr("Put in &force"));
  });
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void RulesDialog::refresh() {
  const auto status = context_.cellar.status();
  const report::Speaker speaker = context_.speaker();
  const int row = table_->indexOfTopLevelItem(table_->currentItem());
  table_->clear();
  for (const cellar::RuleRecord& r : status->rules) {
    const QString often =
        r.interval_days ? tr("every %1 days").arg(*r.interval_days) : tr("when called for");
    new QTreeWidgetItem(table_, {capitalised(q(report::say_rule_for(r, *status, speaker))),
                                 q(report::say(r.work, speaker)), often, q(r.source),
                                 r.in_force ? tr("yes") : tr("no")});
  }
  const bool some = table_->topLevelItemCount() > 0;
  table_->viewport()->findChild<QWidget*>(QStringLiteral("no_rules"))->setVisible(!some);
  if (some) {
    table_->setCurrentItem(
        table_->topLevelItem(std::clamp(row, 0, table_->topLevelItemCount() - 1)));
  }
  change_->setEnabled(chosen().has_value() && !context_.cellar.read_only());
  force_->setEnabled(chosen().has_value() && !context_.cellar.read_only());
}

std::optional<cellar::RuleRecord> RulesDialog::chosen() const {
  const int row = table_->indexOfTopLevelItem(table_->currentItem());
  const auto status = context_.cellar.status();
  if (row < 0 || row >= static_cast<int>(status->rules.size())) return std::nullopt;
  return status->rules[static_cast<std::size_t>(row)];
}

void RulesDialog::show_set() {
  const auto at = static_cast<std::size_t>(sets_->currentIndex());
  const cellar::ReadySet& set = cellar::ready_rule_sets()[at];
  const report::Speaker speaker = context_.speaker();
  QStringList lines = {q(std::string(set.about))};
  for (const cellar::ReadyRule& r : set.rules) {
    lines << tr("%1, %2: %3 (%4)")
                 .arg(capitalised(q(report::say(r.scope, speaker))),
                      q(report::say(r.work, speaker)),
                      r.interval_days ? tr("every %1 days").arg(*r.interval_days)
                                      : tr("when called for"),
                      q(std::string(r.source)));
  }
  about_->setText(lines.join(QLatin1Char('\n')));
}

void RulesDialog::take_set() {
  const auto at = static_cast<std::size_t>(sets_->currentIndex());
  FacadeIds ids(context_.cellar);
  auto records =
      cellar::rules_to_add(cellar::ready_rule_sets()[at], context_.cellar.status()->rules, ids);
  if (records.empty()) {
    outcome_->setText(tr("All of these are in force already."));
    return;
  }
  log(std::move(records));
}

void RulesDialog::log(std::vector<cellar::RuleRecord> records) {
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  const auto many = static_cast<int>(records.size());
  for (cellar::RuleRecord& r : records) {
    act.drafts.push_back({cellar::Payload(std::move(r)), context_.cellar.now(), {}, {}});
  }
  const auto logged = context_.cellar.log(act);
  outcome_->set_ink(logged ? Ink::success : Ink::danger);
  outcome_->setText(logged ? many == 1 ? tr("One rule logged.") : tr("%1 rules logged.").arg(many)
                           : q(report::say(logged.error().faults.front().why, context_.speaker())));
}

void RulesDialog::change() {
  const auto rule = chosen();
  if (!rule) return;
  context_.navigator.open_task({"rule_record", {}, cellar::Payload(*rule), {}});
}

void RulesDialog::switch_force() {
  auto rule = chosen();
  if (!rule) return;
  rule->in_force = !rule->in_force;
  log({*rule});
}

}  // namespace ullage::ui
