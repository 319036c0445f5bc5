// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/outlook.h"
#include "engine/outlook/sender_bias.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

constexpr double kTankL = 50;

// A straight sender of 0.08 V a litre that was calibrated with eleven points; every fill
// is full, from 10 to 16 L, and notes its reading. `creepL(i)`: litres the sender reads too
// high by before fill i.
template <class Creep>
CarKnowledge carWith(int fills, Creep creepL)
{
    VehicleLog log;
    log.vehicle.value.name = "Quarry van";
    log.vehicle.value.capacity = Volume::fromLitres(kTankL);
    log.modes.push_back({{}, {}, Mode{kOpenRoad, std::nullopt}});
    log.vehicle.value.sender.resolution = Signal::of(0.01);
    Calibration calibration;
    calibration.zeroMark = Volume::fromLitres(5);
    for (int i = 0; i <= 10; ++i)
        calibration.points.push_back({Volume::fromLitres(5.0 * i), Signal::of(0.5 + 0.4 * i), {}, {}, 5});
    log.calibration = Entry<Calibration>{{}, {}, calibration};
    for (int i = 0; i < fills; ++i) {
        const double left = 10 + 3 * (i % 3);
        Fill fill;
        fill.time = Instant(std::chrono::hours(24 * 7 * (i + 1)));
        fill.volume = Volume::fromLitres(kTankL - left + 0.2 * (i % 2));
        fill.odometer = Distance::fromKm(1000 + 480.0 * i);
        // Half a litre of play on the way down, as is assumed of every float.
        fill.signalBefore = Signal::of(0.5 + 0.08 * (left + 0.5 + creepL(i)));
        log.fills.push_back({{}, {}, fill});
    }
    return learn(std::move(log)).value();
}

Outlook at(const CarKnowledge& car, double volts)
{
    Question question;
    question.signal = Signal::of(volts);
    return outlook(car, question).value();
}

} // namespace

class SenderBiasTest : public QObject {
    Q_OBJECT
private slots:
    void withoutChecksNothingIsSaid()
    {
        QVERIFY(!senderBias(carWith(0, [](int) { return 0.0; })));
    }

    void aSoundSenderIsNotAccused()
    {
        const CarKnowledge car = carWith(20, [](int) { return 0.0; });
        const auto bias = senderBias(car);
        QVERIFY(std::abs(bias->mean.litres()) < 0.5);
        QVERIFY(at(car, 2.1).warnings.empty());
    }

    void aSenderThatCreepsIsCountedOffAndSaid()
    {
        const auto creep = [](int i) { return 0.05 * kTankL * i / 11.0; };
        const CarKnowledge sound = carWith(12, [](int) { return 0.0; }), crept = carWith(12, creep);
        const auto bias = senderBias(crept);
        QVERIFY2(bias->mean.litres() > 1.5 && bias->mean.litres() < 3.0, qPrintable(QString::number(bias->mean.litres())));
        QCOMPARE(at(crept, 2.1).warnings.size(), std::size_t(1));
        QVERIFY(english(at(crept, 2.1).warnings.front()).find("too high") != std::string::npos);
        const double lower = (at(sound, 2.1).usable.mean - at(crept, 2.1).usable.mean).litres();
        QVERIFY(lower > 1.2);
    }

    void oneSlipOfTheFillTurnsNothing()
    {
        const auto slip = [](int i) { return i == 8 ? 12.0 : 0.0; };
        QVERIFY(std::abs(senderBias(carWith(12, slip))->mean.litres()) < 0.6);
    }
};

UNDERMARK_TEST(SenderBiasTest)
#include "sender_bias_test.moc"
