// SPDX-License-Identifier: GPL-3.0-or-later
//
// One of a few: as buttons in a row while there are at most four, else as a
// drop-down. Values keep their C++ type:
//
//   auto* method = new EnumPicker<cellar::PurgeMethod>(
//       {{cellar::PurgeMethod::cycles, "Cycles"}, {...}}, this);
#pragma once

#include <QStringList>
#include <QWidget>
#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

class QButtonGroup;
class QComboBox;

namespace ullage::ui {

class ChoiceBar : public QWidget {
  Q_OBJECT
 public:
  enum class Look { automatic, buttons, drop_down };
  explicit ChoiceBar(const QStringList& words, Look = Look::automatic, QWidget* parent = nullptr);
  [[nodiscard]] int index() const;  // -1: nothing chosen
  void set_index(int);
  // The same choices in other words, as when a unit in them changes.
  void set_words(const QStringList&);
  // The name a screen reader says for the whole; the buttons add their words.
  void set_name(const QString&);

 signals:
  void changed();

 private:
  void build_buttons(const QStringList& words);
  void stop_tab_at_choice();
  QButtonGroup* group_ = nullptr;
  QComboBox* combo_ = nullptr;
  QString name_;
};

template <class E>
class EnumPicker : public ChoiceBar {
 public:
  using Options = std::vector<std::pair<E, QString>>;
  explicit EnumPicker(const Options& options, QWidget* parent = nullptr,
                      Look look = Look::automatic)
      : ChoiceBar(words_of(options), look, parent), options_(options) {}

  [[nodiscard]] std::optional<E> value() const {
    const int i = index();
    return i < 0 ? std::nullopt : std::optional<E>(options_.at(static_cast<std::size_t>(i)).first);
  }
  void set_value(std::optional<E> e) {
    const auto at = std::find_if(options_.begin(), options_.end(),
                                 [&](const auto& option) { return e && option.first == *e; });
    set_index(at == options_.end() ? -1 : static_cast<int>(at - options_.begin()));
  }

 private:
  static QStringList words_of(const Options& options) {
    QStringList words;
    for (const auto& option : options) words << option.second;
    return words;
  }
  Options options_;
};

}  // namespace ullage::ui
