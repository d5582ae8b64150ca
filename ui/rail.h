// SPDX-License-Identifier: GPL-3.0-or-later
//
// The left rail: the pages, each with what there is to see on it, and at its
// foot the temperatures of the places with their age. Folds to icons when the
// window is narrow.
#pragma once

#include <QWidget>
#include <vector>

#include "ui/context.h"
#include "ui/theme/icons.h"

class QButtonGroup;
class QVBoxLayout;

namespace ullage::ui {

class InkLabel;
class RailButton;

class Rail : public QWidget {
  Q_OBJECT
 public:
  explicit Rail(const Context& context, QWidget* parent = nullptr);

  void add_page(PageId id, const QString& title, Icon icon);
  void set_current(PageId id);
  // What stands behind the page's name: "12", or "1 locked"; empty for nothing.
  void set_badge(PageId id, const QString& words, bool alarming);
  void set_folded(bool folded);
  void refresh();  // places and their temperatures

 signals:
  void chosen(PageId id);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Page {
    PageId id;
    QString title;
    QString badge;
    Icon icon;
    bool alarming = false;
    RailButton* button = nullptr;
  };
  void dress(Page& page);
  [[nodiscard]] Page& page(PageId id);

  Context context_;
  std::vector<Page> pages_;
  QButtonGroup* group_;
  QVBoxLayout* buttons_;
  InkLabel* name_;
  QVBoxLayout* places_;
  bool folded_ = false;
};

}  // namespace ullage::ui
