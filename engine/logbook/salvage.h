// SPDX-License-Identifier: GPL-3.0-or-later
//
// What can still be read of a damaged logbook, as a new one.
#pragma once

#include "engine/logbook/logbook.h"

namespace undermark {

struct SalvageReport {
    std::int64_t taken = 0;      // rows of the ledger in the new logbook, with their values
    std::int64_t lost = 0;       // rows that were seen and could not be taken whole
    bool gaps = false;           // pages could not be read: there may be more that was lost
    std::int64_t standIns = 0;   // vehicles and modes made up to hold what named them
};

// Reads row by row past whatever is broken, and writes `fresh`, a new sound logbook
// (0600) with the same UUIDs. `damaged` is only read. Rows without their values, and
// values that the logbook would not accept, are lost; entries whose vehicle is lost
// hang on a stand-in called "Salvaged N", whose capacity is its largest fill; an entry
// whose first row is lost begins with the oldest correction left; where a withdrawal
// is lost, what had been undone is back. A sound logbook comes out whole.
// Errors: fileAccess (`damaged` cannot be read, `fresh` exists); damaged where it is not
// a logbook at all, or nothing of it can be read; nothing is left of `fresh` then.
// Cost: O(rows), and the file's size on disk while it runs.
Result<SalvageReport> salvage(const std::filesystem::path& damaged,
                              const std::filesystem::path& fresh, Instant now);

} // namespace undermark
