// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/store/fault_vfs.h"

#include <sqlite3.h>

#include <cstring>
#include <new>

namespace ullage::testing {
namespace {

struct FaultFile {
  sqlite3_file base;
  sqlite3_file* real;  // lies behind this struct
};

sqlite3_vfs* real_vfs() { return sqlite3_vfs_find(nullptr); }
sqlite3_file* real(sqlite3_file* file) { return reinterpret_cast<FaultFile*>(file)->real; }

// Counts one operation; true when it is to fail.
bool fails() {
  FaultPlan& plan = fault_plan();
  ++plan.done;
  if (plan.fail_at == 0) return false;
  const bool now = plan.from_then_on ? plan.done >= plan.fail_at : plan.done == plan.fail_at;
  if (now) ++plan.fired;
  return now;
}

int fault_close(sqlite3_file* f) { return real(f)->pMethods->xClose(real(f)); }
int fault_read(sqlite3_file* f, void* to, int n, sqlite3_int64 at) {
  return real(f)->pMethods->xRead(real(f), to, n, at);
}
int fault_write(sqlite3_file* f, const void* from, int n, sqlite3_int64 at) {
  if (!fails()) return real(f)->pMethods->xWrite(real(f), from, n, at);
  switch (fault_plan().fault) {
    case DiskFault::disk_full:
      return SQLITE_FULL;
    case DiskFault::torn_write:
      real(f)->pMethods->xWrite(real(f), from, n / 2, at);
      return SQLITE_IOERR_WRITE;
    case DiskFault::write_error:
      return SQLITE_IOERR_WRITE;
  }
  return SQLITE_IOERR_WRITE;
}
int fault_truncate(sqlite3_file* f, sqlite3_int64 size) {
  if (fails()) return SQLITE_IOERR_TRUNCATE;
  return real(f)->pMethods->xTruncate(real(f), size);
}
int fault_sync(sqlite3_file* f, int flags) {
  if (fails()) return SQLITE_IOERR_FSYNC;
  return real(f)->pMethods->xSync(real(f), flags);
}
int fault_size(sqlite3_file* f, sqlite3_int64* size) {
  return real(f)->pMethods->xFileSize(real(f), size);
}
int fault_lock(sqlite3_file* f, int level) { return real(f)->pMethods->xLock(real(f), level); }
int fault_unlock(sqlite3_file* f, int level) { return real(f)->pMethods->xUnlock(real(f), level); }
int fault_reserved(sqlite3_file* f, int* out) {
  return real(f)->pMethods->xCheckReservedLock(real(f), out);
}
int fault_control(sqlite3_file* f, int op, void* arg) {
  return real(f)->pMethods->xFileControl(real(f), op, arg);
}
int fault_sector(sqlite3_file* f) { return real(f)->pMethods->xSectorSize(real(f)); }
int fault_device(sqlite3_file* f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); }
int fault_shm_map(sqlite3_file* f, int page, int size, int extend, void volatile** out) {
  return real(f)->pMethods->xShmMap(real(f), page, size, extend, out);
}
int fault_shm_lock(sqlite3_file* f, int offset, int n, int flags) {
  return real(f)->pMethods->xShmLock(real(f), offset, n, flags);
}
void fault_shm_barrier(sqlite3_file* f) { real(f)->pMethods->xShmBarrier(real(f)); }
int fault_shm_unmap(sqlite3_file* f, int remove) {
  return real(f)->pMethods->xShmUnmap(real(f), remove);
}

constexpr sqlite3_io_methods fault_methods = {2,
                                              fault_close,
                                              fault_read,
                                              fault_write,
                                              fault_truncate,
                                              fault_sync,
                                              fault_size,
                                              fault_lock,
                                              fault_unlock,
                                              fault_reserved,
                                              fault_control,
                                              fault_sector,
                                              fault_device,
                                              fault_shm_map,
                                              fault_shm_lock,
                                              fault_shm_barrier,
                                              fault_shm_unmap,
                                              nullptr,
                                              nullptr};

int fault_open(sqlite3_vfs* /*self*/, const char* name, sqlite3_file* file, int flags, int* out) {
  auto* const made = new (file) FaultFile{};
  made->real = reinterpret_cast<sqlite3_file*>(reinterpret_cast<char*>(file) + sizeof(FaultFile));
  std::memset(made->real, 0, static_cast<std::size_t>(real_vfs()->szOsFile));
  const int code = real_vfs()->xOpen(real_vfs(), name, made->real, flags, out);
  if (made->real->pMethods != nullptr) made->base.pMethods = &fault_methods;
  return code;
}

}  // namespace

FaultPlan& fault_plan() {
  static FaultPlan plan;
  return plan;
}

const char* fault_vfs() {
  static sqlite3_vfs vfs = [] {
    sqlite3_vfs made = *real_vfs();
    made.zName = "ullage-fault";
    made.szOsFile += static_cast<int>(sizeof(FaultFile));
    made.xOpen = fault_open;
    made.pNext = nullptr;
    return made;
  }();
  static const int registered = sqlite3_vfs_register(&vfs, 0);
  return registered == SQLITE_OK ? vfs.zName : nullptr;
}

}  // namespace ullage::testing
