// SPDX-License-Identifier: GPL-3.0-or-later
//
// The hand-over sheet: one car's calibration on one A4 page, so that whoever drives it knows
// the reserve and whoever opens the tank again finds the readings.
#pragma once

#include "app/paper/pdf_page.h"
#include "engine/base/sentence.h"
#include "engine/calibration/verification.h"
#include "engine/outlook/car_knowledge.h"

namespace undermark {

struct HandOver {
    const CarKnowledge& car;
    Instant day;                                 // of the hand-over
    const Verification* verification = nullptr;  // absent: boxes to write it in
};

// The car and its sender, the steps as poured with their readings, the curve with the band
// in which the level is with 90 %, findings, a gauge table of ten points, zero mark, hidden
// reserve with its evidence and its sure kilometres, verification and cautions. Black and
// grey. Litres and km; words are those of `write`. Of many steps or proofs the sheet shows
// as many as fit and says how many the logbook has. Errors: badInput where the car has no
// calibration; fileAccess if the file cannot be written.
Result<void> writeHandOverSheet(const HandOver& what, const std::filesystem::path& file,
                                const SentenceWriter& write = english);

} // namespace undermark
