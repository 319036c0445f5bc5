// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/outlook.h"
#include "engine/outlook/several_tanks.h"
#include "tests/support/test_main.h"
#include "tests/support/two_tank_world.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

constexpr int kWorlds = 300;

struct Asked {
    const char* how;
    int kept = 0;
    double sureShare = 0; // of the true distance
};

// Of each way to ask the share of cars that made the distance called sure at 99 %.
std::vector<Asked> coverage(TankFeed feed)
{
    std::vector<Asked> asked{{"log"}, {"both read"}, {"own read, odometer told"}, {"own read"}};
    for (std::uint64_t seed = 1; seed <= kWorlds; ++seed) {
        test::TwoTankCar world(seed + 7000 * std::uint64_t(feed), feed);
        const CarKnowledge car = learn(world.log()).value();
        world.drive(0.5 * car.usableCapacity().mean.litres() / 0.13);
        std::array<Question, 4> questions;
        questions[0].odometer = Distance::fromKm(world.odometerKm());
        for (std::size_t i : {1u, 2u, 3u})
            questions[i].signal = Signal::of(world.ownVolts());
        questions[2].odometer = questions[0].odometer;
        questions[1].tanks["aux"].signal = Signal::of(world.otherVolts());
        const double truth = world.kmToDry();
        for (std::size_t i = 0; i < questions.size(); ++i) {
            const double sure = distances(outlook(car, questions[i])->toDry).p99.km();
            asked[i].kept += sure <= truth;
            asked[i].sureShare += sure / truth / kWorlds;
        }
    }
    return asked;
}

template <class T> Entry<T> logged(T value) { return {{}, {}, std::move(value)}; }

Fill fillOf(int hours, double litres, std::optional<double> km, std::optional<std::string> tank = {},
            FillExtent extent = FillExtent::full)
{
    Fill fill;
    fill.time = Instant(std::chrono::hours(hours));
    fill.volume = Volume::fromLitres(litres);
    if (km)
        fill.odometer = Distance::fromKm(*km);
    fill.tank = std::move(tank);
    fill.extent = extent;
    return fill;
}

// An invented car of 50 and 30 L, neither calibrated.
VehicleLog twoTanks(TankFeed feed)
{
    VehicleLog log;
    log.vehicle.value.name = "Harbour van";
    log.vehicle.value.capacity = Volume::fromLitres(50);
    log.modes.push_back(logged(Mode{kOpenRoad, std::nullopt}));
    ExtraTank aux;
    aux.name = "aux";
    aux.capacity = Volume::fromLitres(30);
    aux.feed = feed;
    log.tanks.push_back(logged(aux));
    return log;
}

} // namespace

// A car of two tanks, however they are joined.
class TwoTanksTest : public QObject {
    Q_OBJECT

private slots:
    void sureIsKept_data()
    {
        QTest::addColumn<int>("feed");
        QTest::newRow("shared") << int(TankFeed::shared);
        QTest::newRow("chosen") << int(TankFeed::chosen);
        QTest::newRow("pumped over") << int(TankFeed::pumpedOver);
    }

    // 99 of 100, less three standard errors of so many cars; and it is no empty promise.
    void sureIsKept()
    {
        QFETCH(int, feed);
        const double least = 0.99 - 3 * std::sqrt(0.99 * 0.01 / kWorlds);
        for (const Asked& asked : coverage(TankFeed(feed))) {
            const QString said = QString("%1: %2 of %3 kept, sure is %4 of what was made")
                                     .arg(asked.how).arg(asked.kept).arg(kWorlds).arg(asked.sureShare);
            qInfo("%s", qPrintable(said));
            QVERIFY2(asked.kept >= least * kWorlds, qPrintable(said));
            // Of a tap nobody told of, nothing in the other tank is sure.
            QVERIFY2(asked.sureShare > (std::string_view(asked.how) == "own read" ? 0.2 : 0.6), qPrintable(said));
        }
    }

    // Independent errors: variances add.
    void whatIsUsableIsTheSumOfTheTanks()
    {
        const CarKnowledge car = *learn(test::TwoTankCar(5, TankFeed::chosen).log());
        const auto own = car.reserve.usableCapacity(), aux = car.further[0].reserve.usableCapacity();
        QCOMPARE(car.usableCapacity().mean.litres(), own.mean.litres() + aux.mean.litres());
        QCOMPARE(car.usableCapacity().sd.litres(), std::hypot(own.sd.litres(), aux.sd.litres()));
        const auto hidden = car.reserve.reserve(), hiddenAux = car.further[0].reserve.reserve();
        QCOMPARE(car.hiddenReserve().mean.litres(), hidden.mean.litres() + hiddenAux.mean.litres());
        Question question;
        question.tanks[""].usable = {Volume::fromLitres(20), Volume::fromLitres(0.6)};
        question.tanks["aux"].usable = {Volume::fromLitres(10), Volume::fromLitres(0.8)};
        const Outlook now = *outlook(car, question);
        QCOMPARE(now.usable.mean.litres(), 30.0);
        QCOMPARE(now.usable.sd.litres(), 1.0);
        QCOMPARE(now.tanks.size(), std::size_t(2));
    }

    // 400 km on 32 L out of both, whichever gave them.
    void whatBothBurnIsWhatWentIntoBoth()
    {
        VehicleLog log = twoTanks(TankFeed::chosen);
        for (int i = 0; i < 6; ++i) {
            log.fills.push_back(logged(fillOf(100 * i, i == 0 ? 40 : 32.0 - 5 * i, 1000 + 400.0 * i)));
            log.fills.push_back(logged(fillOf(100 * i + 1, i == 0 ? 25 : 5.0 * i, {}, "aux")));
        }
        const CarKnowledge car = *learn(log);
        QCOMPARE(car.consumption.intervals.size(), std::size_t(5));
        for (const Interval& stretch : car.consumption.intervals) {
            QCOMPARE(stretch.burnt.mean.litres(), 32.0);
            QCOMPARE(stretch.distance.km(), 400.0);
        }
        QVERIFY(car.consumption.flags.empty());
    }

