// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/log_subjects.h"

#include <QComboBox>
#include <QSignalBlocker>

#include "core/report/names.h"
#include "ui/context.h"

namespace ullage::ui {
namespace {

QString key_of(cellar::SubjectRef subject) {
  return QString::number(static_cast<int>(subject.kind)) + QLatin1Char(':') +
         q(cellar::to_text(subject.uuid));
}

void add_subject(QComboBox& box, cellar::SubjectRef subject, const cellar::CellarStatus& status) {
  box.addItem(q(report::name_of(subject, status)), key_of(subject));
}

}  // namespace

void fill_subject_box(QComboBox& box, const cellar::CellarStatus& status) {
  const QVariant chosen = box.currentData();
  const QSignalBlocker quiet(box);
  box.clear();
  box.addItem(QComboBox::tr("Anything"));
  for (const auto& keg : status.kegs) add_subject(box, cellar::subject(keg.record.keg), status);
  for (const auto& line : status.lines) add_subject(box, cellar::subject(line.record.line), status);
  for (const auto& place : status.places) {
    add_subject(box, cellar::subject(place.record.place), status);
  }
  for (const auto& bottle : status.bottles) {
    add_subject(box, cellar::subject(bottle.record.bottle), status);
  }
  for (const auto& batch : status.batches) {
    box.addItem(q(report::batch_with_beer(batch.batch, status)),
                key_of(cellar::subject(batch.batch)));
  }
  for (const auto& beer : status.beers) add_subject(box, cellar::subject(beer.beer), status);
  const int again = chosen.isValid() ? box.findData(chosen) : 0;
  box.setCurrentIndex(again < 0 ? 0 : again);
}

std::optional<cellar::SubjectRef> subject_in(const QComboBox& box) {
  const QStringList parts = box.currentData().toString().split(QLatin1Char(':'));
  if (parts.size() != 2) return std::nullopt;
  const std::optional<cellar::Uuid> uuid = cellar::uuid_from_text(s(parts[1]));
  if (!uuid) return std::nullopt;
  return cellar::SubjectRef{static_cast<cellar::SubjectKind>(parts[0].toInt()), *uuid};
}

void select_subject(QComboBox& box, cellar::SubjectRef subject) {
  const int at = box.findData(key_of(subject));
  if (at >= 0) box.setCurrentIndex(at);
}

}  // namespace ullage::ui
