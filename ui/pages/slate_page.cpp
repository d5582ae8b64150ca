// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/slate_page.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/dialogs/forms/scrolled.h"
#include "ui/pages/keg_tasks.h"
#include "ui/pages/slate_answer.h"
#include "ui/pages/slate_form.h"
#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

namespace slate = report::slate;

constexpr int finder_width = 268;
constexpr int form_width = 360;
constexpr int answer_width = 300;
constexpr int finder_row_height = 34;
constexpr int finder_text_width = finder_width - 40;  // less the padding and a scroll bar
constexpr int finder_row_padding = 14;

}  // namespace

SlatePage::SlatePage(const Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("slate_page"));
  auto* all = new QHBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::l, space::l);
  all->setSpacing(space::xl);
  all->addWidget(build_finder());
  all->addWidget(build_sheet(), 1);
  search();
  choose(0);
}

QWidget* SlatePage::build_finder() {
  auto* finder = new QWidget(this);
  finder->setFixedWidth(finder_width);
  words_ = new QLineEdit(finder);
  words_->setObjectName(QStringLiteral("slate_words"));
  words_->setPlaceholderText(tr("how long, purge, alcohol …"));
  words_->setAccessibleName(tr("Find a computation"));
  words_->setClearButtonEnabled(true);
  words_->installEventFilter(this);
  list_ = new QListWidget(finder);
  list_->setObjectName(QStringLiteral("slate_list"));
  list_->setAccessibleName(tr("Computations"));
  list_->setFrameShape(QFrame::NoFrame);
  list_->setWordWrap(true);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  none_ = new InkLabel(tr("No computation is called that. Try “pressure”, “purge” or “weigh”."),
                       TextRole::body, Ink::secondary, finder);
  none_->setWordWrap(true);
  auto* column = new QVBoxLayout(finder);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::m);
  column->addWidget(new InkLabel(tr("Slate"), TextRole::title, Ink::text, finder));
  column->addWidget(words_);
  column->addWidget(none_);
  column->addWidget(list_, 1);
  connect(words_, &QLineEdit::textChanged, this, [this] {
    search();
    choose(0);
  });
  connect(words_, &QLineEdit::returnPressed, this, [this] {
    if (form_ != nullptr) form_->focus_first();
  });
  connect(list_, &QListWidget::currentRowChanged, this, &SlatePage::choose);
  return finder;
}

QWidget* SlatePage::build_sheet() {
  auto* sheet = new QWidget(this);
  title_ = new InkLabel({}, TextRole::heading, Ink::text, sheet);
  title_->setObjectName(QStringLiteral("slate_title"));
  title_->setWordWrap(true);
  about_keg_ = new QWidget(sheet);
  about_keg_->setObjectName(QStringLiteral("about_keg"));
  about_keg_words_ = new InkLabel({}, TextRole::body, Ink::secondary, about_keg_);
  about_keg_words_->setObjectName(QStringLiteral("about_keg_words"));
  about_keg_words_->setWordWrap(true);
  auto* forget = new QPushButton(tr("Without the keg"), about_keg_);
  forget->setObjectName(QStringLiteral("forget_keg"));
  set_role(forget, ButtonRole::quiet);
  connect(forget, &QPushButton::clicked, this, &SlatePage::forget_keg);
  auto* about = new QHBoxLayout(about_keg_);
  about->setContentsMargins(0, 0, 0, 0);
  about->setSpacing(space::s);
  act_ = new QPushButton(about_keg_);
  act_->setObjectName(QStringLiteral("slate_act"));
  connect(act_, &QPushButton::clicked, this, [this] {
    if (act_task_) context_.navigator.open_task(*act_task_);
  });
  about->addWidget(about_keg_words_, 1);
  about->addWidget(act_);
  about->addWidget(forget);

  form_place_ = new QWidget(sheet);
  auto* form_column = new QVBoxLayout(form_place_);
  form_column->setContentsMargins(0, 0, 0, 0);
  auto* answer_place = new QWidget(sheet);
  auto* answer_column = new QVBoxLayout(answer_place);
  answer_column->setContentsMargins(0, 0, 0, 0);
  answer_column->setSpacing(space::m);
  answer_ = new SlateAnswer(answer_place);
  answer_column->addWidget(answer_, 1);

  auto* both = new QWidget;
  sides_ = new QBoxLayout(QBoxLayout::LeftToRight, both);
  sides_->setContentsMargins(0, 0, space::m, 0);
  sides_->setSpacing(space::xl);
  sides_->addWidget(form_place_, 0);
  sides_->addWidget(answer_place, 1);
  scroll_ = scrolled();
  scroll_->setWidget(both);
  auto* column = new QVBoxLayout(sheet);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::m);
  column->addWidget(title_);
  column->addWidget(about_keg_);
  column->addWidget(scroll_, 1);
  return sheet;
}

void SlatePage::search() {
  found_ = slate::find_by_words(s(words_->text()));
  const QSignalBlocker quiet(list_);
  list_->clear();
  for (const slate::Computation* c : found_) {
    auto* item = new QListWidgetItem(q(std::string(c->title)), list_);
    const QRect words = list_->fontMetrics().boundingRect(
        QRect(0, 0, finder_text_width, finder_width), Qt::TextWordWrap, item->text());
    item->setSizeHint(QSize(0, std::max(finder_row_height, words.height() + finder_row_padding)));
    item->setToolTip(q(std::string(c->title)));
  }
  none_->setVisible(found_.empty());
  list_->setVisible(!found_.empty());
}

