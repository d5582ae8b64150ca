// SPDX-License-Identifier: GPL-3.0-or-later
//
// Who wants to hear of changes. A listener may end its own listening, or others',
// while it is being told, and a subscription may outlive the cellar.
#pragma once

#include <functional>
#include <map>
#include <memory>

#include "core/cellar/facade.h"

namespace ullage::app {

class Listeners : public std::enable_shared_from_this<Listeners> {
 public:
  using Listener = std::function<void(const cellar::Change&)>;

  [[nodiscard]] std::unique_ptr<cellar::Subscription> add(Listener);
  void tell(const cellar::Change&) const;

 private:
  class Listening;
  std::map<int, std::shared_ptr<const Listener>> listeners_;
  int last_ = 0;
};

}  // namespace ullage::app
