// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/fault_vfs.h"

#include <sqlite3.h>

#include <cstring>
#include <fstream>
#include <map>
#include <optional>
#include <string>

namespace undermark::test {

namespace {

namespace fs = std::filesystem;

enum class Call { write, sync, truncate, remove, create };

// What the power cut would leave: bytes as of the last sync, nothing for a file
// that was never synced.
using Disk = std::map<std::string, std::optional<std::string>>;

struct State {
    sqlite3_vfs* real = nullptr;
    std::string folder;
    bool armed = false;
    DiskFault fault = DiskFault::ioError;
    long failAt = 0, calls = 0;
    bool fired = false;
    Disk synced;
};
State g_state;

struct File {
    sqlite3_file base;      // what SQLite sees
    sqlite3_file* real;     // in the bytes behind this struct
    char* path;             // SQLite keeps it alive; null for files without a name
};

File* of(sqlite3_file* file) { return reinterpret_cast<File*>(file); }
sqlite3_file* realOf(sqlite3_file* file) { return of(file)->real; }

bool isOurs(const char* path)
{
    return path && std::string_view(path).starts_with(g_state.folder);
}

std::string bytesOf(const std::string& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

// True where this call is to fail.
bool fails(const char* path)
{
    State& s = g_state;
    if (!s.armed || !isOurs(path))
        return false;
    ++s.calls;
    const bool first = s.calls == s.failAt;
    s.fired = s.fired || first;
    const bool onceOnly = s.fault == DiskFault::ioError || s.fault == DiskFault::shortWrite;
    return first || (s.fired && !onceOnly);
}

int errorOf(Call call)
{
    switch (g_state.fault) {
    case DiskFault::full:
        if (call == Call::write || call == Call::create)
            return SQLITE_FULL;
        break;
    case DiskFault::readOnly: return SQLITE_READONLY;
    default: break;
    }
    switch (call) {
    case Call::write: return SQLITE_IOERR_WRITE;
    case Call::sync: return SQLITE_IOERR_FSYNC;
    case Call::truncate: return SQLITE_IOERR_TRUNCATE;
    case Call::remove: return SQLITE_IOERR_DELETE;
    case Call::create: break;
    }
    return SQLITE_CANTOPEN;
}

int xWrite(sqlite3_file* file, const void* data, int size, sqlite3_int64 offset)
{
    if (!fails(of(file)->path))
        return realOf(file)->pMethods->xWrite(realOf(file), data, size, offset);
    if (g_state.fault == DiskFault::shortWrite)
        realOf(file)->pMethods->xWrite(realOf(file), data, size / 2, offset);
    return errorOf(Call::write);
}

int xTruncate(sqlite3_file* file, sqlite3_int64 size)
{
    if (fails(of(file)->path))
        return errorOf(Call::truncate);
    return realOf(file)->pMethods->xTruncate(realOf(file), size);
}

int xSync(sqlite3_file* file, int flags)
{
    if (fails(of(file)->path))
        return errorOf(Call::sync);
    const int done = realOf(file)->pMethods->xSync(realOf(file), flags);
    if (done == SQLITE_OK && g_state.armed && isOurs(of(file)->path))
        g_state.synced[of(file)->path] = bytesOf(of(file)->path);
    return done;
}

// Everything that changes nothing on the disk is passed on.
int xClose(sqlite3_file* f) { return realOf(f)->pMethods->xClose(realOf(f)); }
int xRead(sqlite3_file* f, void* to, int n, sqlite3_int64 at) { return realOf(f)->pMethods->xRead(realOf(f), to, n, at); }
int xFileSize(sqlite3_file* f, sqlite3_int64* n) { return realOf(f)->pMethods->xFileSize(realOf(f), n); }
int xLock(sqlite3_file* f, int l) { return realOf(f)->pMethods->xLock(realOf(f), l); }
int xUnlock(sqlite3_file* f, int l) { return realOf(f)->pMethods->xUnlock(realOf(f), l); }
int xCheckReserved(sqlite3_file* f, int* r) { return realOf(f)->pMethods->xCheckReservedLock(realOf(f), r); }
int xControl(sqlite3_file* f, int op, void* arg) { return realOf(f)->pMethods->xFileControl(realOf(f), op, arg); }
int xSector(sqlite3_file* f) { return realOf(f)->pMethods->xSectorSize(realOf(f)); }
int xTraits(sqlite3_file* f) { return realOf(f)->pMethods->xDeviceCharacteristics(realOf(f)); }
int xShmMap(sqlite3_file* f, int i, int n, int extend, void volatile** p) { return realOf(f)->pMethods->xShmMap(realOf(f), i, n, extend, p); }
int xShmLock(sqlite3_file* f, int i, int n, int flags) { return realOf(f)->pMethods->xShmLock(realOf(f), i, n, flags); }
void xShmBarrier(sqlite3_file* f) { realOf(f)->pMethods->xShmBarrier(realOf(f)); }
int xShmUnmap(sqlite3_file* f, int remove) { return realOf(f)->pMethods->xShmUnmap(realOf(f), remove); }

// Version 2: shared memory, but no memory-mapped reading.
const sqlite3_io_methods kMethods{2, xClose, xRead, xWrite, xTruncate, xSync, xFileSize, xLock,
                                  xUnlock, xCheckReserved, xControl, xSector, xTraits, xShmMap,
                                  xShmLock, xShmBarrier, xShmUnmap, nullptr, nullptr};

int xOpen(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* outFlags)
{
    File* ours = of(file);
    ours->base.pMethods = nullptr;
    ours->real = reinterpret_cast<sqlite3_file*>(ours + 1);
    ours->path = const_cast<char*>(path);
    const bool creates = (flags & SQLITE_OPEN_CREATE) && path && !fs::exists(path);
    if (creates && fails(path))
        return errorOf(Call::create);
    if (creates && g_state.armed && isOurs(path))
        g_state.synced.emplace(path, std::nullopt);
    const int done = g_state.real->xOpen(g_state.real, path, ours->real, flags, outFlags);
    if (ours->real->pMethods)
        ours->base.pMethods = &kMethods;
    return done;
}

int xDelete(sqlite3_vfs*, const char* path, int syncFolder)
{
    if (fails(path))
        return errorOf(Call::remove);
    const int done = g_state.real->xDelete(g_state.real, path, syncFolder);
    if (done == SQLITE_OK && g_state.armed && isOurs(path))
        g_state.synced[path] = std::nullopt;
    return done;
}

sqlite3_vfs g_vfs{};

} // namespace

FaultVfs::FaultVfs(const fs::path& folder)
{
    g_state = {};
    g_state.real = sqlite3_vfs_find(nullptr);
    g_state.folder = fs::canonical(folder).string();
    g_vfs = *g_state.real;   // the clock, random numbers, paths and access stay real
    g_vfs.zName = "fault";
    g_vfs.szOsFile = static_cast<int>(sizeof(File)) + g_state.real->szOsFile;
    g_vfs.xOpen = xOpen;
    g_vfs.xDelete = xDelete;
    sqlite3_vfs_register(&g_vfs, 1);
}

FaultVfs::~FaultVfs()
{
    sqlite3_vfs_unregister(&g_vfs);
    sqlite3_vfs_register(g_state.real, 1);
}

void FaultVfs::arm(DiskFault fault, long n)
{
    g_state.armed = true;
    g_state.fault = fault;
    g_state.failAt = n;
    g_state.calls = 0;
    g_state.fired = false;
    g_state.synced.clear();
    for (const auto& entry : fs::directory_iterator(g_state.folder))   // what lay there is safe
        g_state.synced[entry.path().string()] = bytesOf(entry.path().string());
}

bool FaultVfs::disarm()
{
    g_state.armed = false;
    if (g_state.fired && g_state.fault == DiskFault::powerCut) {
        for (const auto& [path, bytes] : g_state.synced) {
            fs::remove(path);
            if (bytes)
                std::ofstream(path, std::ios::binary) << *bytes;
        }
        for (const auto& entry : fs::directory_iterator(g_state.folder))
            if (entry.path().string().ends_with("-shm"))   // memory, not disk
                fs::remove(entry.path());
    }
    return g_state.fired;
}

long FaultVfs::calls() const { return g_state.calls; }

} // namespace undermark::test
