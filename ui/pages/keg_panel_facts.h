// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is known of a keg, in two columns: KegFacts; and how it was made fit to
// fill, step by step: KegPreparation.
#pragma once

#include <QWidget>

#include "ui/pages/panel_subject.h"

class QGridLayout;
class QVBoxLayout;

namespace ullage::ui {

class Figure;
class InkLabel;

class KegFacts final : public QWidget {
  Q_OBJECT
 public:
  explicit KegFacts(QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);

 private:
  QGridLayout* grid_;
  struct Row {
    InkLabel* name;
    InkLabel* words;  // what was stated
    Figure* number;   // what was worked out, with its reasons
  };
  std::vector<Row> rows_;
};

class KegPreparation final : public QWidget {
  Q_OBJECT
 public:
  explicit KegPreparation(QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);

 private:
  QVBoxLayout* steps_;
};

}  // namespace ullage::ui
