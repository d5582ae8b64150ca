// SPDX-License-Identifier: GPL-3.0-or-later
//
// The head of the Kegs page: its name, the chips that filter, the search
// field, order and density, and the two things most often done from here.
#pragma once

#include <QWidget>
#include <array>

#include "ui/models/keg_listing.h"

class QActionGroup;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace ullage::ui {

class Chip;
class InkLabel;

class KegsBar final : public QWidget {
  Q_OBJECT
 public:
  explicit KegsBar(QWidget* parent = nullptr);

  void set_counts(const std::vector<std::size_t>& by_filter);  // in the order of all_keg_filters
  void set_filter(KegFilter);
  void set_order(KegOrder);
  void set_compact(bool);
  void set_panel_shown(bool);
  // Without kegs there is nothing to filter, sort or print.
  void set_any_kegs(bool);
  // So many kegs are registered of which nothing is known: offers to count them.
  void set_uncounted(int kegs);
  [[nodiscard]] QLineEdit* search() const { return search_; }

 signals:
  void filter_chosen(ullage::ui::KegFilter);
  void order_chosen(ullage::ui::KegOrder);
  void compact_chosen(bool);
  void panel_wanted(bool);
  void text_changed(const QString&);
  void status_sheet_wanted();
  void transfer_wanted();
  void stock_taking_wanted();

 protected:
  void changeEvent(QEvent*) override;

 private:
  void build_top();
  void build_tools();
  void build_stock();
  void draw_icons();

  QLineEdit* search_;
  QPushButton* sheet_;
  QPushButton* transfer_;
  std::array<Chip*, std::tuple_size_v<decltype(all_keg_filters)>> chips_{};
  QWidget* chip_row_;
  QToolButton* order_;
  QActionGroup* orders_;
  QToolButton* density_;
  QToolButton* panel_;
  QWidget* stock_row_;
  InkLabel* uncounted_ = nullptr;
  QAction* search_sign_ = nullptr;
};

}  // namespace ullage::ui
