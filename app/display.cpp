// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/display.h"

#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>
#include <xcb/xcb.h>

#include <QDir>
#include <QLibraryInfo>
#include <cstdlib>
#include <cstring>

namespace ullage::app {

namespace {

std::string environment_variable(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string() : std::string(value);
}

// Connecting also finds out whether we are let in.
bool x_server_answers() {
  xcb_connection_t* connection = xcb_connect(nullptr, nullptr);
  const bool answers = xcb_connection_has_error(connection) == 0;
  xcb_disconnect(connection);
  return answers;
}

bool socket_answers(const std::string& path) {
  sockaddr_un address{};
  if (path.size() >= sizeof address.sun_path) return false;
  address.sun_family = AF_UNIX;
  std::memcpy(address.sun_path, path.c_str(), path.size() + 1);
  const int fd = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
  if (fd < 0) return false;
  const bool answers =
      ::connect(fd, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0;
  ::close(fd);
  return answers;
}

// Qt needs a plugin for Wayland, which is a package of its own.
bool wayland_server_answers(const std::string& name) {
  const QDir plugins(QLibraryInfo::path(QLibraryInfo::PluginsPath) + "/platforms");
  if (plugins.entryList({"libqwayland*.so"}, QDir::Files).isEmpty()) return false;
  if (!name.empty() && name.front() == '/') return socket_answers(name);
  const std::string folder = environment_variable("XDG_RUNTIME_DIR");
  return !folder.empty() && socket_answers(folder + "/" + name);
}

}  // namespace

DisplayQuestions DisplayQuestions::of_this_machine() {
  return {environment_variable, x_server_answers, wayland_server_answers};
}

std::optional<std::string> why_no_display(const DisplayQuestions& ask) {
  const std::string platform = ask.environment("QT_QPA_PLATFORM");
  const bool by_x = platform.empty() || platform.starts_with("xcb");
  const bool by_wayland = platform.empty() || platform.starts_with("wayland");
  if (!by_x && !by_wayland) return std::nullopt;  // offscreen, vnc ...: no display needed
  const std::string x = ask.environment("DISPLAY");
  const std::string wayland = ask.environment("WAYLAND_DISPLAY");
  if (by_wayland && !wayland.empty() && ask.wayland_answers(wayland)) return std::nullopt;
  if (by_x && !x.empty() && ask.x_answers()) return std::nullopt;
  if (x.empty() && wayland.empty()) {
    return "There is no display here (neither DISPLAY nor WAYLAND_DISPLAY is set), so no window "
           "can be shown.";
  }
  return "The display \"" + (x.empty() ? wayland : x) +
         "\" does not answer or does not let us in, so no window can be shown.";
}

}  // namespace ullage::app
