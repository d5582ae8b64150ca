// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/tag_preview.h"

#include <QCheckBox>
#include <QComboBox>

#include "ui/print/tag_pages.h"

namespace ullage::ui {

TagPreview::TagPreview(const Context& context, TagKind kind, QWidget* parent,
                       std::optional<cellar::KegId> keg, std::optional<cellar::LineId> line)
    : PaperPreview(context, kind == TagKind::kegs ? tr("Keg tags") : tr("Warning tags"), parent),
      kind_(kind) {
  which_ = new QComboBox;
  which_->setObjectName(QStringLiteral("which"));
  if (kind == TagKind::kegs) {
    add_kegs(keg);
  } else {
    add_warnings(line);
  }
  add_choice(tr("&Which"), which_);
  size_ = new QComboBox;
  size_->setObjectName(QStringLiteral("size"));
  size_->addItem(tr("Four to a page"), static_cast<int>(TagSheet::four_a_page));
  size_->addItem(tr("One to a page, A6"), static_cast<int>(TagSheet::single));
  add_choice(tr("Si&ze"), size_);
  connect(which_, &QComboBox::currentIndexChanged, this, &TagPreview::lay_out);
  connect(size_, &QComboBox::currentIndexChanged, this, &TagPreview::lay_out);
  if (kind == TagKind::kegs) {
    backs_ = new QCheckBox(tr("&Backs"));
    backs_->setChecked(true);
    add_choice({}, backs_);
    connect(backs_, &QCheckBox::toggled, this, &TagPreview::lay_out);
  }
  lay_out();
}

void TagPreview::add_kegs(std::optional<cellar::KegId> chosen) {
  which_->addItem(tr("All kegs at hand"));
  for (const cellar::KegStatus& keg : context().cellar.status()->kegs) {
    if (!keg.record.in_use) continue;
    kegs_.push_back(keg.record.keg);
    which_->addItem(q(keg.record.tag));
    if (chosen == keg.record.keg) which_->setCurrentIndex(which_->count() - 1);
  }
}

void TagPreview::add_warning(const QString& words,
                             std::function<std::vector<report::WarningTag>()> make) {
  which_->addItem(words);
  warnings_.push_back(std::move(make));
}

// Each choice holds the status that its line, keg or bottle is a part of.
void TagPreview::add_warnings(std::optional<cellar::LineId> chosen) {
  const auto status = context().cellar.status();
  add_warning(tr("All there is reason for"), [this] {
    return report::warning_tags(context().cellar.journal(), *context().cellar.status(),
                                context().speaker());
  });
  for (const cellar::LineStatus& line : status->lines) {
    if (!line.record.in_use) continue;
    add_warning(tr("Do not serve: %1").arg(q(line.record.name)), [this, status, &line] {
      return std::vector{report::do_not_serve_tag(line, context().speaker())};
    });
    if (chosen == line.record.line) which_->setCurrentIndex(which_->count() - 1);
  }
  for (const cellar::KegStatus& keg : status->kegs) {
    if (!keg.record.in_use) continue;
    add_warning(tr("Under pressure: %1").arg(q(keg.record.tag)), [this, status, &keg] {
      return std::vector{report::vent_first_tag(keg, context().speaker())};
    });
    add_warning(tr("Out of service: %1").arg(q(keg.record.tag)), [this, status, &keg] {
      return std::vector{report::out_of_service_tag(keg, context().speaker())};
    });
    if (!keg.contents) continue;
    add_warning(tr("Recalled: %1").arg(q(keg.record.tag)), [this, status, id = keg.record.keg] {
      return std::vector{*report::warning_tag(report::Warning::recalled, cellar::subject(id),
                                              context().cellar.journal(), *status,
                                              context().speaker())};
    });
  }
  for (const cellar::BottleStatus& bottle : status->bottles) {
    if (!bottle.record.in_use) continue;
    add_warning(tr("Gas: %1").arg(q(bottle.record.name)), [this, status, &bottle] {
      return std::vector{report::gas_tag(bottle, context().speaker())};
    });
  }
}

std::unique_ptr<Pages> TagPreview::make_pages() {
  const TagPaper form{paper(), static_cast<TagSheet>(size_->currentData().toInt()),
                      backs_ != nullptr && backs_->isChecked()};
  const auto chosen = static_cast<std::size_t>(std::max(0, which_->currentIndex()));
  if (kind_ == TagKind::warnings) {
    return std::make_unique<TagPages>(warnings_.at(chosen)(), form, font());
  }
  const auto status = context().cellar.status();
  const report::Speaker speaker = context().speaker();
  const cellar::Journal& journal = context().cellar.journal();
  if (chosen == 0) {
    return std::make_unique<TagPages>(report::keg_tags(journal, *status, speaker), form, font());
  }
  std::vector<report::KegTag> one;
  if (const cellar::KegStatus* keg = status->find(kegs_.at(chosen - 1))) {
    one.push_back(report::keg_tag(*keg, journal, *status, speaker));
  }
  return std::make_unique<TagPages>(std::move(one), form, font());
}

}  // namespace ullage::ui
