// SPDX-License-Identifier: GPL-3.0-or-later
//
// Calls of the system by which files are written past SQLite (exports, copies kept,
// restore): rename, mkdir, write, fsync and the creation of a file fail on purpose.
// The test program brings these functions itself, so that the engine and the C++
// library call them instead of libc's.
#pragma once

#include <filesystem>

namespace undermark::test {

// From now on the n-th such call (from 1) on a path within `folder` fails with EIO;
// n = 0 only counts. Single-threaded programs only.
void armCalls(const std::filesystem::path& folder, long n);

// Calls since armCalls(), which is over now.
long disarmCalls();

} // namespace undermark::test
