// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_row_reasons.h"

#include <QMenu>
#include <algorithm>

#include "core/report/keg_grounds.h"
#include "ui/context.h"
#include "ui/widgets/keg_table_view.h"
#include "ui/widgets/reasons_popup.h"

namespace ullage::ui {
namespace {

using RowReasons = report::Grounds (*)(const report::KegSubject&);

// In the order of the table's columns, then what only the panel shows.
constexpr RowReasons all_row_reasons[] = {
    &report::level_grounds,       &report::co2_grounds,
    &report::settles_grounds,     &report::serving_pressure_grounds,
    &report::temperature_grounds, &report::gas_set_grounds,
    &report::uptake_grounds,      &report::run_out_grounds,
    &report::hold_result_grounds};

report::Grounds row_grounds(const Context& context, std::optional<cellar::KegId> keg,
                            RowReasons reasons) {
  const auto status = context.cellar.status();
  const auto found = std::find_if(status->kegs.begin(), status->kegs.end(),
                                  [&](const auto& each) { return each.record.keg == keg; });
  if (found == status->kegs.end()) return {};
  const report::Speaker speaker = context.speaker();
  return reasons({*status, *found, speaker});
}

}  // namespace

KegRowReasons::KegRowReasons(KegTableView& table, const Context& context)
    : QObject(&table), table_(table), context_(context) {
  setObjectName(QStringLiteral("keg_row_reasons"));
  connect(&table, &KegTableView::reasons_of_number, this, &KegRowReasons::open_one);
  connect(&table, &KegTableView::reasons_of_row, this, &KegRowReasons::offer_all);
}

void KegRowReasons::open_one(KegColumn column, const QRect& at) {
  const RowReasons reasons =
      column == KegColumn::left ? &report::level_grounds : &report::co2_grounds;
  const report::Grounds grounds = row_grounds(context_, table_.chosen(), reasons);
  if (!grounds.empty()) ReasonsPopup::open(table_.viewport(), grounds, at);
}

void KegRowReasons::offer_all(const QRect& at) {
  auto* menu = new QMenu(&table_);
  menu->setObjectName(QStringLiteral("row_reasons"));
  menu->setAccessibleName(tr("Reasons for a number"));
  menu->setAttribute(Qt::WA_DeleteOnClose);
  for (const RowReasons reasons : all_row_reasons) {
    const report::Grounds grounds = row_grounds(context_, table_.chosen(), reasons);
    if (grounds.empty()) continue;
    QString words = tr("Reasons: %1, %2").arg(q(grounds.name), q(grounds.answer));
    words.replace(QLatin1Char('&'), QLatin1String("&&"));
    connect(menu->addAction(words), &QAction::triggered, this,
            [this, grounds, at] { ReasonsPopup::open(table_.viewport(), grounds, at); });
  }
  if (menu->isEmpty()) {
    menu->addAction(tr("Nothing is worked out for this keg yet"))->setEnabled(false);
  }
  menu->setActiveAction(menu->actions().front());
  menu->popup(table_.viewport()->mapToGlobal(QPoint(at.left(), at.top() + at.height())));
}

}  // namespace ullage::ui
