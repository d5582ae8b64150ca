// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every message the cellar can give, listed in message_list.inc with its
// arguments. Each has its words in core/report/phrases.cpp; a test fails when
// one has none or when its placeholders do not match the number of arguments.
#pragma once

#include <array>
#include <string_view>

namespace ullage::cellar {

enum class MessageKey {
#define ULLAGE_MESSAGE(key, arguments) key,
#include "core/cellar/message_list.inc"
#undef ULLAGE_MESSAGE
};

struct MessageInfo {
  MessageKey key{};
  std::string_view name;
  int arguments = 0;
};

// All of them, in the order of the enum.
inline constexpr auto all_messages = std::to_array<MessageInfo>({
#define ULLAGE_MESSAGE(key, arguments) {MessageKey::key, #key, arguments},
#include "core/cellar/message_list.inc"
#undef ULLAGE_MESSAGE
});

}  // namespace ullage::cellar
