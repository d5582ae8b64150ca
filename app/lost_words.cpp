// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lost_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "core/report/names.h"
#include "ui/dialogs/forms/kind_words.h"
#include "ui/preferences.h"

namespace ullage::app {
namespace {

constexpr std::size_t listed_at_most = 200;

struct LostWords {
  Q_DECLARE_TR_FUNCTIONS(LostWords)
};

QString line_of(const store::LostEntry& lost, const ui::Context& saved,
                const cellar::CellarStatus& status) {
  QString line = LostWords::tr("Entry %1").arg(lost.sequence);
  if (lost.header) {
    line +=
        QStringLiteral(", ") + ui::q(report::say_clock(lost.header->happened_at, saved.speaker()));
    if (!lost.header->by.empty()) line += LostWords::tr(" by %1").arg(ui::q(lost.header->by));
  }
  line += QStringLiteral(": ") + (lost.kind.empty()
                                      ? LostWords::tr("not known what it was")
                                      : ui::kind_words(lost.kind, saved.preferences.words()));
  QStringList about;
  for (const cellar::SubjectRef& subject : lost.subjects) {
    about << ui::q(report::name_of(subject, status));
  }
  return about.isEmpty() ? line : line + QStringLiteral(" – ") + about.join(QStringLiteral(", "));
}

}  // namespace

QString lost_words(const store::RecoveryReport& report, const ui::Context& saved) {
  if (report.lost.empty()) return ui::q(store::summary(report));
  const auto status = saved.cellar.status();
  QStringList lines = {LostWords::tr("%n entries could not be saved:", nullptr,
                                     static_cast<int>(report.lost.size()))};
  const std::size_t listed = std::min(report.lost.size(), listed_at_most);
  for (std::size_t i = 0; i < listed; ++i) lines << line_of(report.lost[i], saved, *status);
  if (report.lost.size() > listed) {
    lines << LostWords::tr("… and %n more", nullptr, static_cast<int>(report.lost.size() - listed));
  }
  if (report.end_uncertain) {
    lines << LostWords::tr(
        "The end of the journal is among what is broken: entries after the last "
        "one shown may be missing too.");
  }
  return lines.join(QLatin1Char('\n'));
}

}  // namespace ullage::app
