// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/sheet_preview.h"

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

#include "ui/preferences.h"
#include "ui/print/sheet_output.h"
#include "ui/prompts.h"

namespace ullage::ui {

SheetPreview::SheetPreview(const Context& context, QWidget* parent,
                           const std::optional<cellar::AsOf>& as_of)
    : QDialog(parent), context_(context), as_of_(as_of) {
  setWindowTitle(tr("Status sheet"));
  resize(980, 720);
  build();
  lay_out();
}

SheetPreview::~SheetPreview() = default;

void SheetPreview::build() {
  auto* paper_label = new QLabel(tr("Pa&per"));
  paper_ = new QComboBox;
  paper_->addItem(tr("A4"), static_cast<int>(Paper::a4));
  paper_->addItem(tr("Letter"), static_cast<int>(Paper::letter));
  paper_->setAccessibleName(tr("Paper"));
  paper_label->setBuddy(paper_);
  const bool us = context_.preferences.units().volume == units::VolumeUnit::us_gallon;
  paper_->setCurrentIndex(us ? 1 : 0);
  auto* print = new QPushButton(tr("&Print…"));
  auto* save = new QPushButton(tr("&Save as PDF…"));
  save->setObjectName(QStringLiteral("save_pdf"));
  auto* close = new QPushButton(tr("&Close"));
  print->setDefault(true);

  auto* bar = new QHBoxLayout;
  bar->addWidget(paper_label);
  bar->addWidget(paper_);
  bar->addStretch(1);
  bar->addWidget(save);
  bar->addWidget(print);
  bar->addWidget(close);

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

  auto* all = new QVBoxLayout(this);
  all->addLayout(bar);
  all->addWidget(scroll_, 1);
  all->addWidget(outcome_);

  connect(paper_, &QComboBox::currentIndexChanged, this, &SheetPreview::lay_out);
  connect(&context_.preferences, &Preferences::changed, this, &SheetPreview::lay_out);
  connect(print, &QPushButton::clicked, this, &SheetPreview::ask_and_print);
  connect(save, &QPushButton::clicked, this, &SheetPreview::ask_and_save);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

Paper SheetPreview::paper() const { return static_cast<Paper>(paper_->currentData().toInt()); }

void SheetPreview::lay_out() {
  const std::shared_ptr<const cellar::CellarStatus> status =
      as_of_ ? context_.cellar.status_as_of(*as_of_) : context_.cellar.status();
  report::Speaker speaker = context_.speaker();
  speaker.now = status->now;
  report::StatusSheet sheet =
      report::status_sheet(*status, speaker, s(context_.preferences.initials()));
  if (as_of_) {
    sheet.printed = s(tr("As of %1, told on %2")
                          .arg(q(report::say_clock(status->now, speaker)),
                               q(report::say_clock(context_.cellar.now(), context_.speaker()))));
  }
  pages_ = std::make_unique<StatusSheetPages>(std::move(sheet), paper(), font());
  show_pages();
}

void SheetPreview::show_pages() {
  while (QLayoutItem* old = stack_->takeAt(0)) {
    delete old->widget();
    delete old;
  }
  const int width = scroll_->viewport()->width() - 32;
  if (width < 100) return;
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
  stack_->addStretch(1);
}

void SheetPreview::resizeEvent(QResizeEvent* event) {
  QDialog::resizeEvent(event);
  // The viewport takes its new size only after this event.
  if (pages_) QTimer::singleShot(0, this, &SheetPreview::show_pages);
}

bool SheetPreview::save_pdf(const QString& path) {
  const auto written = write_pdf(*pages_, paper(), path, tr("Status sheet"));
  outcome_->setText(written ? tr("Saved %1.").arg(path) : written.error());
  return written.has_value();
}

void SheetPreview::ask_and_save() {
  const std::optional<QString> path = context_.prompts.save_file(
      this, tr("Save the status sheet"), tr("status sheet.pdf"), tr("PDF (*.pdf)"));
  if (path) save_pdf(*path);
}

void SheetPreview::ask_and_print() {
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(page_size(paper()));
  printer.setPageOrientation(QPageLayout::Landscape);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  const auto printed = print_pages(*pages_, printer);
  outcome_->setText(printed ? tr("Sent to %1.").arg(printer.printerName()) : printed.error());
}

}  // namespace ullage::ui
