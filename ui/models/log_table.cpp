// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/log_table.h"

#include <QElapsedTimer>
#include <QFont>
#include <algorithm>
#include <numeric>

#include "core/report/names.h"

namespace ullage::ui {
namespace {

constexpr qint64 slice_milliseconds = 6;  // leaves the frame room to paint

}  // namespace

LogTable::LogTable(const Context& context, QObject* parent)
    : QAbstractTableModel(parent), context_(context) {
  slice_.setInterval(0);
  connect(&slice_, &QTimer::timeout, this, &LogTable::search_slice);
  reload();
}

void LogTable::reload() {
  speaker_ = context_.speaker();
  names_ = context_.cellar.status();
  sort_entries();
  set_filter(filter_);
}

void LogTable::sort_entries() {
  const auto& entries = context_.cellar.journal().entries();
  newest_first_.resize(entries.size());
  std::iota(newest_first_.begin(), newest_first_.end(), std::size_t{0});
  std::sort(newest_first_.begin(), newest_first_.end(), [&](std::size_t a, std::size_t b) {
    const cellar::EntryHeader& x = entries[a].header;
    const cellar::EntryHeader& y = entries[b].header;
    return x.happened_at != y.happened_at ? x.happened_at > y.happened_at : x.sequence > y.sequence;
  });
}

void LogTable::set_filter(const LogFilter& filter) {
  beginResetModel();
  filter_ = filter;
  shown_.clear();
  next_to_search_ = 0;
  endResetModel();
  slice_.start();
  search_slice();
}

void LogTable::search_slice() {
  QElapsedTimer spent;
  spent.start();
  const cellar::Journal& journal = context_.cellar.journal();
  std::vector<std::size_t> found;
  while (next_to_search_ < newest_first_.size() && spent.elapsed() < slice_milliseconds) {
    const std::size_t at = newest_first_[next_to_search_++];
    const cellar::Entry& entry = journal.entries()[at];
    if (!filter_.admits(entry, journal)) continue;
    if (!filter_.words.empty() && !filter_.words.finds(whole_line(entry))) continue;
    found.push_back(at);
  }
  if (!found.empty()) {
    const int first = static_cast<int>(shown_.size());
    beginInsertRows({}, first, first + static_cast<int>(found.size()) - 1);
    shown_.insert(shown_.end(), found.begin(), found.end());
    endInsertRows();
  }
  if (next_to_search_ >= newest_first_.size()) {
    slice_.stop();
    emit search_finished();
  }
}

const cellar::Entry* LogTable::entry_at(const QModelIndex& index) const {
  if (!index.isValid() || index.row() >= static_cast<int>(shown_.size())) return nullptr;
  return &context_.cellar.journal().entries()[shown_[static_cast<std::size_t>(index.row())]];
}

QModelIndex LogTable::index_of(cellar::EntryId id) const {
  const auto& entries = context_.cellar.journal().entries();
  const auto at = std::find_if(shown_.begin(), shown_.end(),
                               [&](std::size_t i) { return entries[i].header.id == id; });
  return at == shown_.end() ? QModelIndex() : index(static_cast<int>(at - shown_.begin()), 0);
}

int LogTable::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int LogTable::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : columns;
}

QString LogTable::standing_words(const cellar::Entry& entry) const {
  const cellar::Journal& journal = context_.cellar.journal();
  switch (journal.standing(entry.header.id)) {
    case cellar::Standing::struck: {
      const cellar::Entry* striker = journal.struck_by(entry.header.id);
      const auto* strike = striker ? get_if<cellar::Struck>(&striker->payload) : nullptr;
      return strike && !strike->reason.empty() ? tr("Struck: %1").arg(q(strike->reason))
                                               : tr("Struck");
    }
    case cellar::Standing::replaced:
      return tr("Corrected");
    case cellar::Standing::in_force:
      break;
  }
  return entry.header.replaces ? tr("Correction") : QString();
}

QString LogTable::text(const cellar::Entry& entry, Column column) const {
  switch (column) {
    case when:
      return q(report::say_clock(entry.header.happened_at, speaker_));
    case about: {
      QStringList names;
      for (const std::string& name : report::things_named(entry.payload, *names_)) {
        names << q(name);
      }
      return names.join(QStringLiteral(" · "));
    }
    case what: {
      QString line = q(report::say_entry(entry.payload, *names_, speaker_));
      if (!entry.header.note.empty()) {
        line +=
            line.isEmpty() ? q(entry.header.note) : QStringLiteral(" – ") + q(entry.header.note);
      }
      return line;
    }
    case by:
      return q(entry.header.by);
    case standing:
      return standing_words(entry);
    case columns:
      break;
  }
  return {};
}

QString LogTable::whole_line(const cellar::Entry& entry) const {
  QString line;
  for (int column = 0; column < columns; ++column) {
    line += text(entry, static_cast<Column>(column)) + QLatin1Char(' ');
  }
  return line;
}

QVariant LogTable::data(const QModelIndex& index, int role) const {
  const cellar::Entry* entry = entry_at(index);
  if (!entry) return {};
  const bool out_of_story =
      context_.cellar.journal().standing(entry->header.id) != cellar::Standing::in_force;
  switch (role) {
    case Qt::DisplayRole:
      return text(*entry, static_cast<Column>(index.column()));
    case Qt::AccessibleTextRole:
      return whole_line(*entry);
    case Qt::FontRole:
      if (out_of_story && index.column() != standing) {
        QFont struck_out;
        struck_out.setStrikeOut(true);
        return struck_out;
      }
      return {};
    case struck_role:
      return out_of_story;
    case correction_role:
      return entry->header.replaces.has_value();
    default:
      return {};
  }
}

QVariant LogTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case when:
      return tr("When");
    case about:
      return tr("About");
    case what:
      return tr("What happened");
    case by:
      return tr("By");
    case standing:
      return tr("Standing");
    default:
      return {};
  }
}

}  // namespace ullage::ui
