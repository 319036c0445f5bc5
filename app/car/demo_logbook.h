// SPDX-License-Identifier: GPL-3.0-or-later
//
// The demo: an invented car, "Ouzel wagon", five months of its fills and trips,
// and a stage day of the invented Seven Weirs Rally. Everything is made up and
// dated in the past, so that it always gives the same answers.
#pragma once

#include "engine/logbook/logbook.h"
#include "engine/planning/route.h"

namespace undermark {

// Writes the demo car into a logbook that has no vehicle of that name yet.
// Errors: as Logbook::addVehicle.
Result<EntryId> writeDemo(Logbook& logbook);

// What to do with a file that is there already: only the demo's own place may be
// written over.
enum class Existing { refuse, replace };

// The day after its last trip, which is today for whoever shows it: a log that stopped months
// ago would say little of how far the car goes.
Instant demoDay();

// Makes `file` the demo logbook anew: written beside it first, then renamed over
// it. Errors: badInput for a file that is there and is not to be replaced; as
// Logbook::open; fileAccess.
Result<void> makeDemoLogbook(const std::filesystem::path& file, Existing existing);

// A day of the rally: road sections, two refuel zones, timed stages.
Route demoRoute();

} // namespace undermark
