// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/joiner.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <limits>
#include <vector>

using namespace undermark;

class JoinerTest : public QObject {
    Q_OBJECT

    static TimedValue value(Channel channel, double time, double number, std::uint32_t sender = 0)
    {
        return {Seconds(time), channel, number, sender,
                channel == Channel::distance ? Seconds(10) : Seconds(2)};
    }
    static std::vector<Sample> joined(Joiner& joiner, const std::vector<TimedValue>& values, double until)
    {
        std::vector<Sample> samples;
        const auto drain = [&](Seconds end) {
            while (const auto sample = joiner.next(end))
                samples.push_back(*sample);
        };
        for (const TimedValue& one : values) {
            drain(one.time);
            joiner.put(one);
        }
        drain(Seconds(until));
        return samples;
    }

private slots:
    void tenSamplesASecondOfTheNewestThatIsGood()
    {
        Joiner joiner;
        const auto samples = joined(joiner, {value(Channel::signal, 100, 2.5), value(Channel::speed, 100.45, 60),
                                             value(Channel::signal, 101.0, 2.4)}, 110);
        QCOMPARE(samples.front().time.count(), 100.0);
        for (std::size_t i = 1; i < samples.size(); ++i)
            QVERIFY(std::abs((samples[i].time - samples[i - 1].time).count() - 0.1) < 1e-6);
        QVERIFY(!samples[4].speed && samples[5].speed);     // 100.4 and 100.5
        QCOMPARE(samples[9].signal->value(), 2.5);
        QCOMPARE(samples[10].signal->value(), 2.4);
        QVERIFY(samples[24].speed && !samples[25].speed);   // 102.4, 102.5
        QVERIFY(samples[30].signal);
        QCOMPARE(samples.size(), std::size_t(31));          // to 103.0, then silence
    }

    void silenceIsAGapAndNoStreamOfNothing()
    {
        Joiner joiner;
        const auto samples = joined(joiner, {value(Channel::signal, 0, 1), value(Channel::signal, 86400.03, 1)}, 86401);
        QCOMPARE(samples.size(), std::size_t(21 + 9));
        QVERIFY(std::abs(samples[21].time.count() - 86400.1) < 1e-6);
    }

    void theFirstSenderIsTheOnlyOneHeard()
    {
        Joiner joiner;
        const auto samples = joined(joiner, {value(Channel::speed, 0, -1, 9), value(Channel::speed, 0, 50, 1),
                                             value(Channel::speed, 0.5, 90, 2), value(Channel::speed, 5, 90, 2)}, 6);
        for (const Sample& sample : samples)
            QCOMPARE(sample.speed->kmPerHour(), 50.0);
        QCOMPARE(joiner.leftOut(Channel::speed), 2L);
        QCOMPARE(joiner.leftOut(Channel::signal), 0L);
        QCOMPARE(joiner.impossible(), 1L);
    }

    void whatCannotBeIsLeftOut()
    {
        Joiner joiner;
        const double nan = std::numeric_limits<double>::quiet_NaN();
        joiner.put(value(Channel::signal, 0, nan));
        joiner.put(value(Channel::fuelRate, 0, -1));
        joiner.put(value(Channel::signal, nan, 1));
        joiner.put(value(Channel::signal, 1e300, 1));
        QCOMPARE(joiner.impossible(), 4L);
        QVERIFY(!joiner.next(Seconds(10)));
        QVERIFY(!joiner.age(Channel::signal, Seconds(1)));
    }

    // An odometer in whole hundreds of metres every 5 s beside speed: within 1 % of it.
    void distanceIsTheWheelsCount()
    {
        Joiner joiner;
        std::vector<TimedValue> values;
        for (int i = 0; i <= 6000; ++i) {
            const double s = 0.1 * i, km = 100.0 * s / 3600.0;
            values.push_back(value(Channel::speed, s, 104));
            if (i % 50 == 0)
                values.push_back(value(Channel::distance, s, 12345.6 + std::floor(10 * km) / 10));
        }
        const auto samples = joined(joiner, values, 601);
        QVERIFY(std::abs(samples.back().distance->km() - 100.0 / 6.0) < 0.01 * 100.0 / 6.0);
        for (std::size_t i = 1; i < samples.size(); ++i)
            QVERIFY(*samples[i].distance >= *samples[i - 1].distance);
    }

    void aClockThatGoesBackStartsAnewAndALittleIsNothing()
    {
        Joiner joiner;
        const auto samples = joined(joiner, {value(Channel::signal, 1000, 1), value(Channel::signal, 1000.8, 2),
                                             value(Channel::signal, 1000.3, 3), value(Channel::signal, 50, 4)}, 51);
        std::size_t jumps = 0;
        for (std::size_t i = 1; i < samples.size(); ++i)
            jumps += samples[i].time < samples[i - 1].time;
        QCOMPARE(jumps, std::size_t(1));
        QCOMPARE(samples.back().signal->value(), 4.0);
        QVERIFY(std::abs(samples.back().time.count() - 50.9) < 1e-6);
        QCOMPARE(samples[7].signal->value(), 1.0);
    }

    void aLeapForwardCostsNoMoreThanWhatIsStillGood()
    {
        Joiner joiner;
        joiner.put(value(Channel::distance, 0, 1));
        int samples = 0;
        while (joiner.next(Seconds(9e10)))
            ++samples;
        QCOMPARE(samples, 101);
        joiner.put(value(Channel::distance, 9e10, 1));
        QVERIFY(joiner.next(Seconds(9e10 + 1)));
    }

    void ageIsSinceTheNewest()
    {
        Joiner joiner;
        joiner.put(value(Channel::signal, 10, 1));
        QCOMPARE(joiner.age(Channel::signal, Seconds(25))->count(), 15.0);
    }
};

UNDERMARK_TEST(JoinerTest)
#include "joiner_test.moc"
