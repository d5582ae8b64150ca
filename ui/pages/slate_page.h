// SPDX-License-Identifier: GPL-3.0-or-later
//
// The slate: every computation with no keg at all, found by typing, answered
// while the fields are filled in. Opened from a keg it starts with that keg's
// figures and offers the act the answer leads to. Nothing here is logged by
// itself.
#pragma once

#include <QWidget>
#include <map>
#include <optional>
#include <string>

#include "core/report/slate/prefill.h"
#include "ui/context.h"

class QBoxLayout;
class QLineEdit;
class QListWidget;
class QPushButton;
class QScrollArea;

namespace ullage::ui {

class InkLabel;
class SlateAnswer;
class SlateForm;

class SlatePage final : public QWidget {
  Q_OBJECT
 public:
  explicit SlatePage(const Context& context, QWidget* parent = nullptr);

  // The computation of that key, with the keg's figures in the fields.
  void work_out(const std::string& computation, std::optional<cellar::KegId> keg);
  [[nodiscard]] SlateForm* form() const { return form_; }

 protected:
  bool eventFilter(QObject*, QEvent*) override;
  void resizeEvent(QResizeEvent*) override;

 private:
  QWidget* build_finder();
  QWidget* build_sheet();
  void search();
  void choose(int row);
  void open(const report::slate::Computation&, report::slate::Inputs,
            std::optional<cellar::KegId> keg, const report::slate::Offer* offer = nullptr);
  [[nodiscard]] QString about_keg(const std::string& tag, const report::slate::Offer*) const;
  void answer();
  void forget_keg();
  void show_act(const report::slate::Answer*);
  [[nodiscard]] const cellar::KegStatus* keg_status() const;

  Context context_;
  const report::slate::Computation* computation_ = nullptr;
  std::optional<cellar::KegId> keg_;
  std::shared_ptr<const cellar::CellarStatus> status_;
  // What was typed into each, so that going back finds it again.
  std::map<std::string_view, report::slate::Inputs> left_at_;
  std::vector<const report::slate::Computation*> found_;
  QLineEdit* words_ = nullptr;
  QListWidget* list_ = nullptr;
  InkLabel* none_ = nullptr;
  InkLabel* title_ = nullptr;
  QWidget* about_keg_ = nullptr;
  InkLabel* about_keg_words_ = nullptr;
  QBoxLayout* sides_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  QWidget* form_place_ = nullptr;
  SlateForm* form_ = nullptr;
  SlateAnswer* answer_ = nullptr;
  QPushButton* act_ = nullptr;
  std::optional<cellar::SuggestedTask> act_task_;
};

}  // namespace ullage::ui
