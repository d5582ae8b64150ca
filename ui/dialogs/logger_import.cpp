// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/logger_import.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "core/cellar/presets.h"
#include "ui/dialogs/forms/hush.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/dialogs/logger_words.h"
#include "ui/dialogs/text_limits.h"
#include "ui/preferences.h"
#include "ui/prompts.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/text_edit.h"

namespace ullage::ui {
namespace {

constexpr int previewed = 12;  // readings: the first of what is kept
constexpr std::size_t bad_shown = 40;

}  // namespace

LoggerImport::LoggerImport(const Context& context, std::optional<cellar::PlaceId> place,
                           QWidget* parent)
    : QDialog(parent), context_(context) {
  setWindowTitle(tr("Import temperatures"));
  setObjectName(QStringLiteral("logger_import"));
  build();
  place_->set_value(place);
  show_layout();
  show_preview();
}

LoggerImport::~LoggerImport() { hush(*this); }

void LoggerImport::build() {
  choose_ = new QPushButton(tr("Choose a &file…"));
  choose_->setObjectName(QStringLiteral("choose_file"));
  path_ = new InkLabel(tr("No file chosen"), TextRole::body, Ink::secondary);
  path_->setObjectName(QStringLiteral("file_name"));
  auto* top = new QHBoxLayout;
  top->addWidget(choose_);
  top->addWidget(path_, 1);
  place_ = new PlacePicker(context_);
  place_->setObjectName(QStringLiteral("place"));
  place_->set_required(true);
  thermometer_ = new InstrumentPicker(context_);
  thermometer_->setObjectName(QStringLiteral("thermometer"));
  thermometer_->set_optional(tr("–"));
  thermometer_->set_shows([](const cellar::InstrumentRecord& i) {
    return cellar::reads_of(i.instrument_kind) == cellar::Reads::temperature;
  });
  of_ = new ChoiceBar({tr("Air"), tr("Liquid")});
  of_->setObjectName(QStringLiteral("of_what"));
  of_->set_name(tr("What the probe stands in"));
  of_->set_index(0);
  by_ = new TextEdit(initials_limit());
  by_->set_value(s(context_.preferences.initials()));
  problem_ = new Banner(cellar::Severity::warning, {});
  problem_->setObjectName(QStringLiteral("problem"));
  problem_->hide();
  auto* form = new FormSection;
  form->add(tr("&Place"), place_);
  form->add(tr("&Thermometer"), thermometer_, tr("The logger as a registered instrument."));
  form->add(tr("Probe in"), of_, tr("Air is not beer: its readings count a degree wider."));
  form->add(tr("By"), by_, tr("Initials."));

  auto* rows = new QWidget;
  auto* column = new QVBoxLayout(rows);
  column->setContentsMargins(0, 0, space::m, 0);
  column->setSpacing(space::m);
  column->addLayout(top);
  column->addWidget(form);
  column->addWidget(build_layout());
  column->addWidget(build_preview());
  column->addStretch(1);
  auto* buttons = new QDialogButtonBox;
  accept_ = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
  accept_->setObjectName(QStringLiteral("import"));
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addWidget(scrolled(rows), 1);
  all->addWidget(problem_);
  all->addWidget(buttons);
  resize_within_screen(*this, {680, 620});
  connect(choose_, &QPushButton::clicked, this, &LoggerImport::choose_file);
  connect(place_, &PlacePicker::changed, this, &LoggerImport::show_preview);
  connect(buttons, &QDialogButtonBox::accepted, this, &LoggerImport::log);
  connect(buttons, &QDialogButtonBox::rejected, this, &LoggerImport::reject);
}

QWidget* LoggerImport::build_preview() {
  words_ = new InkLabel({}, TextRole::strong);
  words_->setObjectName(QStringLiteral("in_words"));
  words_->setWordWrap(true);
  preview_ = new QTableWidget(0, 2);
  preview_->setObjectName(QStringLiteral("preview"));
  preview_->setAccessibleName(tr("Readings to be imported"));
  preview_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  preview_->setSelectionMode(QAbstractItemView::NoSelection);
  preview_->setTabKeyNavigation(false);
  preview_->verticalHeader()->hide();
  preview_->horizontalHeader()->setStretchLastSection(true);
  preview_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
  preview_->setMinimumHeight(150);
  bad_title_ = new InkLabel({}, TextRole::strong, Ink::warning);
  bad_title_->setObjectName(QStringLiteral("bad_lines_title"));
  bad_ = new QPlainTextEdit;
  bad_->setObjectName(QStringLiteral("bad_lines"));
  bad_->setAccessibleName(tr("Lines that can’t be read"));
  bad_->setReadOnly(true);
  bad_->setTabChangesFocus(true);
  bad_->setMaximumHeight(110);
  auto* part = new QWidget;
  auto* column = new QVBoxLayout(part);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::s);
  for (QWidget* w : {static_cast<QWidget*>(words_), static_cast<QWidget*>(preview_),
                     static_cast<QWidget*>(bad_title_), static_cast<QWidget*>(bad_)})
    column->addWidget(w);
  return part;
}

