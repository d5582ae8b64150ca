// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaning list as flowing text on pages of a paper, at 96 dots an inch.
#pragma once

#include <QFont>
#include <QTextDocument>
#include <memory>

#include "core/report/cleaning_list.h"
#include "ui/print/paper.h"

namespace ullage::ui {

[[nodiscard]] std::unique_ptr<QTextDocument> cleaning_list_text(const report::CleaningList&, Paper,
                                                                const QFont& base);

}  // namespace ullage::ui
