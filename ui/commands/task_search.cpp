// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/task_search.h"

#include <QStringList>
#include <algorithm>

#include "ui/context.h"
#include "ui/models/word_search.h"

namespace ullage::ui {

namespace {

constexpr int whole_word = 12;
constexpr int start_of_title_word = 8;
constexpr int start_of_keyword = 5;
constexpr int thing_named = 10;

struct Thing {
  cellar::SubjectRef about;
  QString name;
};

// "K07", "k7" and "K-7" are one: letters in small, numbers without leading zeros.
QString folded_name(const QString& name) {
  QString plain;
  QString digits;
  const auto flush = [&] {
    if (digits.isEmpty()) return;
    while (digits.size() > 1 && digits.front() == QLatin1Char('0')) digits.remove(0, 1);
    plain += digits;
    digits.clear();
  };
  for (const QChar c : folded(name)) {
    if (c.isDigit()) {
      digits += c;
      continue;
    }
    flush();
    if (c.isLetter()) plain += c;
  }
  flush();
  return plain;
}

std::vector<Thing> things_of(const cellar::CellarStatus& status) {
  std::vector<Thing> things;
  for (const auto& keg : status.kegs) {
    if (keg.record.in_use) things.push_back({cellar::subject(keg.record.keg), q(keg.record.tag)});
  }
  for (const auto& line : status.lines) {
    if (line.record.in_use)
      things.push_back({cellar::subject(line.record.line), q(line.record.name)});
  }
  for (const auto& place : status.places) {
    if (place.record.in_use)
      things.push_back({cellar::subject(place.record.place), q(place.record.name)});
  }
  for (const auto& bottle : status.bottles) {
    if (bottle.record.in_use)
      things.push_back({cellar::subject(bottle.record.bottle), q(bottle.record.name)});
  }
  for (const auto& regulator : status.regulators) {
    if (regulator.in_use)
      things.push_back({cellar::subject(regulator.regulator), q(regulator.name)});
  }
  for (const auto& instrument : status.instruments) {
    if (instrument.in_use)
      things.push_back({cellar::subject(instrument.instrument), q(instrument.name)});
  }
  for (const auto& beer : status.beers)
    things.push_back({cellar::subject(beer.beer), q(beer.name)});
  return things;
}

// How well the words fit the task; nullopt when one of them fits nothing in it.
std::optional<int> fit(const QStringList& words, const TaskForm& task) {
  const auto title = folded(task.title).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  const auto keywords = folded(task.keywords).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  int total = 0;
  for (const QString& word : words) {
    int best = 0;
    for (const QString& of_title : title) {
      if (of_title == word) best = std::max(best, whole_word);
      if (of_title.startsWith(word)) best = std::max(best, start_of_title_word);
    }
    for (const QString& keyword : keywords) {
      if (keyword == word) best = std::max(best, whole_word - 1);
      if (keyword.startsWith(word)) best = std::max(best, start_of_keyword);
    }
    if (best == 0) return std::nullopt;
    total += best;
  }
  // "batch" is the batch itself before it is what happens to batches.
  if (title.size() == words.size()) ++total;
  return total;
}

// The thing that the typed words from `from` to the end name, if any: "line 3"
// is two words and one thing.
const Thing* thing_named_by(const QStringList& words, const std::vector<Thing>& things) {
  const QString name = folded_name(words.join(QString()));
  if (name.isEmpty()) return nullptr;
  const auto at = std::find_if(things.begin(), things.end(),
                               [&](const Thing& thing) { return folded_name(thing.name) == name; });
  return at == things.end() ? nullptr : &*at;
}

void add_matches(std::vector<TaskMatch>& matches, const QStringList& words, const Thing* thing,
                 const std::vector<TaskForm>& tasks) {
  for (const TaskForm& task : tasks) {
    if (thing && task.about != thing->about.kind) continue;
    const auto score = fit(words, task);
    if (!score) continue;
    if (thing) {
      matches.push_back({&task, thing->about, thing->name, *score + thing_named});
    } else {
      matches.push_back({&task, {}, {}, *score});
    }
  }
}

}  // namespace

std::vector<TaskMatch> find_tasks(const QString& typed, const std::vector<TaskForm>& tasks,
                                  const cellar::CellarStatus& status) {
  const QStringList words = folded(typed).split(QLatin1Char(' '), Qt::SkipEmptyParts);
  const std::vector<Thing> things = things_of(status);
  std::vector<TaskMatch> matches;
  add_matches(matches, words, nullptr, tasks);
  for (qsizetype from = 0; from < words.size(); ++from) {  // "fill k7"
    if (const Thing* thing = thing_named_by(words.mid(from), things)) {
      add_matches(matches, words.mid(0, from), thing, tasks);
    }
  }
  for (qsizetype to = 1; to < words.size(); ++to) {  // "k7 fill"
    if (const Thing* thing = thing_named_by(words.mid(0, to), things)) {
      add_matches(matches, words.mid(to), thing, tasks);
    }
  }
  std::stable_sort(matches.begin(), matches.end(),
                   [](const TaskMatch& a, const TaskMatch& b) { return a.score > b.score; });
  if (matches.size() > most_task_matches && !words.isEmpty()) matches.resize(most_task_matches);
  return matches;
}

}  // namespace ullage::ui
