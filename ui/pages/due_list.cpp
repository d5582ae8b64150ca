// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/due_list.h"

#include <QDate>
#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLocale>
#include <QMimeData>
#include <QPainter>
#include <QPushButton>
#include <QTimer>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <functional>

#include "core/report/cleaning_words.h"
#include "core/report/names.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/wrapped_rows.h"

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

constexpr auto due_work_format = "application/x-ullage-due-work";
constexpr int days_ahead = 14;
constexpr int days_a_row = 7;
constexpr int day_height = 38;

// Its rows are dragged as due work and as nothing else.
class DueTree final : public QTreeWidget {
 public:
  [[nodiscard]] QStringList mimeTypes() const override { return {QLatin1String(due_work_format)}; }
  [[nodiscard]] QMimeData* mimeData(const QList<QTreeWidgetItem*>& items) const override {
    if (items.isEmpty() || !items.front()->data(0, due_row_role).isValid()) return nullptr;
    auto* carried = new QMimeData;
    carried->setData(QLatin1String(due_work_format),
                     items.front()->data(0, due_row_role).toByteArray());
    return carried;
  }
};

}  // namespace

// The next fourteen days, with how much is due or planned on each.
class DueDays final : public QWidget {
 public:
  explicit DueDays(QWidget* parent = nullptr) : QWidget(parent) {
    setObjectName(QStringLiteral("due_days"));
    setAccessibleName(DueList::tr("The next fourteen days"));
    setAccessibleDescription(
        DueList::tr("Work is dragged here by mouse; by key, Enter on its row moves it."));
    setAcceptDrops(true);
    setFixedHeight(day_height * days_ahead / days_a_row);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  }
  std::function<void(std::optional<cellar::Date>)> over;  // the mouse is over that day, with work
  std::function<void(cellar::Date)> moved_to;

  void show_days(cellar::Date today, const std::vector<cellar::DueWork>& rows) {
    today_ = today;
    tasks_.assign(days_ahead, 0);
    for (const cellar::DueWork& row : rows) {
      const auto at = (std::max(row.put_off_to.value_or(row.due), today) - today).count();
      if (at < days_ahead) ++tasks_[static_cast<std::size_t>(at)];
    }
    update();
  }
  [[nodiscard]] QRect cell(int day) const {
    const int column = day % days_a_row;
    const int left = width() * column / days_a_row;
    return {left, day / days_a_row * day_height, width() * (column + 1) / days_a_row - left,
            day_height};
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (int day = 0; day < days_ahead; ++day) paint_day(painter, day);
  }
  void mousePressEvent(QMouseEvent* event) override {
    const int day = day_at(event->position());
    if (day >= 0 && isEnabled() && moved_to) moved_to(date_of(day));
  }
  void dragEnterEvent(QDragEnterEvent* event) override { hover(*event, event->position()); }
  void dragMoveEvent(QDragMoveEvent* event) override { hover(*event, event->position()); }
  void dragLeaveEvent(QDragLeaveEvent*) override { leave(); }
  void dropEvent(QDropEvent* event) override {
    const int day = day_at(event->position());
    leave();
    if (day < 0 || !event->mimeData()->hasFormat(QLatin1String(due_work_format))) return;
    event->acceptProposedAction();
    // The drag is still going on here; what is asked is asked once it is done.
    QTimer::singleShot(0, this, [this, day] { moved_to(date_of(day)); });
  }

