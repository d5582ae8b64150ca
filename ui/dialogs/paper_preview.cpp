// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/paper_preview.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/preferences.h"
#include "ui/print/sheet_output.h"
#include "ui/print/whole_file.h"
#include "ui/prompts.h"
#include "ui/theme/style.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {

PaperPreview::PaperPreview(const Context& context, const QString& title, QWidget* parent)
    : QDialog(parent), context_(context) {
  setWindowTitle(title);
  resize_within_screen(*this, {980, 720});
  build();
}

PaperPreview::~PaperPreview() = default;

void PaperPreview::build() {
  paper_ = new QComboBox;
  paper_->addItem(tr("A4"), static_cast<int>(Paper::a4));
  paper_->addItem(tr("Letter"), static_cast<int>(Paper::letter));
  const bool us = context_.preferences.units().volume == units::VolumeUnit::us_gallon;
  paper_->setCurrentIndex(us ? 1 : 0);
  auto* print = new QPushButton(tr("&Print…"), this);
  auto* save = new QPushButton(tr("&Save as PDF…"));
  save->setObjectName(QStringLiteral("save_pdf"));
  csv_ = new QPushButton(tr("Save as CS&V…"));
  csv_->setObjectName(QStringLiteral("save_csv"));
  csv_->hide();
  auto* close = new QPushButton(tr("&Close"));
  make_default(print);

  choices_ = new QHBoxLayout;
  add_choice(tr("Pa&per"), paper_);
  auto* bar = new QHBoxLayout;
  bar->addLayout(choices_);
  bar->addStretch(1);

  scroll_ = new QScrollArea;
  scroll_->setAccessibleName(tr("Pages"));
  scroll_->setWidgetResizable(true);
  scroll_->setFocusPolicy(Qt::StrongFocus);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* paper_stack = new QWidget;
  stack_ = new QVBoxLayout(paper_stack);
  stack_->setContentsMargins(16, 16, 16, 16);
  stack_->setSpacing(16);
  scroll_->setWidget(paper_stack);

  outcome_ = new QLabel;
  outcome_->setWordWrap(true);
  outcome_->setTextInteractionFlags(Qt::TextSelectableByMouse);

  // What was asked for above, what can be done with it below: side by side they
  // are wider than a small screen in some languages.
  auto* foot = new QHBoxLayout;
  foot->addWidget(outcome_, 1);
  foot->addWidget(csv_);
  foot->addWidget(save);
  foot->addWidget(print);
  foot->addWidget(close);

  auto* all = new QVBoxLayout(this);
  all->addLayout(bar);
  all->addWidget(scroll_, 1);
  all->addLayout(foot);

  connect(paper_, &QComboBox::currentIndexChanged, this, &PaperPreview::lay_out);
  connect(&context_.preferences, &Preferences::changed, this, &PaperPreview::lay_out);
  connect(print, &QPushButton::clicked, this, &PaperPreview::ask_and_print);
  connect(save, &QPushButton::clicked, this, &PaperPreview::ask_and_save);
  connect(csv_, &QPushButton::clicked, this, &PaperPreview::ask_and_save_csv);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

void PaperPreview::add_choice(const QString& label, QWidget* choice) {
  if (!label.isEmpty()) {
    auto* words = new QLabel(label);
    words->setBuddy(choice);
    choices_->addWidget(words);
    QString name = label;
    choice->setAccessibleName(name.remove(QLatin1Char('&')));
  }
  choices_->addWidget(choice);
}

void PaperPreview::offer_csv() { csv_->show(); }

Paper PaperPreview::paper() const { return static_cast<Paper>(paper_->currentData().toInt()); }

void PaperPreview::lay_out() {
  pages_ = make_pages();
  outcome_->clear();
  show_pages();
}

void PaperPreview::show_pages() {
  while (QLayoutItem* old = stack_->takeAt(0)) {
    delete old->widget();
    delete old;
  }
  const int room = scroll_->viewport()->width() - 32;
  if (room < 100) return;
  // A small tag is not blown up to the width of a sheet.
  const bool small = pages_->size().width() < millimetres_on_paper(150);
  const int width = small ? std::min(room, 420) : room;
  const qreal ratio = devicePixelRatioF();
  for (int page = 0; page < pages_->count(); ++page) {
    QImage image = picture_of(*pages_, page, static_cast<int>(width * ratio));
    image.setDevicePixelRatio(ratio);
    auto* label = new QLabel;
    label->setPixmap(QPixmap::fromImage(std::move(image)));
    label->setAccessibleName(tr("Page %1 of %2").arg(page + 1).arg(pages_->count()));
    label->setFrameShape(QFrame::Box);
    stack_->addWidget(label, 0, Qt::AlignTop | Qt::AlignHCenter);
  }
  if (pages_->count() == 0) stack_->addWidget(new QLabel(tr("There is nothing to print.")));
  stack_->addStretch(1);
}

void PaperPreview::resizeEvent(QResizeEvent* event) {
  QDialog::resizeEvent(event);
  // The viewport takes its new size only after this event.
  if (pages_) QTimer::singleShot(0, this, &PaperPreview::show_pages);
}

bool PaperPreview::save_pdf(const QString& path) {
  const auto written = write_pdf(*pages_, path, windowTitle());
  outcome_->setText(written ? tr("Saved %1.").arg(path) : written.error());
  return written.has_value();
}

bool PaperPreview::write_file(const QString& path, const std::string& text) {
  const auto written = write_whole(path, text);
  outcome_->setText(written ? tr("Saved %1.").arg(path) : written.error());
  return written.has_value();
}

bool PaperPreview::save_csv(const QString& path) {
  const std::optional<std::string> table = csv();
  return table && write_file(path, *table);
}

void PaperPreview::ask_and_save() {
  if (pages_->count() == 0) return;
  const std::optional<QString> path = context_.prompts.save_file(
      this, tr("Save as PDF"), windowTitle().toLower() + ".pdf", tr("PDF (*.pdf)"));
  if (path) save_pdf(*path);
}

void PaperPreview::ask_and_save_csv() {
  const std::optional<QString> path = context_.prompts.save_file(
      this, tr("Save as CSV"), windowTitle().toLower() + ".csv", tr("CSV (*.csv)"));
  if (path) save_csv(*path);
}

void PaperPreview::ask_and_print() {
  if (pages_->count() == 0) return;
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(pages_->layout().pageSize());
  printer.setPageOrientation(pages_->layout().orientation());
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const auto printed = print_pages(*pages_, printer);
  outcome_->setText(printed ? tr("Sent to %1.").arg(printer.printerName()) : printed.error());
}

}  // namespace ullage::ui