void SlatePage::choose(int row) {
  if (row < 0 || row >= static_cast<int>(found_.size())) return;
  {
    const QSignalBlocker quiet(list_);
    list_->setCurrentRow(row);
  }
  const slate::Computation& c = *found_[static_cast<std::size_t>(row)];
  if (&c == computation_) return;
  const auto before = left_at_.find(c.key);
  open(c,
       before == left_at_.end() ? slate::starting_inputs(c, context_.preferences.units())
                                : before->second,
       std::nullopt);
}

void SlatePage::work_out(const std::string& key, std::optional<cellar::KegId> keg) {
  const slate::Computation* c = slate::find_computation(key);
  if (c == nullptr) return;
  slate::Inputs in = slate::starting_inputs(*c, context_.preferences.units());
  status_ = context_.cellar.status();
  const report::Speaker speaker = context_.speaker();
  std::vector<slate::Offer> offers;
  const slate::Offer* offer = nullptr;
  if (const cellar::KegStatus* status = keg ? status_->find(*keg) : nullptr) {
    offers = slate::offers_for({*status_, *status, speaker});
    for (const slate::Offer& o : offers) {
      if (o.computation == key) offer = &o;
    }
  }
  if (offer != nullptr) in = offer->inputs;
  {
    const QSignalBlocker quiet(words_);
    words_->clear();
  }
  search();
  open(*c, std::move(in), keg, offer);
  const QSignalBlocker quiet(list_);
  const auto at = std::find(found_.begin(), found_.end(), c);
  list_->setCurrentRow(static_cast<int>(at - found_.begin()));
}

void SlatePage::open(const slate::Computation& c, slate::Inputs in,
                     std::optional<cellar::KegId> keg, const slate::Offer* offer) {
  if (form_ != nullptr && computation_ != nullptr && !keg_) {
    left_at_.insert_or_assign(computation_->key, form_->inputs());
  }
  computation_ = &c;
  keg_ = keg;
  status_ = context_.cellar.status();
  title_->setText(q(std::string(c.title)));
  const cellar::KegStatus* status = keg_status();
  about_keg_->setVisible(status != nullptr);
  if (status != nullptr) {
    about_keg_words_->setText(about_keg(status->record.tag, offer));
  }
  delete form_;
  form_ = new SlateForm(c, std::move(in), context_.preferences, form_place_);
  form_place_->layout()->addWidget(form_);
  connect(form_, &SlateForm::changed, this, &SlatePage::answer);
  scroll_->verticalScrollBar()->setValue(0);
  answer();
}

QString SlatePage::about_keg(const std::string& tag, const slate::Offer* offer) const {
  QStringList words{tr("From %1: what is known of it stands in the fields.").arg(q(tag))};
  const auto list = [](const std::vector<std::string>& labels) {
    QStringList each;
    for (const std::string& label : labels) each << q(label);
    return each.join(QStringLiteral(", "));
  };
  if (offer != nullptr && !offer->to_fill_in.empty())
    words << tr("To be filled in: %1.").arg(list(offer->to_fill_in));
  if (offer != nullptr && !offer->assumed.empty())
    words << tr("Assumed, not known: %1.").arg(list(offer->assumed));
  return words.join(QLatin1Char(' '));
}

void SlatePage::forget_keg() {
  keg_.reset();
  about_keg_->setVisible(false);
  answer();
}

const cellar::KegStatus* SlatePage::keg_status() const {
  return keg_ && status_ ? status_->find(*keg_) : nullptr;
}

void SlatePage::answer() {
  if (form_ == nullptr) return;
  const QString unreadable = form_->unreadable();
  if (!unreadable.isEmpty()) {
    answer_->show_nothing(tr("“%1” can’t be read as it stands.").arg(unreadable));
    return show_act(nullptr);
  }
  const units::Printer printer = context_.printer();
  const slate::Inputs in = form_->inputs();
  const slate::Outcome out =
      slate::work_out(*computation_, in, printer, context_.preferences.words());
  if (!out) {
    form_->show_problem(out.error());
    answer_->show_nothing(out.error().field.empty() ? q(out.error().sentence)
                                                    : tr("No answer yet: see the marked field."));
    return show_act(nullptr);
  }
  form_->show_problem(std::nullopt);
  answer_->show_answer(*computation_, in, *out, context_.speaker());
  show_act(&*out);
}

void SlatePage::show_act(const slate::Answer* answer) {
  const cellar::KegStatus* keg = keg_status();
  act_task_ = answer != nullptr && keg != nullptr
                  ? slate::leads_to(*computation_, form_->inputs(), *answer, *keg)
                  : std::nullopt;
  act_->setVisible(act_task_.has_value());
  if (!act_task_) return;
  act_->setText(tr("%1: %2").arg(q(keg->record.tag),
                                 task_label(act_task_->kind, context_.preferences.words())));
  act_->setEnabled(!context_.cellar.read_only());
}

bool SlatePage::eventFilter(QObject* watched, QEvent* event) {
  if (watched == words_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Down || key == Qt::Key_Up) {
      const int step = key == Qt::Key_Down ? 1 : -1;
      choose(std::clamp(list_->currentRow() + step, 0, std::max(0, list_->count() - 1)));
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void SlatePage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const int room = width() - finder_width - 3 * space::xl;
  const bool narrow = room < form_width + answer_width;
  sides_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  form_place_->setMaximumWidth(narrow ? QWIDGETSIZE_MAX : form_width);
  form_place_->setMinimumWidth(narrow ? 0 : form_width);
}

}  // namespace ullage::ui
