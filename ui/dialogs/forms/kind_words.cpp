// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/kind_words.h"

#include "ui/context.h"
#include "ui/dialogs/forms/enum_words.h"
#include "ui/dialogs/forms/form_spec.h"
#include "ui/dialogs/forms/form_words.h"

namespace ullage::ui {
namespace {

struct KindWords {
  Q_DECLARE_TR_FUNCTIONS(KindWords)
};

}  // namespace

// The title of its form; strikes have none.
QString kind_words(std::string_view kind, report::RegionalWords words) {
  if (kind == cellar::Struck::kind) return KindWords::tr("Struck out");
  if (kind == cellar::Restored::kind) return KindWords::tr("Brought back");
  const FormSpec* spec = form_spec(kind);
  return spec ? regional(form_words(spec->title), words) : q(std::string(kind));
}

}  // namespace ullage::ui
