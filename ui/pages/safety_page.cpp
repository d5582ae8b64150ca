// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/safety_page.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "core/cellar/room_safety.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/pages/kept_fresh.h"
#include "ui/pages/place_safety_card.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/card.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {
namespace {

QWidget* numbered_card(const QString& title, const QStringList& sentences) {
  auto* card = new Card;
  card->setAccessibleName(title);
  card->column()->addWidget(new InkLabel(title, TextRole::strong));
  auto* list = new TaskList;
  std::vector<ListedTask> rows;
  for (const QString& s : sentences) rows.push_back({s, {}});
  list->show_tasks(rows);
  card->column()->addWidget(list);
  card->column()->addStretch(1);
  return card;
}

}  // namespace

SafetyPage::SafetyPage(const Context& context, QWidget* parent)
    : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("safety_page"));
  build();
  fresh_ = std::make_unique<KeptFresh>(*this, context_, [this] { refresh(); });
}

SafetyPage::~SafetyPage() = default;

void SafetyPage::build() {
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(0, 0, space::m, 0);
  column->setSpacing(space::l);
  auto* caution = new Banner(
      cellar::Severity::warning, tr("Cautions, never an all-clear"),
      tr("These figures suppose that gas mixes evenly with the air of the whole room. It does not: "
         "carbon dioxide gathers low, in pits, at the floor and in chest freezers, far above the "
         "figure. Nobody smells it. Local code and licensed people decide what a room needs. Never "
         "go in to rescue somebody: call for help from outside."));
  caution->setObjectName(QStringLiteral("no_all_clear"));
  column->addWidget(caution);
  nothing_ = build_nothing();
  column->addWidget(nothing_);
  cards_ = new QVBoxLayout;
  cards_->setSpacing(space::l);
  column->addLayout(cards_);
  column->addWidget(build_orders());
  column->addStretch(1);
  auto* header = new QHBoxLayout;
  header->addWidget(new InkLabel(tr("Safety"), TextRole::title));
  header->addStretch(1);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addLayout(header);
  all->addWidget(scrolled(inside), 1);
}

// What is to be done first; the orders below hold all the same.
QWidget* SafetyPage::build_nothing() {
  auto* words = new InkLabel(
      tr("No gas bottle stands in a registered place yet. Register places with their net volume "
         "(kegs and stock taken off), and say where each bottle stands."),
      TextRole::body, Ink::secondary);
  words->setWordWrap(true);
  auto* ways = new QHBoxLayout;
  ways->setSpacing(space::s);
  const auto add = [&](const QString& text, const char* kind) {
    auto* button = new QPushButton(text);
    button->setObjectName(QLatin1String("add_") + QLatin1String(kind));
    button->setEnabled(!context_.cellar.read_only());
    connect(button, &QPushButton::clicked, this,
            [this, kind] { context_.navigator.open_task({kind, {}, {}, {}}); });
    ways->addWidget(button);
    return button;
  };
  set_role(add(tr("Add a place…"), "place_record"), ButtonRole::primary);
  add(tr("Add a bottle…"), "bottle_record");
  ways->addStretch(1);
  auto* both = new QWidget;
  auto* column = new QVBoxLayout(both);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::m);
  column->addWidget(words);
  column->addLayout(ways);
  return both;
}

QWidget* SafetyPage::build_orders() {
  auto* both = new QWidget;
  auto* row = new QHBoxLayout(both);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::l);
  row->addWidget(
      numbered_card(tr("Letting pressure out, in this order"),
                    {tr("Air the room: door open, ventilation on. Look at the alarm before you go "
                        "in, and again while you are in."),
                     tr("Shut the bottle’s valve, then turn the regulator down."),
                     tr("Take the gas off the keg."),
                     tr("Face away from the relief valve. Let it down slowly, until nothing comes "
                        "any more."),
                     tr("Only then open the keg. A lid or a fitting that does not come off easily "
                        "is still under pressure: stop.")}),
      1);
  row->addWidget(
      numbered_card(
          tr("Cleaning agents, in this order"),
          {tr("Goggles and gloves first. Water into the bucket, then the agent: never the "
              "other way round."),
           tr("Let the carbon dioxide out and rinse before caustic goes in: the two "
              "react, and a closed keg can be sucked in."),
           tr("Rinse with water after every agent, and check that it is out."),
           tr("Never acid after a chlorinated cleaner, nor the other way round, without "
              "a rinse between: together they give off chlorine, which has killed."),
           tr("Caustic is a cleaner, not a disinfectant. A line with cleaner in it stays "
              "locked until a check has passed.")}),
      1);
  return both;
}

void SafetyPage::refresh() {
  const auto status = context_.cellar.status();
  std::vector<cellar::PlaceSafety> places = cellar::room_safety(*status, context_.cellar.journal());
  const bool any = std::any_of(places.begin(), places.end(),
                               [](const cellar::PlaceSafety& p) { return !p.bottles.empty(); });
  const auto cards = keep_count<PlaceSafetyCard>(*cards_, static_cast<qsizetype>(places.size()),
                                                 [this] { return new PlaceSafetyCard(context_); });
  const std::optional<std::string> country =
      status->cellar ? status->cellar->country : std::nullopt;
  for (std::size_t i = 0; i < places.size(); ++i)
    cards[i]->show_place(std::move(places[i]), country);
  nothing_->setVisible(!any);
}

}  // namespace ullage::ui
