// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/gas_page.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/cellar/gas_account.h"
#include "core/cellar/loose_gas.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/pages/gas_supply_card.h"
#include "ui/pages/kept_fresh.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {
namespace {

using Account = std::shared_ptr<const cellar::GasAccount>;

// Each supply once; those that lose gas first.
std::vector<Account> accounts_of(const cellar::CellarStatus& status) {
  std::vector<Account> out;
  for (const cellar::BottleStatus& b : status.bottles) {
    if (b.account && std::find(out.begin(), out.end(), b.account) == out.end())
      out.push_back(b.account);
  }
  std::stable_sort(out.begin(), out.end(), [](const Account& a, const Account& b) {
    if (a->alarm != b->alarm) return a->alarm;
    return a->branches.size() > b->branches.size();
  });
  return out;
}

}  // namespace

GasPage::GasPage(const Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("gas_page"));
  build();
  fresh_ = std::make_unique<KeptFresh>(*this, context_, [this] { refresh(); });
}

GasPage::~GasPage() = default;

void GasPage::build() {
  const auto task = [this](const char* kind) {
    return [this, kind] { context_.navigator.open_task({kind, {}, {}, {}}); };
  };
  auto* weigh = new QPushButton(tr("&Weigh a bottle…"));
  weigh->setObjectName(QStringLiteral("weigh_bottle"));
  connect(weigh, &QPushButton::clicked, this, task("bottle_weighed"));
  auto* change = new QPushButton(tr("Change a &bottle…"));
  change->setObjectName(QStringLiteral("change_bottle"));
  connect(change, &QPushButton::clicked, this, task("bottle_changed"));
  auto* add = new QPushButton(tr("&Add a bottle…"));
  add->setObjectName(QStringLiteral("add_bottle"));
  connect(add, &QPushButton::clicked, this, task("bottle_record"));
  summary_ = new InkLabel({}, TextRole::small, Ink::secondary);
  auto* header = new QHBoxLayout;
  header->addWidget(new InkLabel(tr("Gas"), TextRole::title));
  header->addWidget(summary_);
  header->addStretch(1);
  for (QPushButton* b : {weigh, change, add}) header->addWidget(b);

  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, space::m, 0);
  column->setSpacing(space::l);
  cards_ = new QVBoxLayout;
  cards_->setSpacing(space::l);
  loose_ = new Banner(cellar::Severity::advice, {});
  loose_->setObjectName(QStringLiteral("loose_gas"));
  column->addWidget(loose_);
  column->addLayout(cards_);
  column->addStretch(1);
  auto* empty =
      new EmptyState(Icon::gas, tr("No gas bottles yet"),
                     tr("Register each bottle with its empty weight, and the regulators on it. "
                        "Weigh it once a week: then what leaks shows."));
  connect(empty->add_action(tr("Add a bottle…")), &QPushButton::clicked, this,
          task("bottle_record"));
  stack_ = new QStackedWidget;
  stack_->addWidget(scrolled(inside));
  stack_->addWidget(empty);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addLayout(header);
  all->addWidget(stack_, 1);
}

// Of what is on no card, or nobody would miss it.
void GasPage::show_loose(const cellar::LooseGas& loose) {
  QStringList regulators, words;
  for (const cellar::RegulatorRecord& r : loose.regulators) regulators << q(r.name);
  const auto tags = [](const std::vector<std::string>& from) {
    QStringList all;
    for (const std::string& tag : from) all << q(tag);
    return all.join(QStringLiteral(", "));
  };
  if (!regulators.isEmpty())
    words << tr("On no bottle: %1. Change a bottle… says which one it stands on.")
                 .arg(regulators.join(QStringLiteral(", ")));
  if (!loose.on_those.empty())
    words
        << tr("Kegs with the gas on from a regulator on no bottle: %1.").arg(tags(loose.on_those));
  if (!loose.unnamed.empty())
    words << tr("Kegs with the gas on and no regulator named: %1. With several supplies nobody "
                "can tell whose gas that is: name it when you set the gas.")
                 .arg(tags(loose.unnamed));
  loose_->setVisible(!words.isEmpty());
  loose_->set(cellar::Severity::advice, tr("Counts for no bottle"), words.join(QLatin1Char(' ')));
}

void GasPage::refresh() {
  const auto status = context_.cellar.status();
  const std::vector<Account> accounts = accounts_of(*status);
  const auto cards = keep_count<GasSupplyCard>(*cards_, static_cast<qsizetype>(accounts.size()),
                                               [this] { return new GasSupplyCard(context_); });
  int losing = 0;
  for (std::size_t i = 0; i < accounts.size(); ++i) {
    cards[i]->show_account(accounts[i]);
    losing += accounts[i]->alarm ? 1 : 0;
  }
  show_loose(cellar::loose_gas(*status));
  stack_->setCurrentIndex(accounts.empty() ? 1 : 0);
  summary_->setText(accounts.empty() ? QString()
                    : losing > 0     ? tr("%n in use", nullptr, static_cast<int>(accounts.size())) +
                                       tr(", %1 losing gas").arg(losing)
                                 : tr("%n in use", nullptr, static_cast<int>(accounts.size())));
}

}  // namespace ullage::ui
