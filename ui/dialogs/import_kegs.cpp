// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/import_kegs.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/report/names.h"
#include "ui/preferences.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {
namespace {

constexpr int not_in_the_file = -1;

// What the file does not say is taken from the kind of keg, as well as that is known.
template <class Q>
QString assumed_or_read(Q value, Q half_width, const units::Printer& printer) {
  if (half_width.value() <= 0) return q(printer.print(value));
  const auto estimate = units::Estimate<Q>(value).with_error({"kind"}, half_width);
  return ImportKegs::tr("~%1, assumed").arg(q(printer.print(estimate)));
}

}  // namespace

ImportKegs::ImportKegs(const Context& context, const QString& path, QWidget* parent)
    : QDialog(parent), context_(context) {
  setWindowTitle(tr("Import a keg list"));
  resize_within_screen(*this, {900, 640});
  read(path);
  build();
  plan();
}

ImportKegs::~ImportKegs() = default;

void ImportKegs::read(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    faults_ << tr("Can’t read %1: %2.").arg(path, file.errorString());
    return;
  }
  // A byte more than is allowed tells that there is more.
  const QByteArray bytes = file.read(static_cast<qint64>(report::csv_most_bytes) + 1);
  auto read = report::read_csv({bytes.constData(), static_cast<std::size_t>(bytes.size())});
  if (!read) {
    faults_ << q(report::say(read.error()));
    return;
  }
  file_ = std::move(*read);
  readable_ = true;
}

void ImportKegs::add_columns(QFormLayout& form) {
  const report::KegColumns matched = report::matched_columns(file_.header);
  for (std::size_t i = 0; i < report::keg_fields.size(); ++i) {
    auto* choice = new QComboBox;
    choice->addItem(tr("not in the file"), not_in_the_file);
    for (std::size_t c = 0; c < file_.header.fields.size(); ++c) {
      choice->addItem(q(file_.header.fields[c]), static_cast<int>(c));
      if (matched[i] == c) choice->setCurrentIndex(choice->count() - 1);
    }
    const QString name = q(report::say(report::keg_fields[i]));
    choice->setObjectName(QStringLiteral("column_%1").arg(i));
    choice->setAccessibleName(name);
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setMinimumContentsLength(14);
    form.addRow(name, choice);
    connect(choice, &QComboBox::currentIndexChanged, this, &ImportKegs::plan);
    columns_[i] = choice;
  }
}

void ImportKegs::build() {
  auto* form = new QFormLayout;
  add_columns(*form);
  table_ = new QTableWidget;
  table_->setAccessibleName(tr("Kegs as they would be registered"));
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setTabKeyNavigation(false);
  table_->verticalHeader()->hide();
  problems_ = new QPlainTextEdit;
  problems_->setObjectName(QStringLiteral("problems"));
  problems_->setAccessibleName(tr("What stands in the way"));
  problems_->setReadOnly(true);
  problems_->setTabChangesFocus(true);
  outcome_ = new QLabel;
  outcome_->setObjectName(QStringLiteral("outcome"));
  outcome_->setWordWrap(true);

  auto* right = new QVBoxLayout;
  right->addWidget(outcome_);
  right->addWidget(problems_, 1);
  right->addWidget(table_, 2);
  auto* middle = new QHBoxLayout;
  middle->addLayout(form);
  middle->addLayout(right, 1);
  auto* buttons = new QDialogButtonBox(this);
  import_ = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
  import_->setObjectName(QStringLiteral("import"));
  QPushButton* cancel = buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->addLayout(middle, 1);
  all->addWidget(buttons);
  setTabOrder(table_, import_);
  setTabOrder(import_, cancel);
  connect(buttons, &QDialogButtonBox::accepted, this, &ImportKegs::log);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

report::KegColumns ImportKegs::columns() const {
  report::KegColumns columns;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const int column = columns_[i]->currentData().toInt();
    if (column != not_in_the_file) columns[i] = static_cast<std::size_t>(column);
  }
  return columns;
}

