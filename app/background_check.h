// SPDX-License-Identifier: GPL-3.0-or-later
//
// Looks a cellar file over on a thread of its own, while its window is used.
#pragma once

#include <QObject>
#include <filesystem>
#include <functional>
#include <thread>

#include "core/store/check.h"

namespace ullage::app {

class BackgroundCheck : public QObject {
  Q_OBJECT
 public:
  using Done = std::function<void(const store::Expected<void>&)>;

  // `done` is called on the thread that started it; never, when this object goes
  // first or starts again. Going waits for the few rows still being looked at.
  void start(const std::filesystem::path& file, Done done);

 private:
  std::jthread thread_;
};

}  // namespace ullage::app
