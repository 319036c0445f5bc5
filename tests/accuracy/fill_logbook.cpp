// SPDX-License-Identifier: GPL-3.0-or-later
//
// fill_logbook FILE FILLS TRIPS: a logbook of an invented car that is as long as
// asked for, for benchmarks.
#include "tests/support/long_log.h"

#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv)
{
    if (argc != 4) {
        std::fprintf(stderr, "usage: fill_logbook FILE FILLS TRIPS\n");
        return 2;
    }
    const auto written = undermark::test::writeLongLog(argv[1], std::atoi(argv[2]), std::atoi(argv[3]));
    if (!written)
        return std::fprintf(stderr, "%s\n", describe(written.error()).c_str()), 1;
    return 0;
}
