// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which editor shows which type of field. Included by field_binding.cpp only.
#pragma once

#include <QCheckBox>
#include <type_traits>

#include "ui/dialogs/forms/enum_words.h"
#include "ui/dialogs/forms/field_binding.h"
#include "ui/preferences.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/quantity_edits.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {

// What a field type is without its optional.
template <class T>
struct Bare {
  using type = T;
};
template <class T>
struct Bare<std::optional<T>> {
  using type = T;
};
template <class T>
using bare_t = typename Bare<T>::type;

struct EditorFor {
  const Context& context;
  const FieldSpec& spec;
  std::string_view form;  // the kind of entry
  const std::function<void()>& changed;
};

// A field that keeps its value and is not shown.
template <class T>
class HeldBinding : public TypedBinding<T> {
 public:
  [[nodiscard]] QWidget* widget() const override { return nullptr; }
  [[nodiscard]] T read() const override { return value_; }
  void put(const T& value) override { value_ = value; }

 private:
  T value_{};
};

// Any editor with value(), set_value(optional), fault(), show_fault(),
// set_refusal() and changed().
template <class T, class Edit>
class EditBinding : public TypedBinding<T> {
 public:
  EditBinding(Edit* edit, const EditorFor& as) : edit_(edit) {
    QObject::connect(edit_, &Edit::changed, edit_, [changed = as.changed] { changed(); });
    if constexpr (requires { edit_->set_required(true); }) {
      edit_->set_required(!cellar::IsOptional<T>::value || as.spec.required);
    }
    if constexpr (cellar::IsOptional<T>::value && requires { edit_->set_optional(QString()); }) {
      edit_->set_optional(QObject::tr("–"));
    }
  }
  [[nodiscard]] QWidget* widget() const override { return edit_; }
  [[nodiscard]] bool blank() const override { return !edit_->value().has_value(); }
  [[nodiscard]] QString fault() const override { return edit_->fault(); }
  void show_fault() override { edit_->show_fault(); }
  void refuse(const QString& sentence) override { edit_->set_refusal(sentence); }
  [[nodiscard]] T read() const override {
    if constexpr (cellar::IsOptional<T>::value) {
      return edit_->value();
    } else {
      return edit_->value().value_or(T{});
    }
  }
  void put(const T& value) override { edit_->set_value(value); }
  void clear() override { edit_->set_value(std::nullopt); }
  void offer_last(const T& value) override {
    if constexpr (requires { edit_->set_last(std::optional<bare_t<T>>(value)); }) {
      edit_->set_last(std::optional<bare_t<T>>(value));
    }
  }

 private:
  Edit* edit_;
};

class TextBinding : public TypedBinding<std::string> {
 public:
  TextBinding(TextEdit* edit, const EditorFor& as) : edit_(edit) {
    edit_->set_required(as.spec.required);
    QObject::connect(edit_, &TextEdit::changed, edit_, [changed = as.changed] { changed(); });
  }
  [[nodiscard]] QWidget* widget() const override { return edit_; }
  [[nodiscard]] bool blank() const override { return edit_->value().empty(); }
  [[nodiscard]] QString fault() const override { return edit_->fault(); }
  void show_fault() override { edit_->show_fault(); }
  void refuse(const QString& sentence) override { edit_->set_refusal(sentence); }
  [[nodiscard]] std::string read() const override { return edit_->value(); }
  void put(const std::string& value) override { edit_->set_value(value); }

 private:
  TextEdit* edit_;
};

class TickBinding : public TypedBinding<bool> {
 public:
  TickBinding(QCheckBox* box, const EditorFor& as) : box_(box) {
    QObject::connect(box_, &QCheckBox::toggled, box_, [changed = as.changed] { changed(); });
  }
  [[nodiscard]] QWidget* widget() const override { return box_; }
  [[nodiscard]] bool read() const override { return box_->isChecked(); }
  void put(const bool& value) override { box_->setChecked(value); }

 private:
  QCheckBox* box_;
};

// Yes, no, or not looked at.
class LookedBinding : public TypedBinding<std::optional<bool>> {
 public:
  LookedBinding(ChoiceBar* bar, const EditorFor& as) : bar_(bar) {
    QObject::connect(bar_, &ChoiceBar::changed, bar_, [changed = as.changed] { changed(); });
  }
  [[nodiscard]] QWidget* widget() const override { return bar_; }
  [[nodiscard]] std::optional<bool> read() const override {
    return bar_->index() == 0   ? std::optional<bool>(true)
           : bar_->index() == 1 ? std::optional<bool>(false)
                                : std::nullopt;
  }
  void put(const std::optional<bool>& value) override {
    bar_->set_index(!value ? 2 : *value ? 0 : 1);
  }

 private:
  ChoiceBar* bar_;
};

template <class E>
class WordBinding : public TypedBinding<E> {
 public:
  WordBinding(EnumPicker<E>* picker, const EditorFor& as) : picker_(picker) {
    QObject::connect(picker_, &ChoiceBar::changed, picker_, [changed = as.changed] { changed(); });
  }
  [[nodiscard]] QWidget* widget() const override { return picker_; }
  [[nodiscard]] E read() const override { return picker_->value().value_or(E{}); }
  void put(const E& value) override { picker_->set_value(value); }

 private:
  EnumPicker<E>* picker_;
};

template <class T, class Edit>
std::unique_ptr<TypedBinding<T>> edit_on_preferences(const EditorFor& as) {
  return std::make_unique<EditBinding<T, Edit>>(new Edit(as.context.preferences), as);
}
template <class T, class Edit>
std::unique_ptr<TypedBinding<T>> edit_on_cellar(const EditorFor& as) {
  return std::make_unique<EditBinding<T, Edit>>(new Edit(as.context.cellar), as);
}
template <class T, class Picker>
std::unique_ptr<TypedBinding<T>> pick(const EditorFor& as) {
  return std::make_unique<EditBinding<T, Picker>>(new Picker(as.context), as);
}

template <class E>
QStringList choice_words(const Context& context) {
  QStringList words;
  const report::Speaker speaker = context.speaker();
  for (const auto& word : cellar::EnumText<E>::words) words << words_of_choice(word, speaker);
  return words;
}

template <class E>
std::unique_ptr<TypedBinding<E>> choose_word(const EditorFor& as) {
  typename EnumPicker<E>::Options options;
  for (const QString& word : choice_words<E>(as.context)) {
    options.emplace_back(static_cast<E>(options.size()), word);
  }
  auto* picker = new EnumPicker<E>(options);
  // Sizes of kegs stand among the words, in the person's units.
  QObject::connect(&as.context.preferences, &Preferences::changed, picker,
                   [picker, context = as.context] { picker->set_words(choice_words<E>(context)); });
  return std::make_unique<WordBinding<E>>(picker, as);
}

}  // namespace ullage::ui
