// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/listeners.h"

#include <utility>
#include <vector>

namespace ullage::app {

class Listeners::Listening final : public cellar::Subscription {
 public:
  Listening(std::weak_ptr<Listeners> to, int id) : to_(std::move(to)), id_(id) {}
  Listening(const Listening&) = delete;
  Listening& operator=(const Listening&) = delete;
  ~Listening() override {
    if (const auto to = to_.lock()) to->listeners_.erase(id_);
  }

 private:
  std::weak_ptr<Listeners> to_;
  int id_;
};

std::unique_ptr<cellar::Subscription> Listeners::add(Listener listener) {
  const int id = ++last_;
  listeners_.emplace(id, std::make_shared<const Listener>(std::move(listener)));
  return std::make_unique<Listening>(weak_from_this(), id);
}

void Listeners::tell(const cellar::Change& change) const {
  std::vector<int> ids;
  ids.reserve(listeners_.size());
  for (const auto& [id, listener] : listeners_) ids.push_back(id);
  for (const int id : ids) {
    const auto found = listeners_.find(id);
    if (found == listeners_.end()) continue;
    const std::shared_ptr<const Listener> listener = found->second;  // it may end itself
    (*listener)(change);
  }
}

}  // namespace ullage::app
