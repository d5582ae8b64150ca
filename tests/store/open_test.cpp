// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every way in which a file can be other than a sound cellar of this release.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <sqlite3.h>
#include <sys/wait.h>

#include <set>

#include "core/store/check.h"
#include "core/store/connection.h"
#include "core/store/file_probe.h"
#include "core/store/schema.h"
#include "tests/store/store_fixture.h"

namespace ullage::testing {
namespace {

using store::Access;
using store::Connection;
using store::ConnectionMode;
using store::JournalStore;
using store::OpenOptions;
using store::StoreFault;

class OpenTest : public StoreTest {
 protected:
  [[nodiscard]] StoreFault fault(const std::filesystem::path& path,
                                 const OpenOptions& options = {}) const {
    const auto opened = JournalStore::open(path, options);
    EXPECT_FALSE(opened);
    if (opened) return StoreFault::cancelled;
    const std::string sentence = store::describe(opened.error());
    EXPECT_THAT(sentence, ::testing::HasSubstr(path.filename().string()));
    EXPECT_THAT(sentence, ::testing::EndsWith("."));
    return opened.error().fault;
  }
  void run_sql(const std::filesystem::path& path, const std::string& sql) const {
    auto db = Connection::open(path, ConnectionMode::read_write);
    ASSERT_TRUE(db);
    const auto ran = db->run(sql);
    ASSERT_TRUE(ran) << why(ran);
  }
  [[nodiscard]] static OpenOptions standing_on(const store::Surroundings& around) {
    OpenOptions options;
    options.surroundings = [around](const std::filesystem::path&) { return around; };
    return options;
  }
};

TEST_F(OpenTest, TellsAbsentFromAFolderFromSomethingElse) {
  EXPECT_EQ(fault(file("nowhere.ullage")), StoreFault::absent);
  std::filesystem::create_directory(file("folder.ullage"));
  EXPECT_EQ(fault(file("folder.ullage")), StoreFault::not_a_file);
  write_bytes(file("empty.ullage"), "");
  EXPECT_EQ(fault(file("empty.ullage")), StoreFault::not_ours);
  write_bytes(file("letter.ullage"), "Dear cellar, " + std::string(5000, 'x'));
  const auto before = snapshot();
  EXPECT_EQ(fault(file("letter.ullage")), StoreFault::not_ours);
  EXPECT_EQ(snapshot(), before);
}

TEST_F(OpenTest, LeavesTheFileOfAnotherProgramAndItsLogAlone) {
  auto other = Connection::open(file("other.ullage"), ConnectionMode::create);
  ASSERT_TRUE(other);
  ASSERT_TRUE(
      other->run("PRAGMA journal_mode = WAL; CREATE TABLE t (x); INSERT INTO t VALUES (1)"));
  const auto before = snapshot();
  ASSERT_GE(before.size(), 2U) << "the other program's log should be lying there";
  EXPECT_EQ(fault(file("other.ullage")), StoreFault::not_ours);
  EXPECT_EQ(snapshot(), before);
}

TEST_F(OpenTest, RefusesANewerSchemaUnchanged) {
  fill(3);
  run_sql(file(), "PRAGMA journal_mode = DELETE; PRAGMA user_version = 99");
  const auto before = snapshot();
  EXPECT_EQ(fault(file()), StoreFault::newer_version);
  EXPECT_EQ(snapshot(), before);
}

TEST_F(OpenTest, SaysDamagedWhenAPageIsOverwritten) {
  fill(400);
  std::string bytes = bytes_of(file());
  ASSERT_GT(bytes.size(), 300'000U);
  for (std::size_t i = 0; i < 4096; ++i)
    bytes[std::size_t{4096} * 70 + i] = static_cast<char>(i * 7);
  write_bytes(file(), bytes);
  EXPECT_EQ(fault(file()), StoreFault::damaged);
  const auto checked = store::check_file(file(), store::CheckDepth::full);
  ASSERT_FALSE(checked);
  EXPECT_EQ(checked.error().fault, StoreFault::damaged);
}

TEST_F(OpenTest, SaysDamagedWhenTheFirstBytesAreGone) {
  fill(3);
  std::string bytes = bytes_of(file());
  bytes.replace(0, 16, std::string(16, '\0'));
  write_bytes(file(), bytes);
  EXPECT_EQ(fault(file()), StoreFault::damaged);
}

TEST_F(OpenTest, SaysDamagedWhenTheFileIsCutShort) {
  fill(400);
  std::filesystem::resize_file(file(), std::filesystem::file_size(file()) / 2);
  EXPECT_EQ(fault(file()), StoreFault::damaged);
}

TEST_F(OpenTest, LoadSaysDamagedWhenAHeaderHasLostItsRow) {
  fill(30);
  run_sql(file(),
          "PRAGMA foreign_keys = OFF; DELETE FROM filled; DELETE FROM tapped; DELETE FROM "
          "vented; DELETE FROM gas_set; DELETE FROM noted; DELETE FROM cleaned; DELETE "
          "FROM found; DELETE FROM moved; DELETE FROM keg_record; DELETE FROM rocked");
  const auto loaded = opened().load();
  ASSERT_FALSE(loaded);
  EXPECT_EQ(loaded.error().fault, StoreFault::damaged);
  EXPECT_THAT(loaded.error().detail, ::testing::HasSubstr("no row of its own"));
  const auto checked = store::check_file(file(), store::CheckDepth::full);
  ASSERT_FALSE(checked);
  EXPECT_THAT(checked.error().detail, ::testing::HasSubstr("has no row in"));
}

TEST_F(OpenTest, CheckPassesASoundFileAndCanBeStopped) {
  fill(300);
  EXPECT_TRUE(store::check_file(file(), store::CheckDepth::quick));
  EXPECT_TRUE(store::check_file(file(), store::CheckDepth::full));
  const std::stop_source stop;
  stop.request_stop();
  const auto stopped = store::check_file(file(), store::CheckDepth::full, stop.get_token());
  ASSERT_FALSE(stopped);
  EXPECT_EQ(stopped.error().fault, StoreFault::cancelled);
}

TEST_F(OpenTest, SaysLockedWhenAnotherProgramHoldsTheFile) {
  fill(3);
  auto holder = Connection::open(file(), ConnectionMode::read_write);
  ASSERT_TRUE(holder);
  ASSERT_TRUE(
      holder->run("PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; PRAGMA user_version = 1"));
  OpenOptions impatient;
  impatient.wait_for_lock = std::chrono::milliseconds(50);
  EXPECT_EQ(fault(file(), impatient), StoreFault::locked_by_other);
  ASSERT_TRUE(holder->run("ROLLBACK"));
}

TEST_F(OpenTest, AppendSaysLockedWhileAnotherWritesAndWorksAfterwards) {
  fill(3);
  OpenOptions impatient;
  impatient.wait_for_lock = std::chrono::milliseconds(50);
  auto store = JournalStore::open(file(), impatient);
  ASSERT_TRUE(store) << why(store);
  auto holder = Connection::open(file(), ConnectionMode::read_write);
  ASSERT_TRUE(holder->run("BEGIN IMMEDIATE"));
  SeededSource source(5);
  auto act = PayloadMaker(source).entries(2);
  const auto refused = store->append(act);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().fault, StoreFault::locked_by_other);
  EXPECT_EQ(store->load().value().size(), 3U) << "reading goes on meanwhile";
  ASSERT_TRUE(holder->run("ROLLBACK"));
  EXPECT_TRUE(store->append(act));
  EXPECT_EQ(store->load().value().size(), 5U);
}

TEST_F(OpenTest, ReadsFromAReadOnlyMediumAndLeavesNothingBeside) {
  const auto entries = fill(5);
  const auto before = snapshot();
  ASSERT_EQ(before.size(), 1U) << "closing tidies the log away";
  auto store = JournalStore::open(file(), standing_on({.medium_read_only = true}));
  ASSERT_TRUE(store) << why(store);
  EXPECT_EQ(store->access(), Access::read_only_medium);
  EXPECT_FALSE(store::describe(store->access()).empty());
  expect_same(store->load().value(), entries);
  SeededSource source(5);
  auto act = PayloadMaker(source).entries(1);
  const auto refused = store->append(act);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().fault, StoreFault::read_only);
  store->close();
  EXPECT_EQ(snapshot(), before);
}

TEST_F(OpenTest, AsksForACopyWhenALogLiesOnAReadOnlyMedium) {
  auto writer = made();
  SeededSource source(5);
  auto act = PayloadMaker(source).entries(2);
  ASSERT_TRUE(writer.append(act));
  ASSERT_TRUE(store::has_log(file()));
  EXPECT_EQ(fault(file(), standing_on({.medium_read_only = true})),
            StoreFault::read_only_needs_copy);
}

TEST_F(OpenTest, OpensForReadingWithoutTheRightToWrite) {
  fill(5);
  auto store = JournalStore::open(file(), standing_on({.file_writable = false}));
  ASSERT_TRUE(store) << why(store);
  EXPECT_EQ(store->access(), Access::read_only_permission);
  EXPECT_EQ(store->load().value().size(), 5U);
}

TEST_F(OpenTest, ReadOnlyOnRequestStillSeesWhatOthersWrite) {
  auto writer = made();
  OpenOptions reading;
  reading.read_only = true;
  auto reader = JournalStore::open(file(), reading);
  ASSERT_TRUE(reader) << why(reader);
  SeededSource source(5);
  auto act = PayloadMaker(source).entries(2);
  ASSERT_TRUE(writer.append(act));
  EXPECT_TRUE(reader->changed_elsewhere().value());
  EXPECT_EQ(reader->load().value().size(), 2U);
}

TEST_F(OpenTest, RefusesNetworkFileSystemsButReadsFromThemOnRequest) {
  fill(5);
  const auto before = snapshot();
  auto options = standing_on({.file_system = "nfs4", .on_network = true});
  EXPECT_EQ(fault(file(), options), StoreFault::network_file_system);
  options.allow_network_read_only = true;
  EXPECT_EQ(fault(file(), options), StoreFault::network_file_system) << "writing is never allowed";
  options.read_only = true;
  auto store = JournalStore::open(file(), options);
  ASSERT_TRUE(store) << why(store);
  EXPECT_EQ(store->load().value().size(), 5U);
  store->close();
  EXPECT_EQ(snapshot(), before);
  options.read_only = false;
  const auto created =
      JournalStore::create(file("new.ullage"), numbered_uuid(1), test_now, options);
  ASSERT_FALSE(created);
  EXPECT_EQ(created.error().fault, StoreFault::network_file_system);
}

// Numbers from the statfs(2) manual page.
TEST_F(OpenTest, KnowsFileSystemsByTheirNumber) {
  using store::file_system_of_magic;
  using store::is_network_file_system;
  EXPECT_TRUE(is_network_file_system(file_system_of_magic(0x6969))) << "NFS_SUPER_MAGIC";
  EXPECT_TRUE(is_network_file_system(file_system_of_magic(0xff534d42))) << "CIFS_MAGIC_NUMBER";
  EXPECT_TRUE(is_network_file_system(file_system_of_magic(0xfe534d42))) << "SMB2_MAGIC_NUMBER";
  EXPECT_TRUE(is_network_file_system(file_system_of_magic(0x01021997))) << "V9FS_MAGIC";
  EXPECT_TRUE(is_network_file_system(file_system_of_magic(0x00c36400))) << "CEPH_SUPER_MAGIC";
  EXPECT_FALSE(is_network_file_system(file_system_of_magic(0xef53))) << "EXT4_SUPER_MAGIC";
  EXPECT_FALSE(is_network_file_system(file_system_of_magic(0x58465342))) << "XFS_SUPER_MAGIC";
  EXPECT_FALSE(is_network_file_system(file_system_of_magic(0x01021994))) << "TMPFS_MAGIC";
  EXPECT_TRUE(is_network_file_system("fuse.sshfs"));
  EXPECT_FALSE(is_network_file_system("fuseblk"));
}

// POSIX would drop the locks of the store with the first descriptor closed.
TEST_F(OpenTest, ProbingAndCheckingKeepTheLocksOfAnOpenStore) {
  auto store = made();
  EXPECT_TRUE(store::probe_file(file()));
  EXPECT_TRUE(store::check_file(file(), store::CheckDepth::full));
  EXPECT_TRUE(opened().load());
  const pid_t other_program = ::fork();
  if (other_program == 0) {
    const int fd = ::open(file().c_str(), O_RDWR);
    struct flock wanted{};
    wanted.l_type = F_WRLCK;
    wanted.l_whence = SEEK_SET;
    wanted.l_start = 0x40000002;  // the shared range of SQLite's file format
    wanted.l_len = 510;
    ::_exit(fd >= 0 && ::fcntl(fd, F_GETLK, &wanted) == 0 && wanted.l_type != F_UNLCK ? 0 : 1);
  }
  int status = 0;
  ASSERT_EQ(::waitpid(other_program, &status, 0), other_program);
  EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << "the file looks unused to others";
}

TEST_F(OpenTest, FindsOutWhatTheFolderStandsOn) {
  fill(1);
  const store::Surroundings around = store::surroundings_of(file());
  EXPECT_FALSE(around.file_system.empty());
  EXPECT_FALSE(around.medium_read_only);
  EXPECT_TRUE(around.file_writable);
  EXPECT_TRUE(around.folder_writable);
}

TEST_F(OpenTest, CreatesNothingOverAnExistingFile) {
  write_bytes(file(), "precious");
  const auto created = JournalStore::create(file(), numbered_uuid(1), test_now);
  ASSERT_FALSE(created);
  EXPECT_EQ(created.error().fault, StoreFault::already_exists);
  EXPECT_EQ(bytes_of(file()), "precious");
}

TEST_F(OpenTest, LeavesNothingWhenItCannotCreate) {
  const auto created =
      JournalStore::create(file("no/such/folder.ullage"), numbered_uuid(1), test_now);
  ASSERT_FALSE(created);
  EXPECT_TRUE(std::filesystem::is_empty(folder_));
}

TEST_F(OpenTest, EachFaultHasItsOwnSentence) {
  std::set<std::string> sentences;
  for (int f = 0; f <= static_cast<int>(StoreFault::out_of_memory); ++f) {
    const std::string sentence =
        store::describe({static_cast<StoreFault>(f), "x/home.ullage", "?"});
    EXPECT_FALSE(sentence.empty());
    EXPECT_TRUE(sentences.insert(sentence).second) << sentence;
    EXPECT_THAT(sentence, ::testing::Not(::testing::HasSubstr("?")));
  }
}

TEST_F(OpenTest, RunsWithTheSettingsItsPromisesRestOn) {
  fill(1);
  auto db = Connection::open(file(), ConnectionMode::read_only);
  ASSERT_TRUE(db);
  EXPECT_EQ(db->text("PRAGMA journal_mode").value(), "wal");
  EXPECT_EQ(db->number("PRAGMA application_id").value(), store::application_id);
  EXPECT_EQ(db->number("PRAGMA user_version").value(), store::schema_version);
  ASSERT_TRUE(store::set_up_connection(*db));
  EXPECT_EQ(db->number("PRAGMA synchronous").value(), 2) << "FULL";
  EXPECT_EQ(db->number("PRAGMA foreign_keys").value(), 1);
}

TEST_F(OpenTest, EntriesCannotBeChangedOrErasedByHand) {
  fill(3);
  auto db = Connection::open(file(), ConnectionMode::read_write);
  ASSERT_TRUE(db);
  EXPECT_FALSE(db->run("UPDATE entry SET note = 'tidied'"));
  EXPECT_FALSE(db->run("DELETE FROM entry"));
  EXPECT_EQ(opened().load().value().size(), 3U);
}

}  // namespace
}  // namespace ullage::testing
