// SPDX-License-Identifier: GPL-3.0-or-later
//
// A further tank whose sender is heard: a pump that fails, one that is switched off, one that runs
// dry, a tap, tanks that stand level; by cars simulated without the watch's own model
// (support/simulated_tank.h, simulated_beside.h), on hills and with slosh in both tanks.
#include "tests/support/simulated_beside.h"
#include "tests/support/test_main.h"
#include "engine/tracking/gauge_tracker.h"
#include "engine/tracking/sender_reading.h"

#include <QTest>
#include <algorithm>
#include <cmath>

using namespace undermark;
using undermark::test::SimulatedBeside;
using undermark::test::SimulatedCar;

namespace {

constexpr double kTwoLPerMin = 2.0; // a common small one
constexpr double kUnknownOffsetSdL = 0.9;   // what is usually not known of left-behind and unusable

class HeardTanks {
public:
    HeardTanks(std::uint64_t seed, TankFeed feed) : m_random(seed), m_car(m_random), m_other(m_random)
    {
        const auto own = Gauge::calibrate(m_car.calibrate(9, m_random), Sender{});
        const auto beside = Gauge::calibrate(m_other.calibrate(9, m_random), Sender{});
        if (!own || !own->isKnown() || !beside || !beside->isKnown())
            return;
        TrackerSettings settings = trackerSettings(*own);
        settings.rate = {Consumption::fromLitresPer100Km(m_car.rate), Consumption::fromLitresPer100Km(0.1 * m_car.rate)};
        if (feed != TankFeed::shared)
            settings.others.hold = Volume::fromLitres(m_other.capacityL);
        if (feed == TankFeed::pumpedOver)
            settings.others.comesOver = Volume::fromLitres(m_other.capacityL);
        const FurtherTank further{"aux", feed, *beside, {Volume(), Volume::fromLitres(kUnknownOffsetSdL)}};
        m_tracker.emplace(*own, settings, std::span(&further, 1));
        start(0.45, 0.9);
    }
    bool known() const { return m_tracker.has_value(); }
    void start(double own, double other)
    {
        m_car.fill(own * m_car.capacityL);
        m_car.settle();
        m_other.fill(other * m_other.capacityL);
    }

    // With the tap on the own tank; so much is pumped over while there is some, and room for it.
    void drive(double seconds, bool moving = true, double pumpedLPerMin = 0.0)
    {
        for (double s = 0; s < seconds; ++s) {
            second(moving);
            const bool room = m_car.litres < 0.97 * m_car.capacityL;
            const double over = room ? m_other.take(pumpedLPerMin / 60.0) : 0.0;
            m_car.fill(m_car.litres + over);
            pumped += over;
        }
    }
    // On the other tank, until so much of it is burnt.
    void driveOnOther(double litres)
    {
        const double level = m_car.litres;
        for (double burnt = 0.0; burnt < litres && m_other.litres > 0.0;) {
            second(true);
            burnt += m_other.take(level - m_car.litres);
            m_car.fill(level);
        }
    }
    // Both fall together, the other one by its share; `joined`: or not.
    void driveLevel(double seconds, bool joined)
    {
        const double share = m_other.capacityL / (m_other.capacityL + m_car.capacityL);
        for (double s = 0; s < seconds && m_car.litres > 0.1 * m_car.capacityL; ++s) {
            const double level = m_car.litres;
            second(true);
            if (joined)
                m_car.fill(m_car.litres + m_other.take(share * (level - m_car.litres)));
        }
    }
    // Until it is said that no more comes, or there is little left; litres burnt meanwhile.
    double driveUntilSaid(int said)
    {
        const double level = m_car.litres;
        while (stopped < said && m_car.litres > 0.1 * m_car.capacityL)
            drive(30);
        return level - m_car.litres;
    }

