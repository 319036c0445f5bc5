// SPDX-License-Identifier: GPL-3.0-or-later
//
// A SQLite file system that fails on purpose: it passes everything on to the
// ordinary one, counts what changes the disk (write, sync, truncate, delete, and
// the creation of a file), and lets one such call fail in a chosen way. Shared
// memory is passed on too, so that the logbook runs in WAL mode as it does for
// users.
#pragma once

#include <filesystem>

namespace undermark::test {

enum class DiskFault {
    ioError,     // this call fails, the next ones work again
    full,        // no space left: a write, and every later one, fails
    shortWrite,  // half of the bytes reach the disk, then an error
    readOnly,    // this call and all later ones find a disk that cannot be written
    powerCut,    // this call and all later ones fail, and what was not synced is gone
};

class FaultVfs {
public:
    // Makes it SQLite's default file system for files within `folder`, until
    // destroyed. One at a time; no connection may be open at either end.
    explicit FaultVfs(const std::filesystem::path& folder);
    ~FaultVfs();
    FaultVfs(const FaultVfs&) = delete;
    FaultVfs& operator=(const FaultVfs&) = delete;

    // From now on the n-th call (from 1) fails.
    void arm(DiskFault fault, long n);
    // True if that call came. After a power cut every file is put back to what was
    // synced; call it when all connections are closed.
    bool disarm();
    // Calls that changed the disk since arm().
    long calls() const;
};

} // namespace undermark::test
