// SPDX-License-Identifier: GPL-3.0-or-later
//
// The reasons behind the numbers of the keg table: a click on a number opens its
// own, the space bar or the right button lists those of the row.
#pragma once

#include <QObject>

#include "ui/models/keg_table_model.h"

class QRect;

namespace ullage::ui {

class KegTableView;
struct Context;

class KegRowReasons final : public QObject {
  Q_OBJECT
 public:
  // Belongs to the table.
  KegRowReasons(KegTableView&, const Context&);

 private:
  void open_one(KegColumn, const QRect& at);
  void offer_all(const QRect& at);

  KegTableView& table_;
  const Context& context_;
};

}  // namespace ullage::ui