void LoggerImport::choose_file() {
  const auto path = context_.prompts.open_file(
      this, tr("A logger’s file"), tr("Text files (*.csv *.txt *.tsv *.log);;All files (*)"));
  if (path) read_file(*path);
}

void LoggerImport::read_file(const QString& path) {
  file_.reset();
  columns_.reset();
  bytes_.clear();
  name_ = QFileInfo(path).fileName();
  path_->setText(name_);
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    say_problem(tr("%1 can’t be opened").arg(name_), file.errorString());
  } else {
    // One byte more than is taken tells that it is too large.
    const QByteArray read = file.read(static_cast<qint64>(cellar::logger_file_limit) + 1);
    bytes_.assign(read.constData(), static_cast<std::size_t>(read.size()));
    filling_ = true;  // everything is found out anew
    read_again();
    filling_ = false;
    return;
  }
  show_layout();
  show_preview();
}

void LoggerImport::read_again() {
  if (bytes_.empty() && name_.isEmpty()) return;
  QGuiApplication::setOverrideCursor(Qt::WaitCursor);
  auto read = cellar::read_logger_file(bytes_, choices());
  QGuiApplication::restoreOverrideCursor();
  problem_->hide();
  if (read) {
    file_ = std::move(*read);
    columns_.reset();
    fields_filled_ = true;
    show_layout();
  } else {
    const LoggerProblem why = words_of(read.error());
    say_problem(why.headline, why.detail);
    if (filling_) file_.reset();
    if (!file_) offer_columns(read.error());
  }
  if (!read) thinned_ = {};
  show_preview();
}

void LoggerImport::say_problem(const QString& headline, const QString& detail) {
  problem_->set(cellar::Severity::warning, headline, detail);
  problem_->show();
}

QString LoggerImport::problem() const {
  return problem_->isHidden() ? QString() : problem_->headline();
}

void LoggerImport::show_preview() {
  const report::Speaker speaker = context_.speaker();
  thinned_ = {};
  readings_ = future_ = skipped_ = known_ = 0;
  if (file_ && problem_->isHidden()) {
    auto all = cellar::on_calendar(file_->readings, context_.cellar.calendar(), &skipped_);
    const cellar::Instant now = context_.cellar.now();
    while (!all.empty() && all.back().at > now) {
      all.pop_back();
      ++future_;
    }
    readings_ = all.size();
    thinned_ = cellar::thinned(all);
    leave_out_what_is_known();
  }
  const auto rows = std::min<int>(previewed, static_cast<int>(thinned_.kept.size()));
  preview_->setRowCount(rows);
  preview_->setHorizontalHeaderLabels({tr("Time here"), tr("Temperature")});
  for (int i = 0; i < rows; ++i) {
    const cellar::TimedTemperature& t = thinned_.kept[static_cast<std::size_t>(i)];
    preview_->setItem(i, 0, new QTableWidgetItem(q(report::say_clock(t.at, speaker))));
    preview_->setItem(i, 1, new QTableWidgetItem(q(speaker.printer.print(t.temperature))));
  }
  preview_->setVisible(rows > 0);
  words_->setText(in_words());
  words_->setVisible(file_.has_value());
  const bool bad = file_ && file_->bad_lines > 0;
  bad_title_->setVisible(bad);
  bad_->setVisible(bad);
  if (bad) {
    bad_title_->setText(tr("%1 lines can’t be read and are left out")
                            .arg(static_cast<qulonglong>(file_->bad_lines)));
    QStringList lines;
    for (std::size_t i = 0; i < std::min(bad_shown, file_->bad.size()); ++i)
      lines << line_words(file_->bad[i]);
    if (file_->bad_lines > static_cast<std::size_t>(lines.size())) lines << tr("and more");
    bad_->setPlainText(lines.join(QLatin1Char('\n')));
  }
  accept_->setEnabled(!thinned_.kept.empty());
}

