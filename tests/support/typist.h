// SPDX-License-Identifier: GPL-3.0-or-later
//
// A person at the keyboard who has no mouse. Keys go to the window in front as
// the system would send them, so that shortcuts, mnemonics, pop-ups and default
// buttons answer as they do in life. Fields are reached with Tab alone.
//
// A dialog waits inside exec(): say beforehand what is to be typed into it.
//
//   typist.expect("new_cellar", [&] { typist.fill("cellar_name", "Shed"); ... });
//   typist.chord("Ctrl+N");
//   typist.finish();
#pragma once

#include <QObject>
#include <QPointer>
#include <QString>
#include <deque>
#include <functional>
#include <vector>

class QDialog;
class QWidget;

namespace ullage::testing {

class Typist : public QObject {
 public:
  Typist();
  ~Typist() override;

  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
  void keys(const QString& text);
  void chord(const char* sequence);  // "Ctrl+L", "Alt+N"
  // In place of what the field holds. Not key by key: the completer of Qt's file dialog
  // reads folders meanwhile, and moves the cursor between keys that no hand is as fast as.
  void paste(const QString& text);

  // Presses Tab until the focus is in the widget with this object name or
  // accessible name. Fails the test when Tab comes round without it.
  bool tab_to(const QString& name);
  // Tabs there and puts `text` in place of what stands there.
  void fill(const QString& name, const QString& text);
  // Tabs to a button or tick box and presses the space bar.
  void push(const QString& name);
  // Tabs to a row of buttons or a drop-down and arrows to the words.
  void choose(const QString& name, const QString& words);

  // What has the focus, as a screen reader names it.
  [[nodiscard]] static QString spoken();
  [[nodiscard]] static QWidget* focus();

  // What to do in the next dialog of this object name (or class). One that is
  // still open afterwards fails the test and is closed.
  void expect(const QString& dialog, std::function<void()> body);
  // Waits until every expected dialog has come and gone.
  void finish();

 private:
  struct Expected {
    QString dialog;
    std::function<void()> body;
  };
  void look_later() const;
  void look();
  void close_unexpected(QWidget* modal);

  std::deque<Expected> expected_;
  std::vector<QPointer<QWidget>> busy_;  // dialogs that are being typed into
  int running_ = 0;
  int idle_ = 0;
};

}  // namespace ullage::testing
