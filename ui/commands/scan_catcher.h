// SPDX-License-Identifier: GPL-3.0-or-later
//
// A scanner is a keyboard that types a tag's code and Enter, quicker than a
// person. This catches such a burst wherever the focus is, in the window or in a
// dialog of it, so that the code ends up in no field. Keys that could be the start of a code are
// held back for a moment; when something else follows, or nothing, they are handed on as they came.
#pragma once

#include <QElapsedTimer>
#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QString>
#include <QTimer>
#include <QWidget>
#include <memory>
#include <vector>

namespace ullage::ui {

class ScanCatcher final : public QObject {
  Q_OBJECT
 public:
  // The longest pause between two keys of one scan.
  static constexpr int longest_pause_ms = 60;

  // Watches the keys of `window` and of every dialog that stands before it.
  explicit ScanCatcher(QWidget& window);

 signals:
  // `in` is the window or dialog that had the keyboard.
  void scanned(const QString& keg_tag, QWidget* in);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] bool is_ours(QObject* watched) const;
  [[nodiscard]] bool may_go_on(const QString& typed) const;
  bool take(QWidget& target, QKeyEvent& key);
  bool finish();
  void give_back();

  QWidget& window_;
  QPointer<QWidget> target_;
  QString typed_;
  std::vector<std::unique_ptr<QKeyEvent>> held_;
  QTimer pause_;
  bool giving_back_ = false;
};

}  // namespace ullage::ui
