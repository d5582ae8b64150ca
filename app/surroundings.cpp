// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/surroundings.h"

#include <QUuid>
#include <algorithm>
#include <chrono>

namespace ullage::app {

cellar::Instant SystemClock::now() const {
  return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

cellar::Uuid RandomIds::next() {
  const QByteArray bytes = QUuid::createUuid().toRfc4122();
  cellar::Uuid uuid;
  std::transform(bytes.begin(), bytes.end(), uuid.bytes.begin(),
                 [](char c) { return static_cast<std::uint8_t>(c); });
  return uuid;
}

}  // namespace ullage::app
