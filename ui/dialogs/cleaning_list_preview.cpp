// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/cleaning_list_preview.h"

#include <QComboBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QTextDocument>
#include <QTimer>
#include <QVBoxLayout>

#include "core/report/cleaning_list.h"
#include "ui/preferences.h"
#include "ui/print/cleaning_list_text.h"
#include "ui/prompts.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {

CleaningListPreview::CleaningListPreview(const Context& context, cellar::PlannedDay day,
                                         QWidget* parent)
    : QDialog(parent), context_(context), day_(std::move(day)) {
  setObjectName(QStringLiteral("cleaning_list_preview"));
  setWindowTitle(tr("Cleaning list"));
  resize_within_screen(*this, {760, 720});
  build();
  lay_out();
}

CleaningListPreview::~CleaningListPreview() = default;

void CleaningListPreview::build() {
  auto* label = new QLabel(tr("Pa&per"));
  paper_ = new QComboBox;
  paper_->addItem(tr("A4"), static_cast<int>(Paper::a4));
  paper_->addItem(tr("Letter"), static_cast<int>(Paper::letter));
  paper_->setAccessibleName(tr("Paper"));
  label->setBuddy(paper_);
  const bool us = context_.preferences.units().volume == units::VolumeUnit::us_gallon;
  paper_->setCurrentIndex(us ? 1 : 0);
  auto* print = new QPushButton(tr("&Print…"));
  auto* save = new QPushButton(tr("&Save as PDF…"));
  save->setObjectName(QStringLiteral("save_list_pdf"));
  auto* close = new QPushButton(tr("&Close"));
  print->setDefault(true);
  auto* bar = new QHBoxLayout;
  bar->addWidget(label);
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
  auto* papers = new QWidget;
  stack_ = new QVBoxLayout(papers);
  stack_->setContentsMargins(16, 16, 16, 16);
  stack_->setSpacing(16);
  scroll_->setWidget(papers);
  outcome_ = new QLabel;
  outcome_->setWordWrap(true);
  outcome_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* all = new QVBoxLayout(this);
  all->addLayout(bar);
  all->addWidget(scroll_, 1);
  all->addWidget(outcome_);
  connect(paper_, &QComboBox::currentIndexChanged, this, &CleaningListPreview::lay_out);
  connect(print, &QPushButton::clicked, this, &CleaningListPreview::ask_and_print);
  connect(save, &QPushButton::clicked, this, &CleaningListPreview::ask_and_save);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

Paper CleaningListPreview::paper() const {
  return static_cast<Paper>(paper_->currentData().toInt());
}
void CleaningListPreview::set_paper(Paper paper) {
  paper_->setCurrentIndex(paper == Paper::a4 ? 0 : 1);
}

void CleaningListPreview::lay_out() {
  const report::CleaningList list = report::cleaning_list(
      day_, *context_.cellar.status(), context_.speaker(), s(context_.preferences.initials()));
  text_ = cleaning_list_text(list, paper(), font());
  show_pages();
}

void CleaningListPreview::show_pages() {
  while (QLayoutItem* old = stack_->takeAt(0)) {
    delete old->widget();
    delete old;
  }
  const int width = scroll_->viewport()->width() - 32;
  if (width < 100) return;
  const QSizeF page = text_->pageSize();
  const qreal ratio = devicePixelRatioF();
  const qreal scale = width * ratio / page.width();
  for (int i = 0; i < text_->pageCount(); ++i) {
    QImage image(static_cast<int>(page.width() * scale), static_cast<int>(page.height() * scale),
                 QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    painter.translate(0, -i * page.height());
    text_->drawContents(&painter, QRectF(0, i * page.height(), page.width(), page.height()));
    painter.end();
    image.setDevicePixelRatio(ratio);
    auto* label = new QLabel;
    label->setPixmap(QPixmap::fromImage(std::move(image)));
    label->setAccessibleName(tr("Page %1 of %2").arg(i + 1).arg(text_->pageCount()));
    label->setFrameShape(QFrame::Box);
    stack_->addWidget(label, 0, Qt::AlignTop | Qt::AlignHCenter);
  }
  stack_->addStretch(1);
}

void CleaningListPreview::resizeEvent(QResizeEvent* event) {
  QDialog::resizeEvent(event);
  if (text_) QTimer::singleShot(0, this, &CleaningListPreview::show_pages);
}

bool CleaningListPreview::save_pdf(const QString& path) {
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(path);
  printer.setPageSize(page_size(paper()));
  printer.setPageMargins(QMarginsF(0, 0, 0, 0));
  printer.setDocName(tr("Cleaning list"));
  text_->print(&printer);
  const QFileInfo written(path);
  const bool there = written.exists() && written.size() > 0;
  outcome_->setText(there ? tr("Saved %1.").arg(path) : tr("%1 could not be written.").arg(path));
  return there;
}

void CleaningListPreview::ask_and_save() {
  const std::optional<QString> path = context_.prompts.save_file(
      this, tr("Save the cleaning list"), tr("cleaning list.pdf"), tr("PDF (*.pdf)"));
  if (path) save_pdf(*path);
}

void CleaningListPreview::ask_and_print() {
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(page_size(paper()));
  printer.setPageMargins(QMarginsF(0, 0, 0, 0));
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() != QDialog::Accepted) return;
  text_->print(&printer);
  outcome_->setText(tr("Sent to %1.").arg(printer.printerName()));
}

}  // namespace ullage::ui