    double otherL() const { return m_other.litres; }
    double otherCapacityL() const { return m_other.capacityL; }
    double ownCapacityL() const { return m_car.capacityL; }
    const SimulatedCar& car() const { return m_car; }
    std::optional<Estimate<Volume>> level() const { return m_tracker->further()[0].level(); }
    QString told() const
    {
        return QString("own %1 L, other %2 L; stopped %3, over %4, other faults %5, transfers %6 of %7 L, pumped %8 L")
            .arg(m_car.capacityL).arg(m_other.capacityL).arg(stopped).arg(goesOn).arg(faults).arg(transfers).arg(cameOverL)
            .arg(pumped);
    }
    double pumped = 0.0, hours = 0.0;
    int stopped = 0, goesOn = 0, faults = 0, transfers = 0, asked = 0;
    double cameOverL = 0.0;
    std::optional<TrackerEvent> last; // that it stopped

private:
    void second(bool moving)
    {
        const SimulatedCar::Second now = m_car.step(moving, m_random);
        Sample sample;
        sample.time = Seconds(m_timeS++);
        sample.signal = now.signal;
        sample.speed = now.speed;
        sample.fuelRate = now.fuelRate;
        sample.distance = now.distance;
        sample.further[0] = m_other.read(moving, m_random);
        hours += 1.0 / 3600.0;
        for (const TrackerEvent& event : m_tracker->add(sample))
            take(event);
    }
    void take(const TrackerEvent& event)
    {
        const bool ofTransfer = event.fault == FaultCode::transferStopped || event.fault == FaultCode::transfer;
        if (event.kind == TrackerEventKind::fault && ofTransfer) {
            ++stopped;
            last = event;
        }
        faults += event.kind == TrackerEventKind::fault && !ofTransfer;
        goesOn += event.kind == TrackerEventKind::faultCleared && ofTransfer;
        asked += event.kind == TrackerEventKind::refuel;
        if (event.kind == TrackerEventKind::transfer) {
            ++transfers;
            cameOverL += event.litres.mean.litres();
        }
    }

    test::Random m_random;
    SimulatedCar m_car;
    SimulatedBeside m_other;
    std::optional<GaugeTracker> m_tracker;
    double m_timeS = 0.0;
};

} // namespace

class HeardTanksTest : public QObject {
    Q_OBJECT

private slots:
    void aPumpThatFailsHalfWayIsToldOnceWithWhatCameAndWhatIsLeft()
    {
        int cars = 0, found = 0;
        std::vector<double> burnt;
        double overOff = 0.0, leftOff = 0.0;
        for (std::uint64_t seed = 1; seed <= 48; ++seed) {
            HeardTanks tanks(seed, TankFeed::pumpedOver);
            if (!tanks.known())
                continue;
            ++cars;
            const double start = tanks.otherL();
            tanks.drive(3600);
            tanks.drive(60.0 * 0.5 * start / kTwoLPerMin, true, kTwoLPerMin);
            QVERIFY2(tanks.stopped == 0, qPrintable(tanks.told()));
            const double delay = tanks.driveUntilSaid(1);
            QVERIFY2(tanks.stopped <= 1, qPrintable(tanks.told()));
            if (tanks.stopped == 0) {
                qInfo().noquote() << "not told:" << seed << tanks.told();
                continue;
            }
            ++found;
            burnt.push_back(delay / tanks.ownCapacityL() * 50.0);
            overOff += std::abs(tanks.last->cameOver.litres() - tanks.pumped) / tanks.otherCapacityL();
            leftOff += std::abs(tanks.last->left.litres() - tanks.otherL()) / tanks.otherCapacityL();
            tanks.drive(1800);
            QCOMPARE(tanks.stopped, 1);
        }
        QVERIFY(cars >= 40);
        QVERIFY(found >= cars - 2);
        std::ranges::sort(burnt);
        qInfo("%d of %d told, after %.1f L (median) and %.1f L (95 %%) of a 50 L tank; came over wrong by %.1f %%, "
              "left by %.1f %% of the other tank (mean)", found, cars, burnt[burnt.size() / 2],
              burnt[burnt.size() * 95 / 100], 100 * overOff / found, 100 * leftOff / found);
        QVERIFY(overOff / found < 0.05 && leftOff / found < 0.03);
    }

