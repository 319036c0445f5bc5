// SPDX-License-Identifier: GPL-3.0-or-later
//
// The hand-over sheet: one car's calibration on one A4 page, its photos on a second one, so that whoever drives it knows
// the reserve and whoever opens the tank again finds the readings.
#pragma once

#include "app/paper/pdf_page.h"
#include "engine/base/sentence.h"
#include "engine/outlook/car_knowledge.h"

namespace undermark {

struct SheetPhoto {
    Photo photo;
    std::string bytes;
};

struct HandOver {
    const CarKnowledge& car;
    Instant day;                                 // of the hand-over
    // Absent: the latest of the logbook since the calibration, else boxes to write it in.
    std::optional<VerificationRecord> verification{};
    std::vector<SheetPhoto> photos{};
};

// The car's photos with their bytes, and what is wrong with those that cannot be had.
struct SheetPhotos {
    std::vector<SheetPhoto> there;
    std::vector<Error> missing;
};
SheetPhotos sheetPhotos(const VehicleLog& log, const std::filesystem::path& logbook);

// The car and its sender, the steps as poured with their readings, the curve with the band
// in which the level is with 90 %, findings, a gauge table of ten points, zero mark, hidden
// reserve with its evidence and its sure kilometres, verification and cautions; the fitter's
// words; photos, of which one that cannot be drawn is named. Black and grey, but for photos. Litres and km; words are those of `write`. Of many steps or proofs the sheet shows
// as many as fit and says how many the logbook has. Errors: badInput where the car has no
// calibration; fileAccess if the file cannot be written.
Result<void> writeHandOverSheet(const HandOver& what, const std::filesystem::path& file,
                                const SentenceWriter& write = english);

} // namespace undermark