// A file taken over once more, or one that begins where the last one ended, doubles
// nothing.
void LoggerImport::leave_out_what_is_known() {
  const auto place = place_->value();
  if (!place) return;
  std::set<cellar::Instant> known;
  for (const cellar::Entry* e : context_.cellar.journal().story(subject(*place))) {
    if (holds_alternative<cellar::TemperatureRead>(e->payload)) known.insert(e->header.happened_at);
  }
  known_ = std::erase_if(thinned_.kept,
                         [&](const cellar::TimedTemperature& t) { return known.contains(t.at); });
}

QString LoggerImport::in_words() const {
  if (!file_) return {};
  if (thinned_.kept.empty() && known_ > 0) return tr("All of this is in the log already.");
  if (thinned_.kept.empty()) return tr("Nothing in this file can be imported.");
  const report::Speaker speaker = context_.speaker();
  QString words = tr("%1 readings from %2 to %3. %4 of them tell all the rest within %5 and will "
                     "be logged.")
                      .arg(static_cast<qulonglong>(readings_))
                      .arg(q(report::say_clock(thinned_.kept.front().at, speaker)),
                           q(report::say_clock(thinned_.kept.back().at, speaker)))
                      .arg(static_cast<qulonglong>(thinned_.kept.size()))
                      .arg(q(speaker.printer.print(thinned_.step)));
  if (future_ > 0)
    words += tr(" %1 lie in the future and are left out: is the logger’s clock right?")
                 .arg(static_cast<qulonglong>(future_));
  if (known_ > 0)
    words += tr(" Left out as logged already: %1.").arg(static_cast<qulonglong>(known_));
  if (skipped_ > 0)
    words +=
        tr(" %1 fall in the hour that the clocks skip.").arg(static_cast<qulonglong>(skipped_));
  return words;
}

cellar::Act LoggerImport::act() const {
  cellar::Act act;
  act.by = by_->value();
  const auto place = place_->value();
  if (!place) return act;
  for (const cellar::TimedTemperature& t : thinned_.kept) {
    cellar::TemperatureRead read{.place = *place, .temperature = t.temperature};
    read.thermometer = thermometer_->value();
    read.of = of_->index() == 1 ? cellar::TemperatureOf::liquid : cellar::TemperatureOf::air;
    act.drafts.push_back({cellar::Payload(read), t.at, {}, {}});
  }
  return act;
}

bool LoggerImport::log() {
  place_->show_fault();
  if (!place_->fault().isEmpty() || !by_->fault().isEmpty() || thinned_.kept.empty()) return false;
  const cellar::Outcome<cellar::ActId> outcome = context_.cellar.log(act());
  if (!outcome) {
    QStringList sentences;
    for (const cellar::Fault& fault : outcome.error().faults) {
      const QString sentence = q(report::say(fault.why, context_.speaker()));
      if (!sentences.contains(sentence)) sentences << sentence;
    }
    say_problem(tr("Nothing was imported."), sentences.mid(0, 3).join(QLatin1Char('\n')));
    return false;
  }
  const auto count = static_cast<qulonglong>(thinned_.kept.size());
  accept();
  context_.navigator.announce(tr("Imported %1 temperatures from %2.").arg(count).arg(name_), true);
  return true;
}

}  // namespace ullage::ui