void ImportKegs::plan() {
  if (readable_) {
    faults_.clear();
    plan_.clear();
    auto planned =
        report::plan_kegs(file_, columns(), *context_.cellar.status(), context_.parser());
    if (planned) {
      plan_ = std::move(*planned);
    } else {
      for (const report::KegImportFault& fault : planned.error()) faults_ << q(fault.words);
    }
  }
  show_plan();
}

void ImportKegs::show_plan() {
  const bool ready = faults_.isEmpty() && !plan_.empty() && !context_.cellar.read_only();
  import_->setEnabled(ready);
  outcome_->setText(
      faults_.isEmpty()
          ? tr("%n keg(s) will be registered", nullptr, static_cast<int>(plan_.size()))
          : tr("Nothing will be imported until this is put right in the file, or "
               "another column is chosen:"));
  problems_->setPlainText(faults_.join(QLatin1Char('\n')));
  problems_->setVisible(!faults_.isEmpty());
  table_->setVisible(faults_.isEmpty());
  const QStringList names = {tr("Line"),    tr("Number"),      tr("Kind"),   tr("Place"),
                             tr("Size"),    tr("Full volume"), tr("Empty"),  tr("Rated"),
                             tr("Coupler"), tr("Owner"),       tr("Deposit")};
  table_->setColumnCount(static_cast<int>(names.size()));
  table_->setHorizontalHeaderLabels(names);
  table_->setRowCount(static_cast<int>(plan_.size()));
  const report::Speaker speaker = context_.speaker();
  const auto status = context_.cellar.status();
  for (int row = 0; row < table_->rowCount(); ++row) {
    const report::PlannedKeg& planned = plan_[static_cast<std::size_t>(row)];
    const cellar::KegRecord& keg = planned.keg;
    const QStringList cells = {
        QString::number(planned.line),
        q(keg.tag),
        q(report::say(keg.keg_kind, speaker)),
        keg.place ? q(report::name_of(cellar::subject(*keg.place), *status)) : QString(),
        q(speaker.printer.print(keg.nominal)),
        assumed_or_read(keg.brimful, keg.brimful_half_width, speaker.printer),
        keg.tare ? assumed_or_read(*keg.tare, keg.tare_half_width.value_or(units::kilograms(0)),
                                   speaker.printer)
                 : QString(),
        keg.rated_pressure ? q(speaker.printer.print(*keg.rated_pressure)) : QString(),
        q(keg.coupler),
        q(std::string(cellar::to_word(keg.owner))),
        keg.deposit_minor ? QString::number(static_cast<double>(*keg.deposit_minor) / 100, 'f', 2)
                          : QString()};
    for (int column = 0; column < cells.size(); ++column) {
      table_->setItem(row, column, new QTableWidgetItem(cells[column]));
    }
  }
  table_->resizeColumnsToContents();
}

cellar::Act ImportKegs::act() const {
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  for (const report::PlannedKeg& planned : plan_) {
    cellar::KegRecord keg = planned.keg;
    keg.keg = context_.cellar.fresh<cellar::KegId>();
    act.drafts.push_back({cellar::Payload(boost::variant2::in_place_type<cellar::KegRecord>, keg),
                          context_.cellar.now(),
                          {},
                          {}});
  }
  return act;
}

bool ImportKegs::log() {
  plan();  // another window may have registered a keg meanwhile
  if (!faults_.isEmpty() || plan_.empty()) return false;
  const cellar::Outcome<cellar::ActId> outcome = context_.cellar.log(act());
  if (!outcome) {
    for (const cellar::Fault& fault : outcome.error().faults) {
      const QString sentence = q(report::say(fault.why, context_.speaker()));
      faults_ << (fault.draft < plan_.size()
                      ? tr("Line %1: %2").arg(plan_[fault.draft].line).arg(sentence)
                      : sentence);
    }
    show_plan();
    return false;
  }
  const int count = static_cast<int>(plan_.size());
  accept();
  context_.navigator.announce(tr("%n keg(s) imported", nullptr, count), true);
  return true;
}

}  // namespace ullage::ui
