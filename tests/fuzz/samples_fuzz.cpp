// SPDX-License-Identifier: GPL-3.0-or-later
//
// A recorded drive, and the tracker that follows it.
#include "engine/tables/samples_csv.h"
#include "engine/tracking/level_tracker.h"
#include "tests/fuzz/fuzz_input.h"

#include <cmath>

using namespace undermark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const fuzz::InputFile input(data, size);
    auto file = SamplesCsv::open(input.path());
    if (!file)
        return 0;
    TrackerSettings settings;
    settings.highest = Volume::fromLitres(50);
    LevelTracker tracker(settings);
    Sample row;
    for (;;) {
        const auto more = file->next(row);
        if (!more || !*more)
            break;
        TrackerSample sample{row.time, {}, row.speed, row.fuelRate, row.distance};
        if (row.signal) {
            const double litres = 10 * row.signal->value();
            sample.level = LevelObservation{litres < 0 ? ReadingKind::tooLow
                                                : litres > 50 ? ReadingKind::tooHigh
                                                              : ReadingKind::exact,
                                            {Volume::fromLitres(litres), Volume::fromLitres(0.3)},
                                            {}};
        }
        tracker.add(sample);
        fuzz::require(!std::isnan(tracker.state().level.mean.litres()));
    }
    tracker.finish();
    return 0;
}