    void aPumpSwitchedOffIsToldAndWhatIsSwitchedOnAgainIsOver()
    {
        int cars = 0, told = 0, over = 0, again = 0;
        for (std::uint64_t seed = 101; seed <= 124; ++seed) {
            HeardTanks tanks(seed, TankFeed::pumpedOver);
            if (!tanks.known())
                continue;
            ++cars;
            tanks.drive(1800);
            tanks.drive(0.4 * tanks.otherL() / kTwoLPerMin * 60.0, false, kTwoLPerMin); // at a halt
            tanks.drive(600, false);
            const double pause = tanks.driveUntilSaid(1);
            told += tanks.stopped == 1;
            tanks.drive(0.4 * tanks.otherL() / kTwoLPerMin * 60.0, true, kTwoLPerMin);
            const double level = tanks.car().litres;
            tanks.drive(900);
            over += tanks.goesOn == 1;
            // A pause like that once more is how this pump is used.
            while (level - tanks.car().litres < 1.2 * pause)
                tanks.drive(10);
            again += tanks.stopped == 1;
        }
        qInfo("%d cars: told %d, over %d, not told of a second pause %d", cars, told, over, again);
        QVERIFY(cars >= 20);
        QVERIFY(told >= cars - 1);
        QVERIFY(over >= cars - 1);
        QVERIFY(again >= cars - 2);
    }

    void whatRunsUntilTheTankIsEmptyIsNoFault()
    {
        for (std::uint64_t seed = 201; seed <= 224; ++seed) {
            HeardTanks tanks(seed, TankFeed::pumpedOver);
            if (!tanks.known())
                continue;
            tanks.start(0.3, 0.6);
            tanks.drive(1800);
            for (int i = 0; i < 2000 && tanks.otherL() > 1.2; ++i) // its pump does not reach the rest
                tanks.drive(2, true, kTwoLPerMin);
            tanks.driveUntilSaid(1);
            QVERIFY2(tanks.stopped == 0, qPrintable(QString("car %1: ").arg(seed) + tanks.told()));
        }
    }

    // What came over, as the tank tells that it left: 10 L on the way, 8 L at a halt.
    void whatIsPumpedOverIsMeasuredWhereItLeaves()
    {
        int cars = 0, asked = 0;
        double over = 0.0, pumped = 0.0;
        for (std::uint64_t seed = 31; seed <= 54; ++seed) {
            HeardTanks tanks(seed, TankFeed::pumpedOver);
            if (!tanks.known() || tanks.otherCapacityL() < 22.0)
                continue;
            ++cars;
            tanks.drive(5400);
            tanks.drive(300, true, kTwoLPerMin);
            tanks.drive(1800);
            tanks.drive(120, false);
            tanks.drive(240, false, kTwoLPerMin);
            tanks.drive(300, false);
            tanks.drive(1200);
            QVERIFY2(tanks.faults == 0, qPrintable(QString("car %1: ").arg(seed) + tanks.told()));
            asked += tanks.asked;
            over += tanks.cameOverL;
            pumped += tanks.pumped;
        }
        qInfo("%.1f of %.1f L told, %d cars; asked about a refuel %d times", over / cars, pumped / cars, cars, asked);
        QVERIFY(cars >= 16);
        QVERIFY(asked <= 1); // the own tank's tracker asks by its own sender
        QVERIFY(std::abs(over / pumped - 1.0) < 0.08);
    }

    // Hours in which nothing is wrong: nothing is pumped; a pump that gives little more than is burnt; a
    // tap that is turned; tanks that stand level.
    void nothingIsToldWhereNothingIsWrong()
    {
        struct Way { const char* name; double hours = 0.0; int cars = 0, told = 0; };
        Way idle{"not pumped"}, slow{"slow pump"}, tap{"tap turned"}, level{"level tanks"};
        const auto note = [](Way& way, const HeardTanks& tanks) {
            way.hours += tanks.hours;
            ++way.cars;
            way.told += tanks.stopped;
        };
        for (std::uint64_t seed = 301; seed <= 348; ++seed) {
            for (Way* way : {&idle, &slow, &tap, &level}) {
                HeardTanks tanks(seed, way == &tap ? TankFeed::chosen : way == &level ? TankFeed::shared : TankFeed::pumpedOver);
                if (!tanks.known())
                    continue;
                if (way == &idle) {
                    tanks.start(0.9, 0.7);
                    tanks.driveUntilSaid(1);
                } else if (way == &slow) {
                    tanks.start(0.6, 0.9);
                    for (int i = 0; i < 1000 && tanks.otherL() > 0.2; ++i)
                        tanks.drive(30, true, 0.15);
                } else if (way == &tap) {
                    tanks.start(0.8, 0.8);
                    tanks.drive(3600);
                    tanks.driveOnOther(10.0);
                    tanks.drive(3600);
                } else {
                    tanks.start(0.9, 0.9);
                    tanks.driveLevel(1e6, true);
                }
                note(*way, tanks);
            }
        }
        for (const Way* way : {&idle, &slow, &tap, &level}) {
            qInfo("%s: told %d times in %.0f h of %d cars", way->name, way->told, way->hours, way->cars);
            QVERIFY(way->cars >= 40);
            QCOMPARE(way->told, 0);
        }
    }

