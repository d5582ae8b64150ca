// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/kept_fresh.h"

#include <QEvent>
#include <QWidget>
#include <chrono>

#include "ui/context.h"
#include "ui/preferences.h"

namespace ullage::ui {

KeptFresh::KeptFresh(QWidget& page, const Context& context, std::function<void()> refresh)
    : page_(page), refresh_(std::move(refresh)) {
  listening_ = context.cellar.on_change([this](const cellar::Change&) { grow_stale(); });
  connect(&context.preferences, &Preferences::changed, this, &KeptFresh::grow_stale);
  connect(&minute_, &QTimer::timeout, this, &KeptFresh::grow_stale);
  minute_.start(std::chrono::minutes(1));
  page_.installEventFilter(this);
  refresh_();
}

KeptFresh::~KeptFresh() = default;

void KeptFresh::now() {
  if (!stale_) return;
  stale_ = false;
  refresh_();
}

bool KeptFresh::eventFilter(QObject* page, QEvent* event) {
  if (page == &page_ && event->type() == QEvent::Show) now();
  return QObject::eventFilter(page, event);
}

void KeptFresh::grow_stale() {
  stale_ = true;
  if (page_.isVisible()) now();
}

}  // namespace ullage::ui
