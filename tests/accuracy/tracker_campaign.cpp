// SPDX-License-Identifier: GPL-3.0-or-later
//
// tracker_campaign [TANKS] [SEED] [--show|--trace]: simulated cars (support/simulated_tank.h,
// not the tracker's own model) are calibrated, filled and driven until the sure
// distance to dry falls under 20 km. Half of them get a fault on the way, four in
// ten a partial fill. Prints counts with exact (Clopper-Pearson) 95 % bounds.
#include "engine/calibration/calibrate.h"
#include "engine/tracking/level_tracker.h"
#include "engine/tracking/sender_reading.h"
#include "tests/accuracy/campaign_totals.h"

#include <cstdlib>
#include <cstring>

using namespace undermark;
using namespace undermark::test;

namespace {

constexpr double kOffsetSdL = 0.5;      // of left-behind minus unusable
constexpr double kSureKm = 20.0;
constexpr double kZ99 = 2.326348;       // Phi^-1(0.99)

// The driver's rule: 20 km are no longer sure (range law, Gaussian).
bool mustStop(const LevelTracker& tracker, Estimate<Consumption> stated)
{
    const Estimate<Consumption> rate = tracker.rate().value_or(stated);
    const double c = rate.mean.litresPerKm();
    const double sdC = std::hypot(rate.sd.litresPerKm(), 0.08 * c);
    const Estimate<Volume> level = tracker.state().level;
    const double variance = std::pow(level.sd.litres(), 2) + kOffsetSdL * kOffsetSdL
        + std::pow(kSureKm * sdC, 2) + 0.0008 * kSureKm;
    return level.mean.litres() - c * kSureKm < kZ99 * std::sqrt(variance);
}

enum class Show { nothing, events, blocks };

class Tank {
public:
    Tank(Random& random, Totals& totals, Show show)
        : m_random(random), m_totals(totals), m_show(show), m_car(random)
    {
    }

    void run()
    {
        const auto gauge = Gauge::calibrate(m_car.calibrate(4 + int(m_random() % 12), m_random), Sender{});
        ++m_totals.tanks;
        if (!gauge || !gauge->isKnown()) {
            ++m_totals.noCurve;
            return;
        }
        TrackerSettings settings = trackerSettings(*gauge);
        const double told = m_car.rate * std::exp(gauss(m_random, 0.1));
        settings.rate = {Consumption::fromLitresPer100Km(told),
                         Consumption::fromLitresPer100Km(0.12 * told)};
        LevelTracker tracker(settings);
        m_car.fill(m_car.capacityL + gauss(m_random, 0.4));
        m_car.settle();
        m_dryL = gauss(m_random, kOffsetSdL);
        plan();
        drive(tracker, *gauge->curve(), *settings.rate);
        finish(tracker);
    }

private:
    void plan()
    {
        if (uniform(m_random, 0, 1) < 0.5) {
            m_kind = int(m_random() % kFaults.size());
            m_faultAtL = m_car.capacityL * uniform(m_random, 0.15, 0.95);
        }
        if (uniform(m_random, 0, 1) < 0.4)
            m_fillAtL = m_car.capacityL * uniform(m_random, 0.3, 0.7);
    }

    void drive(LevelTracker& tracker, const LevelCurve& curve, Estimate<Consumption> stated)
    {
        long blocks = 0;
        int halt = 0;
        for (;;) {
            if (m_kind >= 0 && !m_onsetL && m_car.litres < m_faultAtL) {
                m_car.start(kFaults[std::size_t(m_kind)], m_random);
                m_onsetL = m_car.litres;
                m_onsetKm = m_car.km;
            }
            if (m_fillAtL > 0.0 && m_car.litres < m_fillAtL) {
                halt = 420;
                m_fillAtL = 0.0;
            }
            const bool halted = halt > 0;
            if (halted && --halt == 240) {
                const double room = m_car.capacityL - m_car.litres;
                m_poured = std::min(room, uniform(m_random, 5.0, 25.0));
                m_car.fill(m_car.litres + m_poured);
                m_filledS = m_timeS;
                m_burntBefore += -m_poured;
                ++m_totals.fills;
                m_fillSound = !m_onsetL;
                m_fillLogged = uniform(m_random, 0, 1) < 0.5;
            }
            step(tracker, curve, !halted);
            if (m_filledS > 0 && m_timeS == m_filledS + 200 && m_fillLogged)
                tracker.tellFill({Volume::fromLitres(m_poured * (1.0 + gauss(m_random, 0.005))),
                                  Volume::fromLitres(0.1)});
            if (m_car.litres <= m_dryL) {
                ++m_totals.dry;
                m_totals.dryUnwarned += !m_warned;
                m_ranDry = true;
                return;
            }
            if (tracker.state().blocks != blocks) {
                blocks = tracker.state().blocks;
                check(tracker);
                if (m_show == Show::blocks && blocks % 20 == 0)
                    trace(tracker.state());
                if (!halted && blocks > 4 && mustStop(tracker, stated))
                    return;
            }
        }
    }

    void trace(const TrackState& now) const
    {
        std::printf("  . %ld s: true %.1f, shown %.1f +- %.1f, read %.1f, mode %d, scale %.2f +- %.2f\n",
                    m_timeS, m_car.litres, now.level.mean.litres(), now.level.sd.litres(),
                    now.reading.value_or(Volume()).litres(), int(now.mode), now.scale.mean.ratio(),
                    now.scale.sd.ratio());
    }

