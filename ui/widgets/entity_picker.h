// SPDX-License-Identifier: GPL-3.0-or-later
//
// Chooses one registered thing by typing part of its name or from the list.
// Follows the cellar: what another window registers appears, and the choice
// stays. Typed pickers, so that a keg picker gives a KegId:
//
//   auto* keg = new KegPicker(context, this);
//   keg->set_shows([](const cellar::KegStatus& k) { return !k.contents; });
//   keg->set_optional("Not from a keg");
#pragma once

#include <QComboBox>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "ui/context.h"

namespace ullage::ui {

class FieldMessage;

struct Choice {
  cellar::Uuid uuid;
  QString name;    // "K07"
  QString detail;  // "Saison No. 4, ready since Mon"
};

class EntityPicker : public QWidget {
  Q_OBJECT
 public:
  ~EntityPicker() override;
  // Shows a first row of this text that stands for none.
  void set_optional(const QString& none_text);
  // A last row such as "New batch…"; choosing it emits add_asked with whatever
  // was typed and leaves the choice as it was.
  void set_add(const QString& text);
  void set_required(bool required) { required_ = required; }
  [[nodiscard]] std::optional<cellar::Uuid> chosen() const { return chosen_; }
  void choose(std::optional<cellar::Uuid>);
  // Whether it is among the rows.
  [[nodiscard]] bool offers(const cellar::Uuid&) const;
  [[nodiscard]] QString fault() const;
  void show_fault();
  void set_refusal(const QString&);
  [[nodiscard]] QComboBox* combo() const { return combo_; }

 signals:
  void changed();
  void add_asked(const QString& typed);

 protected:
  EntityPicker(const Context&, QWidget* parent);
  [[nodiscard]] virtual std::vector<Choice> choices() const = 0;
  [[nodiscard]] virtual cellar::SubjectKind kind() const = 0;  // for the sentences
  void reload();
  [[nodiscard]] const Context& context() const { return context_; }
  void resizeEvent(QResizeEvent*) override;

 private:
  void on_activated(int row);
  void on_typed();
  void take(std::optional<cellar::Uuid>);
  void say();
  [[nodiscard]] QString what() const;
  const Context context_;
  QComboBox* combo_;
  FieldMessage* below_;
  std::vector<Choice> rows_;
  std::optional<cellar::Uuid> chosen_;
  QString none_text_, add_text_, typed_fault_, refusal_;
  QString unknown_;  // what was typed and fits nothing: the name of what is to be added
  bool required_ = false;
  bool fault_on_show_ = false;
  std::unique_ptr<cellar::Subscription> follows_;
};

template <class Row>
using Shows = std::function<bool(const Row&)>;

// What each kind of picker offers: rows in use that `shows` lets through (all
// of them when it is empty), under the names people know them by.
[[nodiscard]] std::vector<Choice> offered(const Context&, const Shows<cellar::KegStatus>&);
[[nodiscard]] std::vector<Choice> offered(const Context&, const Shows<cellar::BeerRecord>&);
[[nodiscard]] std::vector<Choice> offered(const Context&, const Shows<cellar::BatchRecord>&);
[[nodiscard]] std::vector<Choice> offered(const Context&, const Shows<cellar::PlaceStatus>&);
[[nodiscard]] std::vector<Choice> offered(const Context&, const Shows<cellar::LineStatus>&);
[[nodiscard]] std::vector<Choice> offered(const Context&, const Shows<cellar::BottleStatus>&);
[[nodiscard]] std::vector<Choice> offered(const Context&, const Shows<cellar::RegulatorRecord>&);
[[nodiscard]] std::vector<Choice> offered(const Context&, const Shows<cellar::InstrumentRecord>&);

template <class Id, class Row>
class TypedPicker : public EntityPicker {
 public:
  explicit TypedPicker(const Context& context, QWidget* parent = nullptr)
      : EntityPicker(context, parent) {
    reload();
  }
  [[nodiscard]] std::optional<Id> value() const {
    const auto uuid = chosen();
    return uuid ? std::optional<Id>(Id{*uuid}) : std::nullopt;
  }
  void set_value(std::optional<Id> id) {
    choose(id ? std::optional<cellar::Uuid>(id->uuid) : std::nullopt);
  }
  // Which ones are offered. At first all that are in use.
  void set_shows(Shows<Row> shows) {
    shows_ = std::move(shows);
    reload();
  }

 protected:
  [[nodiscard]] std::vector<Choice> choices() const override { return offered(context(), shows_); }
  [[nodiscard]] cellar::SubjectKind kind() const override { return cellar::subject(Id{}).kind; }

 private:
  Shows<Row> shows_;
};

using KegPicker = TypedPicker<cellar::KegId, cellar::KegStatus>;
using BeerPicker = TypedPicker<cellar::BeerId, cellar::BeerRecord>;
using BatchPicker = TypedPicker<cellar::BatchId, cellar::BatchRecord>;
using PlacePicker = TypedPicker<cellar::PlaceId, cellar::PlaceStatus>;
using LinePicker = TypedPicker<cellar::LineId, cellar::LineStatus>;
using BottlePicker = TypedPicker<cellar::BottleId, cellar::BottleStatus>;
using RegulatorPicker = TypedPicker<cellar::RegulatorId, cellar::RegulatorRecord>;
using InstrumentPicker = TypedPicker<cellar::InstrumentId, cellar::InstrumentRecord>;

}  // namespace ullage::ui
