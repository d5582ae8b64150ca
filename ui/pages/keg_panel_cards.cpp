// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_cards.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <array>

#include "ui/context.h"
#include "ui/pages/keg_panel_card.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

namespace {

// Wanted oxygen, ppm.
constexpr std::array purge_targets{100, 300, 1000, 3000, 10000};
constexpr QLatin1String purge_target_key("kegs/purge_target");

}  // namespace

KegPanelCards::KegPanelCards(Context& context, QWidget* parent)
    : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("keg_cards"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::l);
  rescue_ = new KegPanelCard(context, QStringLiteral("rescue"), tr("Too much CO₂"), this);
  sugar_ = new KegPanelCard(context, QStringLiteral("sugar"), tr("Carbonating with sugar"), this);
  purge_ = new KegPanelCard(context, QStringLiteral("purge"), tr("Purging"), this);
  for (KegPanelCard* each : {rescue_, sugar_, purge_}) column->addWidget(each);

  auto* choice = new QWidget(purge_);
  auto* row = new QHBoxLayout(choice);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::s);
  auto* label = new InkLabel(tr("O&xygen wanted"), TextRole::small, Ink::secondary, choice);
  purge_target_ = new QComboBox(choice);
  purge_target_->setObjectName(QStringLiteral("purge_target"));
  purge_target_->setAccessibleName(tr("Oxygen wanted in the purged keg"));
  for (const int ppm : purge_targets) purge_target_->addItem(tr("%1 ppm").arg(ppm), ppm);
  const int usual = static_cast<int>(physics::in_ppm(report::usual_purge_target()));
  const int last =
      purge_target_->findData(context.preferences.remembered(purge_target_key, usual).toInt());
  purge_target_->setCurrentIndex(last < 0 ? purge_target_->findData(usual) : last);
  label->setBuddy(purge_target_);
  row->addWidget(label);
  row->addWidget(purge_target_);
  purge_->add_choice(choice);
  connect(purge_target_, &QComboBox::currentIndexChanged, this, [this] {
    context_.preferences.remember(purge_target_key, purge_target_->currentData().toInt());
    const auto status = context_.cellar.status();
    const cellar::KegStatus* keg = keg_ ? status->find(*keg_) : nullptr;
    if (keg == nullptr) return;
    const report::Speaker speaker = context_.speaker();
    show_purge({*status, *keg, speaker});
  });
}

void KegPanelCards::show_purge(const PanelSubject& subject) {
  const auto target = physics::ppm(purge_target_->currentData().toInt());
  purge_->show_card(report::purge_card({subject.cellar, subject.keg, subject.speaker},
                                       context_.cellar.journal(), target),
                    subject.speaker.printer);
}

void KegPanelCards::show_keg(const PanelSubject& subject) {
  keg_ = subject.keg.record.keg;
  const report::KegSubject keg{subject.cellar, subject.keg, subject.speaker};
  const cellar::Journal& journal = context_.cellar.journal();
  const units::Printer& printer = subject.speaker.printer;
  const auto rescue = report::rescue_card(keg, journal);
  const auto sugar = report::sugar_card(keg, journal);
  rescue_->show_card(rescue, printer);
  sugar_->show_card(sugar, printer);
  show_purge(subject);
  setVisible(!rescue_->isHidden() || !sugar_->isHidden() || !purge_->isHidden());
}

}  // namespace ullage::ui
