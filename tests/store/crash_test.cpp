// SPDX-License-Identifier: GPL-3.0-or-later
//
// A writer killed at random: what it was promised is there, and no half act.
#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>

#include <algorithm>
#include <csignal>
#include <map>
#include <set>
#include <thread>

#include "core/store/check.h"
#include "tests/store/store_fixture.h"

namespace ullage::testing {
namespace {

constexpr int kills = 210;
constexpr int kills_a_file = 30;

// The writing program at work, and the acts it says are kept.
class Writer {
 public:
  Writer(const std::filesystem::path& file, std::uint64_t seed) {
    std::array<int, 2> ends{};
    EXPECT_EQ(::pipe2(ends.data(), O_CLOEXEC), 0);
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    std::string program = ULLAGE_CRASH_CHILD;
    std::string path = file.string();
    std::string number = std::to_string(seed);
    std::array<char*, 4> words = {program.data(), path.data(), number.data(), nullptr};
    EXPECT_EQ(::posix_spawn(&pid_, program.c_str(), &actions, nullptr, words.data(), environ), 0);
    posix_spawn_file_actions_destroy(&actions);
    ::close(ends[1]);
    promises_ = ends[0];
  }
  Writer(const Writer&) = delete;
  Writer& operator=(const Writer&) = delete;
  ~Writer() { ::close(promises_); }

  void wait_for_a_promise() const {
    pollfd wait{promises_, POLLIN, 0};
    EXPECT_EQ(::poll(&wait, 1, 30'000), 1) << "the writer wrote nothing in 30 s";
  }

  // Kills it and gives the acts it had promised.
  std::set<cellar::Uuid> kill() const {
    ::kill(pid_, SIGKILL);
    int status = 0;
    ::waitpid(pid_, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "it ended by itself, with " << WEXITSTATUS(status);
    std::set<cellar::Uuid> promised;
    cellar::Uuid act;
    while (::read(promises_, act.bytes.data(), act.bytes.size()) ==
           static_cast<ssize_t>(act.bytes.size())) {
      promised.insert(act);
    }
    return promised;
  }

 private:
  pid_t pid_ = 0;
  int promises_ = -1;
};

class CrashTest : public StoreTest {};

TEST_F(CrashTest, AKilledWriterLosesNothingPromisedAndLeavesNoHalfAct) {
  std::mt19937_64 random(20'250'101);
  const auto up_to = [&](int limit) {
    return std::uniform_int_distribution<int>(0, limit)(random);
  };
  std::size_t promised_in_all = 0;
  int killed_at_work = 0;
  for (int k = 0; k < kills; ++k) {
    const std::string name = std::to_string(k / kills_a_file) + ".ullage";
    if (k % kills_a_file == 0) made(name).close();
    const std::int64_t before = opened(name).last_sequence().value();

    const Writer writer(file(name), static_cast<std::uint64_t>(k) + 1);
    // Some while opening, most while writing.
    if (k % 7 != 0) writer.wait_for_a_promise();
    std::this_thread::sleep_for(std::chrono::microseconds(up_to(12'000)));
    const std::set<cellar::Uuid> promised = writer.kill();
    promised_in_all += promised.size();

    auto store = store::JournalStore::open(file(name));
    ASSERT_TRUE(store) << "kill " << k << ": " << why(store);
    const auto loaded = store->load_after(before);
    ASSERT_TRUE(loaded) << "kill " << k << ": " << why(loaded);
    std::map<cellar::Uuid, std::pair<int, int>> acts;  // how many there are, how many there must be
    for (const cellar::Entry& entry : *loaded) {
      auto& [there, wanted] = acts[entry.header.act.uuid];
      ++there;
      wanted = std::stoi(entry.header.note);
    }
    for (const auto& [act, sizes] : acts) {
      ASSERT_EQ(sizes.first, sizes.second) << "half an act after kill " << k;
    }
    for (const cellar::Uuid& act : promised) {
      ASSERT_TRUE(acts.contains(act)) << "a promised act is lost after kill " << k;
    }
    if (acts.size() > promised.size()) ++killed_at_work;
    if (k % kills_a_file == kills_a_file - 1) {
      const auto sound = store::check_file(file(name), store::CheckDepth::full);
      ASSERT_TRUE(sound) << why(sound);
    }
  }
  // Else the test would not have tested anything.
  EXPECT_GT(promised_in_all, static_cast<std::size_t>(kills));
  RecordProperty("acts_promised", static_cast<int>(promised_in_all));
  RecordProperty("killed_between_commit_and_promise", killed_at_work);
}

}  // namespace
}  // namespace ullage::testing
