// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/scan_catcher.h"

#include <QApplication>
#include <QDialog>

#include "core/report/keg_code.h"
#include "ui/context.h"

namespace ullage::ui {
namespace {

constexpr int longest_code = 120;  // every byte of the longest tag as %XX

bool stands_before(const QWidget& top, const QWidget& window) {
  if (qobject_cast<const QDialog*>(&top) == nullptr) return false;
  for (const QWidget* each = top.parentWidget(); each != nullptr; each = each->parentWidget()) {
    if (each == &window) return true;
  }
  return false;
}

}  // namespace

ScanCatcher::ScanCatcher(QWidget& window) : QObject(&window), window_(window) {
  pause_.setSingleShot(true);
  pause_.setInterval(longest_pause_ms);
  // A scanner that types no Enter is understood by its pause.
  connect(&pause_, &QTimer::timeout, this, [this] {
    if (!finish()) give_back();
  });
  qApp->installEventFilter(this);
}

// The widget that has the focus is asked once; a key that it leaves alone goes on
// to its parents, and must not be taken for another.
bool ScanCatcher::is_ours(QObject* watched) const {
  const auto* widget = qobject_cast<QWidget*>(watched);
  if (!widget) return false;
  const QWidget* top = widget->window();
  if (top != &window_ && !stands_before(*top, window_)) return false;
  const QWidget* focus = top->focusWidget();
  return widget == focus || (!focus && widget == top);
}

bool ScanCatcher::eventFilter(QObject* watched, QEvent* event) {
  // Who turns to the mouse has done typing.
  if (event->type() == QEvent::MouseButtonPress && !typed_.isEmpty()) give_back();
  if (giving_back_ || event->type() != QEvent::KeyPress || !is_ours(watched)) return false;
  return take(*static_cast<QWidget*>(watched), *static_cast<QKeyEvent*>(event));
}

// "ullage", one mark, "keg", one mark, and what the tag is written with.
bool ScanCatcher::may_go_on(const QString& typed) const {
  static const QString pattern = QStringLiteral("ullage?keg?");
  if (typed.size() > longest_code) return false;
  for (qsizetype i = 0; i < typed.size(); ++i) {
    const QChar c = typed[i];
    const bool plain = c.unicode() < 0x80 && c.isLetterOrNumber();
    if (i >= pattern.size()) {
      if (!plain && !QStringLiteral("-._%").contains(c)) return false;
    } else if (pattern[i] == QLatin1Char('?')) {
      if (plain || c.isSpace()) return false;
    } else if (c.toLower() != pattern[i]) {
      return false;
    }
  }
  return true;
}

bool ScanCatcher::take(QWidget& target, QKeyEvent& key) {
  const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
  if (enter && !typed_.isEmpty()) {
    if (finish()) return true;
    give_back();
    return false;
  }
  // Shift by itself types nothing and comes before a capital.
  const bool modifier = key.key() == Qt::Key_Shift || key.key() == Qt::Key_CapsLock;
  if (modifier) return false;
  const Qt::KeyboardModifiers odd = key.modifiers() & (Qt::ControlModifier | Qt::AltModifier);
  if (key.text().isEmpty() || odd || !may_go_on(typed_ + key.text())) {
    give_back();
    if (key.text().isEmpty() || odd || !may_go_on(key.text())) return false;
  }
  target_ = &target;
  typed_ += key.text();
  held_.emplace_back(key.clone());
  pause_.start();
  return true;
}

bool ScanCatcher::finish() {
  const auto tag = report::keg_from_scan(s(typed_));
  if (!tag) return false;
  pause_.stop();
  typed_.clear();
  held_.clear();
  if (target_) emit scanned(q(*tag), target_->window());
  return true;
}

void ScanCatcher::give_back() {
  pause_.stop();
  typed_.clear();
  std::vector<std::unique_ptr<QKeyEvent>> held;
  held.swap(held_);
  giving_back_ = true;
  for (const auto& key : held) {
    if (target_) QApplication::sendEvent(target_, key.get());
  }
  giving_back_ = false;
}

}  // namespace ullage::ui