    // One tank left short: the log waits until both are full again.
    void aHaltIsFullWhenAllTanksAre()
    {
        VehicleLog log = twoTanks(TankFeed::pumpedOver);
        log.fills = {logged(fillOf(0, 40, 1000)),   logged(fillOf(1, 25, {}, "aux")),
                     logged(fillOf(100, 30, 1400)), // the aux tank was not looked at
                     logged(fillOf(200, 20, 1700)), logged(fillOf(201, 14, {}, "aux"))};
        const WholeFills whole = wholeFills(log);
        QVERIFY(whole.fills[0].extent == FillExtent::partial && !whole.fills[0].odometer);
        QVERIFY(whole.fills[1].extent == FillExtent::full);
        QCOMPARE(whole.fills[1].odometer->km(), 1000.0);
        QVERIFY(whole.fills[2].extent == FillExtent::partial);
        QVERIFY(whole.fills[4].extent == FillExtent::full);
        const CarKnowledge car = *learn(log);
        QCOMPARE(car.consumption.intervals.size(), std::size_t(1));
        QCOMPARE(car.consumption.intervals[0].burnt.mean.litres(), 64.0);
        QCOMPARE(car.consumption.intervals[0].distance.km(), 700.0);
    }

    // What is put into a tank for the first time was not burnt before.
    void theFirstFillOfAFurtherTankEndsNoStretch()
    {
        VehicleLog log = twoTanks(TankFeed::chosen);
        log.fills = {logged(fillOf(0, 40, 1000)), logged(fillOf(100, 32, 1400)), logged(fillOf(200, 32, 1800)),
                     logged(fillOf(201, 30, {}, "aux")), logged(fillOf(300, 20, 2200)),
                     logged(fillOf(301, 12, {}, "aux"))};
        const CarKnowledge car = *learn(log);
        QCOMPARE(car.consumption.intervals.size(), std::size_t(2));
        QCOMPARE(car.consumption.intervals[0].distance.km(), 400.0);
        QCOMPARE(car.consumption.intervals[1].burnt.mean.litres(), 32.0);
        QCOMPARE(car.consumption.intervals[1].distance.km(), 400.0);
    }

    void aTankThatWasNeverFilledChangesNothing()
    {
        VehicleLog log = test::TwoTankCar(9, TankFeed::chosen).log();
        std::erase_if(log.fills, [](const auto& fill) { return fill.value.tank.has_value(); });
        VehicleLog one = log;
        one.tanks.clear();
        one.calibrations.pop_back();
        const CarKnowledge withIt = *learn(log), without = *learn(one);
        Question read;
        read.signal = Signal::of(2.0);
        for (const Question& question : {Question{}, read}) {
            const Outlook a = *outlook(withIt, question), b = *outlook(without, question);
            QVERIFY(a.usable == b.usable && a.aboveZero == b.aboveZero && a.reserve == b.reserve);
            QVERIFY(distances(a.toDry) == distances(b.toDry) && distances(a.toZero) == distances(b.toZero));
        }
    }

    // Read is only the vehicle's own: the log tells the other, as far as it can be so.
    void theLogIsHeldToWhatIsRead()
    {
        const CarKnowledge car = *learn(test::TwoTankCar(5, TankFeed::chosen).log());
        const double full = car.usableCapacity().mean.litres();
        const double own = car.reserve.usableCapacity().mean.litres();
        const auto usable = [&](double kmSinceFill, double ownLitres) {
            Question question;
            question.odometer = *car.fills.back().odometer + Distance::fromKm(kmSinceFill);
            question.tanks[""].usable = {Volume::fromLitres(ownLitres), Volume::fromLitres(0.5)};
            return outlook(car, question)->usable.mean.litres();
        };
        QVERIFY(std::abs(usable(0, own) - full) < 1e-9);          // agrees: the log
        QVERIFY(usable(0, 5) < full - 20);                        // it says too much: 5 L and a full aux
        QVERIFY(std::abs(usable(2000, 30) - 30) < 1e-9);          // it says too little: what was read
    }

    void aTankThatTheCarHasNotIsNotFound()
    {
        Question question;
        question.tanks["roof"].usable = {Volume::fromLitres(5), Volume()};
        const auto now = outlook(*learn(twoTanks(TankFeed::chosen)), question);
        QVERIFY(!now);
        QCOMPARE(now.error().code, ErrorCode::notFound);
    }

    // Its proofs are weighed on its own reserve, and flagged where the car's own are.
    void aProofIsOfItsTank()
    {
        VehicleLog log = test::TwoTankCar(3, TankFeed::chosen).log();
        Proof proof;
        proof.kind = ProofKind::drained;
        proof.leftBehind = Estimate<Volume>{Volume::fromLitres(1.0), Volume::fromLitres(0.1)};
        proof.tank = "aux";
        const CarKnowledge before = *learn(log);
        log.proofs.push_back(logged(proof));
        const CarKnowledge after = *learn(log);
        QCOMPARE(after.reserve.evidence().size(), before.reserve.evidence().size());
        QCOMPARE(after.further[0].reserve.evidence().size(), before.further[0].reserve.evidence().size() + 1);
        QVERIFY(after.further[0].reserve.leftBehind().sd < before.further[0].reserve.leftBehind().sd);
    }
};

UNDERMARK_TEST(TwoTanksTest)
#include "two_tanks_test.moc"
