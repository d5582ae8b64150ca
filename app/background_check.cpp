// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/background_check.h"

namespace ullage::app {

void BackgroundCheck::start(const std::filesystem::path& file, Done done) {
  thread_ = std::jthread([this, file, done = std::move(done)](const std::stop_token& stop) {
    const store::Expected<void> found = store::check_file(file, store::CheckDepth::full, stop);
    if (stop.stop_requested()) return;
    QMetaObject::invokeMethod(this, [done, found] { done(found); }, Qt::QueuedConnection);
  });
}

}  // namespace ullage::app
