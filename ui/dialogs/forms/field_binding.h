// SPDX-License-Identifier: GPL-3.0-or-later
//
// One field of a payload and the editor that shows it. A form holds its fields
// in the payload's own order, so that reading the form is one walk through
// fields() and nothing is matched by hand.
#pragma once

#include <QString>
#include <QWidget>
#include <functional>
#include <memory>
#include <string>

#include "ui/context.h"
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

class FieldBinding {
 public:
  virtual ~FieldBinding() = default;
  [[nodiscard]] virtual QWidget* widget() const = 0;  // null when held, not shown
  [[nodiscard]] virtual bool blank() const { return false; }
  [[nodiscard]] virtual QString fault() const { return {}; }
  virtual void show_fault() {}
  virtual void refuse(const QString&) {}
  virtual void clear() {}

  std::string column;
};

template <class T>
class TypedBinding : public FieldBinding {
 public:
  [[nodiscard]] virtual T read() const = 0;
  virtual void put(const T& value) = 0;
  virtual void offer_last(const T&) {}
};

using Bindings = std::vector<std::unique_ptr<FieldBinding>>;

// One binding for each field of the payload, in its order, showing its values.
// `changed` is called after any edit.
[[nodiscard]] Bindings bind_fields(const cellar::Payload& payload, const FormSpec& spec,
                                   const Context& context, const std::function<void()>& changed);

// The payload as the editors show it; fields whose editor holds nothing keep
// the payload's default.
[[nodiscard]] cellar::Payload read_fields(const cellar::Payload& like, const Bindings& bindings);
void put_fields(const cellar::Payload& from, const Bindings& bindings);
// Empties the editors of required quantities that still have the value of a
// default-made payload: nobody has stated them.
void clear_unstated(const cellar::Payload& payload, const Bindings& bindings);
// Offers `last`'s readings in grey.
void offer_last(const cellar::Payload& last, const FormSpec& spec, const Bindings& bindings);

}  // namespace ullage::ui
