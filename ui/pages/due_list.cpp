// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/due_list.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "core/report/cleaning_words.h"
#include "core/report/names.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr int due_row_role = Qt::UserRole + 1;
constexpr int due_row_height = 30;  // as in the log

QString due_heading_of(cellar::DueState state) {
  switch (state) {
    case cellar::DueState::overdue:
      return DueList::tr("Overdue");
    case cellar::DueState::soon:
      return DueList::tr("Soon");
    case cellar::DueState::later:
      return DueList::tr("Later");
  }
  return {};
}

}  // namespace

DueList::DueList(const Context& context, QWidget* parent)
    : QWidget(parent), context_(context), tree_(new QTreeWidget), why_(new InkLabel) {
  tree_->setObjectName(QStringLiteral("due_list"));
  tree_->setAccessibleName(tr("What is due"));
  tree_->setColumnCount(2);
  tree_->setHeaderHidden(true);
  tree_->setRootIsDecorated(false);
  tree_->setItemsExpandable(false);
  tree_->setIndentation(space::m);
  tree_->setUniformRowHeights(true);
  tree_->setTabKeyNavigation(false);
  tree_->header()->setStretchLastSection(false);
  tree_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
  tree_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
  why_->set_role(TextRole::small);
  why_->set_ink(Ink::secondary);
  why_->setWordWrap(true);
  why_->setMinimumHeight(54);
  why_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  log_ = new QPushButton(tr("Lo&g it…"));
  log_->setObjectName(QStringLiteral("due_log"));
  put_off_ = new QPushButton(tr("&Move to a day…"));
  put_off_->setObjectName(QStringLiteral("due_move"));

  auto* actions = new QHBoxLayout;
  actions->setSpacing(space::s);
  actions->addWidget(log_);
  actions->addWidget(put_off_);
  actions->addStretch(1);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(space::s);
  all->addWidget(new InkLabel(tr("What is due"), TextRole::heading));
  all->addWidget(tree_, 1);
  all->addWidget(why_);
  all->addLayout(actions);
  connect(tree_, &QTreeWidget::currentItemChanged, this, &DueList::show_why);
  connect(tree_, &QTreeWidget::itemActivated, this, [this] {
    if (chosen() != nullptr && put_off_->isEnabled()) emit put_off_asked();
  });
  connect(log_, &QPushButton::clicked, this, &DueList::log_asked);
  connect(put_off_, &QPushButton::clicked, this, &DueList::put_off_asked);
}

void DueList::show_rows(std::vector<cellar::DueWork> rows, const cellar::CellarStatus& names) {
  const cellar::DueWork* before = chosen();
  const std::optional<cellar::DueWork> kept =
      before == nullptr ? std::nullopt : std::optional(*before);
  rows_ = std::move(rows);
  fill(names);
  for (QTreeWidgetItemIterator at(tree_); *at != nullptr; ++at) {
    const QVariant row = (*at)->data(0, due_row_role);
    if (!row.isValid()) continue;
    if (!kept || rows_.at(row.toULongLong()).same_work(*kept)) {
      tree_->setCurrentItem(*at);
      break;
    }
  }
  show_why();
}

void DueList::fill(const cellar::CellarStatus& names) {
  const QSignalBlocker quiet(tree_);
  tree_->clear();
  const report::Speaker speaker = context_.speaker();
  const Theme& theme = theme_of(this);
  for (const auto state :
       {cellar::DueState::overdue, cellar::DueState::soon, cellar::DueState::later}) {
    QTreeWidgetItem* group = nullptr;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const cellar::DueWork& row = rows_[i];
      if (row.state != state) continue;
      if (group == nullptr) {
        group = new QTreeWidgetItem(tree_, QStringList{due_heading_of(state), QString()});
        group->setFlags(Qt::ItemIsEnabled);
        group->setFirstColumnSpanned(true);
        group->setSizeHint(0, QSize(0, due_row_height));
        group->setFont(0, font_of(TextRole::strong));
        group->setExpanded(true);
      }
      const QString what = QStringLiteral("%1 – %2").arg(q(report::name_of(row.about, names)),
                                                         q(report::say(row.work, speaker)));
      const QString due = q(report::say_due(row, speaker));
      auto* item = new QTreeWidgetItem(group, QStringList{what, due});
      item->setData(0, due_row_role, QVariant::fromValue<qulonglong>(i));
      item->setSizeHint(0, QSize(0, due_row_height));
      item->setToolTip(0, what);
      item->setData(0, Qt::AccessibleTextRole, QStringLiteral("%1, %2").arg(what, due));
      item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
      if (state == cellar::DueState::overdue) item->setForeground(1, theme.danger_ink);
    }
  }
  tree_->expandAll();
}

const cellar::DueWork* DueList::chosen() const {
  const QTreeWidgetItem* item = tree_->currentItem();
  if (item == nullptr) return nullptr;
  const QVariant row = item->data(0, due_row_role);
  return row.isValid() && row.toULongLong() < rows_.size() ? &rows_[row.toULongLong()] : nullptr;
}

void DueList::show_why() {
  const cellar::DueWork* row = chosen();
  const bool can = row != nullptr && !context_.cellar.read_only();
  put_off_->setEnabled(can);
  log_->setEnabled(can);
  if (row == nullptr) {
    why_->setText(tr("Choose a row to see why it is due."));
    return;
  }
  QStringList lines;
  for (const std::string& each : report::say_why(*row, context_.speaker())) {
    QString line = q(each);
    lines << line.replace(0, 1, line.left(1).toUpper());
  }
  why_->setText(lines.join(QLatin1Char('\n')));
}

void DueList::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) fill(*context_.cellar.status());
}

cellar::SuggestedTask task_of(const cellar::DueWork& row) {
  using namespace cellar;
  const auto about = [&](auto payload) {
    return SuggestedTask{std::string(decltype(payload)::kind), row.about, Payload(payload), {}};
  };
  switch (row.work) {
    case WorkKind::caustic:
    case WorkKind::acid: {
      LineCleaned c;
      c.line = LineId{row.about.uuid};
      c.agent = row.work == WorkKind::acid ? LineAgent::acid : LineAgent::caustic;
      return about(c);
    }
    case WorkKind::keg_clean: {
      Cleaned c;
      c.keg = KegId{row.about.uuid};
      return about(c);
    }
    case WorkKind::alarm_check: {
      AlarmChecked a;
      a.place = PlaceId{row.about.uuid};
      return about(a);
    }
    default:
      break;
  }
  WorkDone w;
  w.work = row.work;
  w.rule = row.governing.rule;
  if (row.about.kind == SubjectKind::line) w.line = LineId{row.about.uuid};
  if (row.about.kind == SubjectKind::keg) w.keg = KegId{row.about.uuid};
  if (row.about.kind == SubjectKind::bottle) w.bottle = BottleId{row.about.uuid};
  if (row.about.kind == SubjectKind::place) w.place = PlaceId{row.about.uuid};
  return about(w);
}

}  // namespace ullage::ui