 private:
  [[nodiscard]] cellar::Date date_of(int day) const { return today_ + std::chrono::days(day); }
  [[nodiscard]] int day_at(QPointF at) const {
    for (int day = 0; day < days_ahead; ++day) {
      if (cell(day).contains(at.toPoint())) return day;
    }
    return -1;
  }
  void hover(QDropEvent& event, QPointF at) {
    const int day = day_at(at);
    if (day < 0 || !event.mimeData()->hasFormat(QLatin1String(due_work_format))) return;
    event.acceptProposedAction();
    if (day == over_) return;
    over_ = day;
    over(date_of(day));
    update();
  }
  void leave() {
    over_ = -1;
    over(std::nullopt);
    update();
  }
  void paint_day(QPainter& painter, int day) const {
    const Theme& theme = theme_of(this);
    const QRectF box = QRectF(cell(day)).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.setPen(QPen(day == over_ ? theme.focus : theme.line, day == over_ ? 2 : 1));
    painter.setBrush(day == over_ ? theme.selected : theme.surface);
    painter.drawRoundedRect(box, radius::small, radius::small);
    const QDate date = QDate(1970, 1, 1).addDays(date_of(day).time_since_epoch().count());
    painter.setPen(theme.text_secondary);
    painter.setFont(font_of(TextRole::small));
    const QString name = QLocale().dayName(date.dayOfWeek(), QLocale::ShortFormat);
    painter.drawText(box.adjusted(0, 2, 0, 0), Qt::AlignHCenter | Qt::AlignTop,
                     QStringLiteral("%1 %2").arg(name).arg(date.day()));
    const int tasks = tasks_.empty() ? 0 : tasks_[static_cast<std::size_t>(day)];
    if (tasks == 0) return;
    painter.setPen(theme.text);
    painter.drawText(box.adjusted(0, 0, 0, -2), Qt::AlignHCenter | Qt::AlignBottom,
                     DueList::tr("%n due", nullptr, tasks));
  }

  cellar::Date today_{};
  std::vector<int> tasks_;
  int over_ = -1;
};

DueList::DueList(const Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      days_(new DueDays),
      tree_(new DueTree),
      why_(new InkLabel) {
  tree_->setObjectName(QStringLiteral("due_list"));
  tree_->setAccessibleName(tr("What is due"));
  tree_->setColumnCount(2);
  tree_->setHeaderHidden(true);
  tree_->setRootIsDecorated(false);
  tree_->setItemsExpandable(false);
  tree_->setIndentation(space::m);
  tree_->setTabKeyNavigation(false);
  tree_->setDragEnabled(true);
  tree_->setDragDropMode(QAbstractItemView::DragOnly);
  tree_->header()->setStretchLastSection(false);
  tree_->header()->setSectionResizeMode(0, QHeaderView::Stretch);
  tree_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
  wrap_rows(*tree_, due_row_height);
  why_->setObjectName(QStringLiteral("due_why"));
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
  all->addWidget(new InkLabel(tr("Drag it to a day to move it"), TextRole::small, Ink::secondary));
  all->addWidget(days_);
  all->addLayout(actions);
  connect(tree_, &QTreeWidget::currentItemChanged, this, &DueList::show_why);
  connect(tree_, &QTreeWidget::itemActivated, this, [this] {
    if (chosen() != nullptr && put_off_->isEnabled()) ask_to_move(std::nullopt);
  });
  connect(log_, &QPushButton::clicked, this, &DueList::log_asked);
  connect(put_off_, &QPushButton::clicked, this, [this] { ask_to_move(std::nullopt); });
  days_->over = [this](std::optional<cellar::Date> to) { show_moved(to); };
  days_->moved_to = [this](cellar::Date to) { ask_to_move(to); };
}

void DueList::ask_to_move(std::optional<cellar::Date> to) {
  if (chosen() == nullptr) return;
  asked_day_ = to;
  emit put_off_asked();
}

void DueList::show_moved(std::optional<cellar::Date> to) {
  const cellar::DueWork* row = chosen();
  if (row == nullptr || !to) return show_why();
  const auto over = cellar::overdue_if_moved(rows_, *row, *to);
  QStringList lines{tr("To %1:").arg(q(report::say_date(*to, context_.speaker())))};
  for (const cellar::DueWork& each : over) {
    lines << q(report::say_will_be(each, *context_.cellar.status(), context_.speaker()));
  }
  if (over.empty()) lines << tr("nothing becomes overdue.");
  why_->set_ink(over.empty() ? Ink::success : Ink::danger);
  why_->setText(lines.join(QLatin1Char('\n')));
}

void DueList::show_rows(std::vector<cellar::DueWork> rows, const cellar::CellarStatus& names) {
  const cellar::DueWork* before = chosen();
  const std::optional<cellar::DueWork> kept =
      before == nullptr ? std::nullopt : std::optional(*before);
  rows_ = std::move(rows);
  fill(names);
  days_->show_days(context_.cellar.calendar().date_of(context_.cellar.now()), rows_);
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
  days_->setEnabled(can);
  tree_->setDragEnabled(can);
  why_->set_ink(Ink::secondary);
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
  set_subject(w, row.about);
  return about(w);
}

}  // namespace ullage::ui
