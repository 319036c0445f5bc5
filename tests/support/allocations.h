// SPDX-License-Identifier: GPL-3.0-or-later
//
// Counts what the program takes from the heap, to show that a loop takes nothing.
// allocations.cpp replaces the global operator new and delete of the executable.
#pragma once

#include <atomic>

extern std::atomic<long> g_allocations;