    void aTankThatDoesNotFallWithTheOwnIsTold()
    {
        int cars = 0, found = 0;
        std::vector<double> burnt;
        for (std::uint64_t seed = 401; seed <= 424; ++seed) {
            HeardTanks tanks(seed, TankFeed::shared);
            if (!tanks.known())
                continue;
            ++cars;
            tanks.start(0.9, 0.9);
            tanks.driveLevel(7200, true);
            QVERIFY2(tanks.stopped == 0, qPrintable(tanks.told()));
            const double level = tanks.car().litres;
            while (tanks.stopped == 0 && tanks.car().litres > 0.2 * tanks.ownCapacityL())
                tanks.driveLevel(30, false);
            found += tanks.stopped;
            if (tanks.stopped > 0) {
                QCOMPARE(tanks.last->fault, FaultCode::transfer);
                burnt.push_back((level - tanks.car().litres) / tanks.ownCapacityL() * 50.0);
            }
        }
        QVERIFY(cars >= 20);
        QVERIFY(found >= cars - 1);
        std::ranges::sort(burnt);
        qInfo("%d of %d told, after %.1f L (median) and %.1f L (95 %%) of a 50 L tank", found, cars, burnt[burnt.size() / 2],
              burnt[burnt.size() * 95 / 100]);
    }

    // A float that rests on a stop, or a piece of the curve over which it need not move, shows no flow.
    void whereTheFloatNeedNotMoveNothingIsTold()
    {
        const auto told = [](ReadingKind kind, double flatL) {
            TransferWatch watch(TransferLimits::ofLevel(Volume::fromLitres(50), Volume::fromLitres(30)));
            int stopped = 0;
            for (int t = 0; t < 7200; t += 30)
                stopped += watch.add(Seconds(t), Volume::fromLitres(45 - t / 300.0),
                                     {kind, {Volume::fromLitres(28), {}}, Volume::fromLitres(flatL)})
                    == TransferWatch::Found::stopped;
            return stopped;
        };
        QCOMPARE(told(ReadingKind::exact, 0.0), 1);
        QCOMPARE(told(ReadingKind::atLeast, 0.0), 0);
        QCOMPARE(told(ReadingKind::exact, 3.0), 0);
    }

    // Within its spread, on the way and at a halt.
    void theLevelOfATankThatIsHeardIsRight()
    {
        int cars = 0, outside = 0, looks = 0;
        double squares = 0.0;
        for (std::uint64_t seed = 501; seed <= 524; ++seed) {
            HeardTanks tanks(seed, TankFeed::pumpedOver);
            if (!tanks.known())
                continue;
            ++cars;
            for (int i = 0; i < 12; ++i) {
                tanks.drive(400);
                tanks.drive(60, true, kTwoLPerMin / 2);
                tanks.drive(300, i % 2 == 0);
                const double off = (tanks.level()->mean.litres() - tanks.otherL()) / tanks.level()->sd.litres();
                outside += std::abs(off) > 2.0;
                squares += off * off;
                ++looks;
            }
        }
        qInfo("%d of %d beyond 2 sd, rms %.2f sd", outside, looks, std::sqrt(squares / looks));
        QVERIFY(cars >= 20);
        QVERIFY(outside < 0.1 * looks);
    }
};

UNDERMARK_TEST(HeardTanksTest)
#include "heard_tanks_test.moc"
