// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/typist.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDialog>
#include <QKeySequence>
#include <QLineEdit>
#include <QMainWindow>
#include <QMessageBox>
#include <QTest>
#include <QTimer>
#include <QWindow>
#include <algorithm>

namespace ullage::testing {

namespace {

constexpr int most_tabs = 250;
constexpr int most_choices = 6;  // in one row
constexpr int look_every_ms = 5;
constexpr int mnemonic_ms = 200;
constexpr int unexpected_after = 400;  // looks, that is two seconds

bool is_called(const QWidget& widget, const QString& name) {
  return widget.objectName() == name || widget.accessibleName() == name;
}

QString spoken_name(QWidget* widget) {
  QAccessibleInterface* spoken = widget ? QAccessible::queryAccessibleInterface(widget) : nullptr;
  return spoken ? spoken->text(QAccessible::Name) : QString();
}

// The widget or one around it, within its window.
bool is_in(const QWidget* widget, const QString& name) {
  for (; widget; widget = widget->parentWidget()) {
    if (is_called(*widget, name)) return true;
    if (widget->isWindow()) return false;
  }
  return false;
}

// When a dialog goes, a desktop gives the keyboard to the window below it. There
// is no desktop here.
QWindow* window_in_front() {
  if (QWidget* popup = QApplication::activePopupWidget()) return popup->windowHandle();
  QWidget* front = QApplication::activeModalWidget();
  if (!front) front = QApplication::activeWindow();
  for (QWidget* window : QApplication::topLevelWidgets()) {
    if (!front && window->isVisible() && qobject_cast<QMainWindow*>(window)) front = window;
  }
  if (!front) return nullptr;
  if (QApplication::activeWindow() != front) {
    front->activateWindow();
    if (!QTest::qWaitForWindowActive(front)) return nullptr;
  }
  return front->windowHandle();
}

}  // namespace

Typist::Typist() { look_later(); }
Typist::~Typist() = default;

void Typist::key(Qt::Key key, Qt::KeyboardModifiers with) {
  QWindow* window = window_in_front();
  ASSERT_NE(window, nullptr) << "no window takes the keys";
  QTest::keyClick(window, key, with);
  QApplication::processEvents();
}

void Typist::keys(const QString& text) {
  for (const QChar c : text) {
    QWindow* window = window_in_front();
    ASSERT_NE(window, nullptr) << "no window takes the keys";
    // Signs outside Latin 1 ("°") come as text, as from an input method.
    if (c.unicode() < 0x7f) {
      QTest::keyClick(window, c.toLatin1());
    } else {
      QTest::sendKeyEvent(QTest::Click, window, Qt::Key_unknown, QString(c), Qt::NoModifier);
    }
  }
  QApplication::processEvents();
}

void Typist::paste(const QString& text) {
  QGuiApplication::clipboard()->setText(text);
  chord("Ctrl+A");
  chord("Ctrl+V");
}

void Typist::chord(const char* sequence) {
  const QKeySequence parsed(QString::fromLatin1(sequence), QKeySequence::PortableText);
  const QKeyCombination combination = parsed[0];
  key(combination.key(), combination.keyboardModifiers());
  // A mnemonic holds its button down for a moment before it counts.
  if (combination.keyboardModifiers() == Qt::AltModifier) QTest::qWait(mnemonic_ms);
}

namespace {
QString words_in_focus() {
  const auto* edit = qobject_cast<const QLineEdit*>(QApplication::focusWidget());
  return edit ? edit->text() : QString();
}
// The words of a plain box, so that a failure tells them.
std::string said_in(const QWidget& modal) {
  const auto* box = qobject_cast<const QMessageBox*>(&modal);
  return box ? ": " + box->text().toStdString() : std::string();
}

}  // namespace

QWidget* Typist::focus() { return QApplication::focusWidget(); }

QString Typist::spoken() { return spoken_name(focus()); }

bool Typist::tab_to(const QString& name) {
  QStringList passed;
  for (int i = 0; i < most_tabs; ++i) {
    if (is_in(focus(), name) || spoken() == name) return true;
    passed << (spoken().isEmpty() && focus() ? focus()->metaObject()->className() : spoken());
    key(Qt::Key_Tab);
  }
  passed.removeDuplicates();
  ADD_FAILURE() << "Tab does not lead to '" << name.toStdString()
                << "', only to: " << passed.join(QStringLiteral(" | ")).toStdString();
  return false;
}

void Typist::fill(const QString& name, const QString& text) {
  if (!tab_to(name)) return;
  chord("Ctrl+A");
  if (text.isEmpty()) {
    key(Qt::Key_Delete);
  } else {
    keys(text);
  }
}

void Typist::push(const QString& name) {
  if (!tab_to(name)) return;
  key(Qt::Key_Space);
}

void Typist::choose(const QString& name, const QString& words) {
  if (!tab_to(name)) return;
  const auto said = [] {
    if (const auto* combo = qobject_cast<const QComboBox*>(focus())) return combo->currentText();
    const auto* button = qobject_cast<const QAbstractButton*>(focus());
    return button ? button->text().remove(QLatin1Char('&')) : QString();
  };
  const bool in_combo = qobject_cast<const QComboBox*>(focus()) != nullptr;
  if (in_combo) key(Qt::Key_Home);
  for (int i = 0; !in_combo && i < most_choices; ++i) key(Qt::Key_Left);  // to the first
  for (int i = 0; i < most_tabs && said() != words; ++i) {
    key(in_combo ? Qt::Key_Down : Qt::Key_Right);
  }
  EXPECT_EQ(said().toStdString(), words.toStdString()) << name.toStdString();
  if (!in_combo) key(Qt::Key_Space);
}

void Typist::expect(const QString& dialog, std::function<void()> body) {
  expected_.push_back({dialog, std::move(body)});
}

void Typist::look_later() const { QTimer::singleShot(look_every_ms, this, &Typist::look); }

// Runs inside the dialog's own event loop, and may lead into another's.
void Typist::look() {
  look_later();
  QWidget* modal = QApplication::activeModalWidget();
  const bool known = std::find(busy_.begin(), busy_.end(), modal) != busy_.end();
  if (!modal || known) {
    idle_ = 0;
    return;
  }
  const bool awaited =
      !expected_.empty() && (modal->objectName() == expected_.front().dialog ||
                             modal->inherits(expected_.front().dialog.toLatin1().constData()));
  if (!awaited) {
    if (++idle_ > unexpected_after) close_unexpected(modal);
    return;
  }
  idle_ = 0;
  const Expected now = std::move(expected_.front());
  expected_.pop_front();
  const QPointer<QWidget> dialog = modal;
  busy_.push_back(dialog);
  ++running_;
  EXPECT_TRUE(QTest::qWaitForWindowActive(modal)) << now.dialog.toStdString();
  now.body();
  (void)QTest::qWaitFor([&] { return !dialog || !dialog->isVisible(); }, 500);
  --running_;
  std::erase(busy_, dialog);
  if (dialog && dialog->isVisible()) {
    ADD_FAILURE() << "still open after all was typed: " << now.dialog.toStdString()
                  << ", focus on '" << spoken().toStdString() << "' "
                  << words_in_focus().toStdString();
    if (auto* box = qobject_cast<QDialog*>(dialog.data())) box->done(QDialog::Rejected);
  }
}

void Typist::close_unexpected(QWidget* modal) {
  ADD_FAILURE() << "a dialog nobody expected: " << modal->metaObject()->className() << " '"
                << modal->objectName().toStdString() << "' “" << modal->windowTitle().toStdString()
                << "” " << modal->accessibleName().toStdString() << said_in(*modal);
  idle_ = 0;
  if (auto* box = qobject_cast<QDialog*>(modal)) {
    box->done(QDialog::Rejected);
  } else {
    modal->close();
  }
}

void Typist::finish() {
  const bool all_came = QTest::qWaitFor(
      [this] { return expected_.empty() && running_ == 0 && !QApplication::activeModalWidget(); },
      5000);
  EXPECT_TRUE(all_came) << (expected_.empty()
                                ? std::string("a dialog stayed open")
                                : "never came: " + expected_.front().dialog.toStdString());
  expected_.clear();
}

}  // namespace ullage::testing