    void step(LevelTracker& tracker, const LevelCurve& curve, bool driving)
    {
        const SimulatedCar::Second now = m_car.step(driving, m_random);
        TrackerSample sample{.time = Seconds(double(m_timeS++)), .level = {}, .speed = now.speed,
                             .fuelRate = now.fuelRate, .distance = now.distance};
        if (now.signal)
            sample.level = observe(curve, *now.signal);
        for (const TrackerEvent& event : tracker.add(sample))
            hear(event, tracker);
        if (m_denies) {   // the driver was asked about a fill and there was none
            m_denies = false;
            for (const TrackerEvent& event : tracker.denyFill())
                hear(event, tracker);
        }
    }

    void hear(const TrackerEvent& event, const LevelTracker& tracker)
    {
        if (m_show != Show::nothing)
            std::printf("  %ld s, %.1f km, source %d%s: event %d %s %.1f L; true %.1f, shown %.1f +- "
                        "%.1f, read %.1f, scale %.2f +- %.2f\n",
                        m_timeS, m_car.km, m_car.source(), m_onsetL ? ", broken" : "",
                        int(event.kind),
                        event.kind == TrackerEventKind::fault ? faultWord(event.fault) : "",
                        event.litres.mean.litres(), m_car.litres,
                        tracker.state().level.mean.litres(), tracker.state().level.sd.litres(),
                        tracker.state().reading.value_or(Volume()).litres(),
                        tracker.state().scale.mean.ratio(), tracker.state().scale.sd.ratio());
        if (event.kind == TrackerEventKind::refuel) {
            if (m_filledS > 0 && m_timeS - m_filledS < 900)
                m_fillFound = true;
            else {
                ++m_totals.falseRefuels;
                m_denies = true;
            }
        }
        if (event.kind != TrackerEventKind::fault)
            return;
        m_warned = true;
        if (!m_onsetL) {
            ++m_totals.falseAlarms;
            ++m_totals.falseCodes[event.fault];
        } else if (!m_found) {
            m_found = true;
            const double poured = m_poured > 0.0 && m_fillSound == false ? m_poured : 0.0;
            auto& delay = m_totals.delays[std::size_t(m_kind)];
            ++delay.found;
            delay.litres.push_back((*m_onsetL + poured - m_car.litres) * 50.0 / m_car.capacityL);
        }
    }

    // Is the spread honest? Nothing can be after fuel that nobody told.
    void check(const LevelTracker& tracker)
    {
        if (m_poured > 0.0)
            return;
        const Estimate<Volume> level = tracker.state().level;
        const double z = (level.mean.litres() - m_car.litres) / level.sd.litres();
        const TrackerMode mode = tracker.state().mode;
        if (!m_onsetL && mode == TrackerMode::level)
            m_totals.sound.add(z);
        if (m_found && mode == TrackerMode::consumptionOnly)
            m_totals.blind[std::size_t(m_car.source())].add(z);
    }

    void finish(const LevelTracker& tracker)
    {
        m_totals.km += m_car.km;
        m_totals.soundKm += m_onsetL ? m_onsetKm : m_car.km;
        m_totals.carried += m_car.litres - m_dryL;
        m_totals.quarter += 0.25 * m_car.capacityL;
        m_totals.carriedBy[std::size_t(m_car.source())] += m_car.litres - m_dryL;
        m_totals.quarterBy[std::size_t(m_car.source())] += 0.25 * m_car.capacityL;
        if (m_kind >= 0 && m_onsetL) {
            Delay& fault = m_totals.delays[std::size_t(m_kind)];
            fault.carried += m_car.litres - m_dryL;
            fault.quarter += 0.25 * m_car.capacityL;
            fault.dry += m_ranDry;
        }
        if (m_kind >= 0 && m_onsetL)
            ++m_totals.delays[std::size_t(m_kind)].raised;
        m_totals.fillsFound += m_fillFound && m_fillSound;
        m_totals.fills -= m_filledS > 0 && !m_fillSound;   // a broken sender sees no fill
        if (!m_onsetL && tracker.state().nisCount > 0) {
            m_totals.nis += tracker.state().nisMean;
            ++m_totals.nisTanks;
        }
        if (m_show != Show::nothing && m_ranDry)
            std::printf("  RAN DRY: fault %d, source %d, shown %.1f +- %.1f\n", m_kind,
                        m_car.source(), tracker.state().level.mean.litres(),
                        tracker.state().level.sd.litres());
    }

    Random& m_random;
    Totals& m_totals;
    Show m_show;
    SimulatedCar m_car;
    int m_kind = -1;
    double m_faultAtL = 0.0, m_fillAtL = 0.0, m_dryL = 0.0, m_poured = 0.0, m_burntBefore = 0.0;
    std::optional<double> m_onsetL;
    double m_onsetKm = 0.0;
    long m_timeS = 0, m_filledS = 0;
    bool m_warned = false, m_found = false, m_ranDry = false, m_denies = false;
    bool m_fillFound = false, m_fillSound = false, m_fillLogged = false;
};

} // namespace

int main(int argc, char** argv)
{
    const int tanks = argc > 1 ? std::atoi(argv[1]) : 10000;
    const auto seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1ULL;
    Show show = Show::nothing;
    if (argc > 3)
        show = std::strcmp(argv[3], "--trace") == 0 ? Show::blocks : Show::events;
    Totals totals;
    for (int i = 0; i < tanks; ++i) {
        // A tank can be run again alone: its seed is its number.
        Random random(seed + std::uint64_t(i));
        if (show != Show::nothing)
            std::printf("tank %llu\n", seed + static_cast<unsigned long long>(i));
        Tank(random, totals, show).run();
    }
    report(totals);
    return 0;
}
