// SPDX-License-Identifier: GPL-3.0-or-later
//
// source_and_saddle_campaign [TANKS] [SEED]: the two faults that tracker_campaign
// leaves out. Half of the cars get a source of distance or fuel flow that suddenly
// counts 2.5 to 4 times too much or too little; half of the saddle tanks get a
// transfer that stops. Prints how many were found, after how many litres, and what
// was found where nothing was wrong.
#include "engine/calibration/gauge.h"
#include "engine/tracking/level_tracker.h"
#include "engine/tracking/sender_reading.h"
#include "engine/tracking/transfer_watch.h"
#include "tests/support/simulated_saddle.h"

#include <cstdio>
#include <cstdlib>
#include <utility>

using namespace undermark;
using namespace undermark::test;

namespace {

struct Outcome {
    int broken = 0, found = 0, byName = 0, falseAlarms = 0, unusable = 0;
    double soundKm = 0.0;
    std::vector<double> litres;     // burnt from the onset to the alarm

    void print(const char* what)
    {
        std::sort(litres.begin(), litres.end());
        const auto part = [&](double share) {
            return litres.empty() ? 0.0 : litres[std::size_t(share * double(litres.size() - 1))];
        };
        std::printf("%-14s found %d of %d (%d by its own name), after %.1f L (median), %.1f L (95 %%); %d false "
                    "in %.0f km of nothing wrong; %d could not be calibrated\n",
                    what, found, broken, byName, part(0.5), part(0.95), falseAlarms, soundKm, unusable);
    }
};

// One tank with a source of distance or fuel flow, driven until a tenth is left.
void driveWithSource(Random& random, Outcome& outcome)
{
    SimulatedCar car(random);
    while (car.source() != 1 && car.source() != 2)
        std::construct_at(&car, random);
    const auto gauge = Gauge::calibrate(car.calibrate(8, random), Sender{});
    if (!gauge || !gauge->isKnown()) {
        ++outcome.unusable;
        return;
    }
    TrackerSettings settings = trackerSettings(*gauge);
    settings.rate = {Consumption::fromLitresPer100Km(car.rate), Consumption::fromLitresPer100Km(0.12 * car.rate)};
    LevelTracker tracker(settings);
    car.fill(car.capacityL);
    car.settle();
    const double onset = uniform(random, 0, 1) < 0.5 ? car.capacityL * uniform(random, 0.6, 0.95) : -1.0;
    bool said = false, named = false, broken = false;
    double soundKm = 0.0;
    for (double time = 0.0; car.litres > 0.1 * car.capacityL; ++time) {
        if (!broken && car.litres < onset) {
            broken = true;
            soundKm = car.km;
            car.start(SimulatedFault::sourceScale, random);
        }
        const SimulatedCar::Second now = car.step(true, random);
        TrackerSample sample{Seconds(time), {}, now.speed, now.fuelRate, now.distance};
        if (now.signal)
            sample.level = observe(*gauge->curve(), *now.signal);
        for (const TrackerEvent& event : tracker.add(sample)) {
            if (event.kind != TrackerEventKind::fault)
                continue;
            if (!broken) {
                ++outcome.falseAlarms;
                continue;
            }
            if (!said)
                outcome.litres.push_back(onset - car.litres);
            outcome.found += !said;
            outcome.byName += !named && event.fault == FaultCode::sourceScale;
            named = named || event.fault == FaultCode::sourceScale;
            said = true;
        }
    }
    outcome.broken += broken;
    outcome.soundKm += broken ? soundKm : car.km;
}

// One saddle tank, driven until the pump's lobe holds 3 L.
void driveSaddle(Random& random, Outcome& outcome)
{
    SimulatedSaddle car(random);
    const auto gauge = Gauge::calibrate(car.calibrate(10), Sender{});
    if (!gauge) {
        ++outcome.unusable;
        return;
    }
    car.fill(car.pumpLobeL + car.otherLobeL);
    TransferWatch watch(TransferLimits::ofSaddle(Volume::fromLitres(car.pumpLobeL + car.otherLobeL)));
    const double onset = uniform(random, 0, 1) < 0.5 ? car.otherLobeL * uniform(random, 0.3, 0.9) : -1.0;
    double soundKm = 0.0, fullAtOnset = 0.0;
    bool said = false;
    for (double time = 0.0; car.pumpL > 3.0; ++time) {
        if (car.transfers && car.otherL < onset) {
            car.transfers = false;
            soundKm = car.km;
            fullAtOnset = car.pumpL;
        }
        const SimulatedSaddle::Second now = car.step(random);
        if (watch.add(Seconds(time), *gauge, {now.pump, now.other}) != TransferWatch::Found::stopped)
            continue;
        if (car.transfers) {
            ++outcome.falseAlarms;
        } else if (!std::exchange(said, true)) {
            ++outcome.found;
            ++outcome.byName;
            outcome.litres.push_back(fullAtOnset - car.pumpL);
        }
    }
    outcome.broken += !car.transfers;
    outcome.soundKm += car.transfers ? car.km : soundKm;
}

} // namespace

int main(int argc, char** argv)
{
    const int tanks = argc > 1 ? std::atoi(argv[1]) : 2000;
    const std::uint64_t seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 31'000'000;
    Outcome source, saddle;
    for (int i = 0; i < tanks; ++i) {
        Random random(seed + std::uint64_t(i));
        driveWithSource(random, source);
        driveSaddle(random, saddle);
    }
    source.print("source scale:");
    saddle.print("transfer:");
}
