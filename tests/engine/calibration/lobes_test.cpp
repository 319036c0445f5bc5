// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/lobes.h"
#include "engine/tracking/transfer_watch.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class LobesTest : public QObject {
    Q_OBJECT
    static CalibrationPoint point(double litres, double first, double second)
    {
        CalibrationPoint out;
        out.added = Volume::fromLitres(litres);
        out.signal = Signal::of(first);
        out.signal2 = Signal::of(second);
        return out;
    }
    static double litresAt(const std::vector<LevelCurve>& curves, double first, double second)
    {
        return readLobes(curves, Signal::of(first), Signal::of(second)).added.mean.litres();
    }

private slots:
    void thePourGoesToTheLobeWhoseSignalMoved()
    {
        const std::vector<CalibrationPoint> points{point(0, 0, 9), point(10, 2, 9), point(20, 4, 9),
                                                   point(30, 4, 5), point(40, 4, 1)};
        const auto curves = fitLobes(points);
        QVERIFY(curves.has_value());
        QVERIFY(std::abs(litresAt(*curves, 2, 9) - 10.0) < 1e-9);
        QVERIFY(std::abs(litresAt(*curves, 2, 5) - 20.0) < 1e-9);   // never poured like this
        QVERIFY(std::abs(litresAt(*curves, 4, 1) - 40.0) < 1e-9);
    }

    void litresThatBothSharedKeepTheirSum()
    {
        const std::vector<CalibrationPoint> points{point(0, 0, 0), point(20, 4, 0), point(40, 4, 4),
                                                   point(60, 8, 8)};
        const auto curves = fitLobes(points);
        QVERIFY(curves.has_value());
        QVERIFY(std::abs(litresAt(*curves, 8, 8) - 60.0) < 1e-9);
        QVERIFY(std::abs(litresAt(*curves, 8, 4) - 50.0) < 1e-9);
    }

    void bothOnTheLowerStopIsOneSided()
    {
        const std::vector<CalibrationPoint> points{point(0, 1, 1), point(20, 4, 1), point(40, 4, 4)};
        const auto curves = fitLobes(points);
        QVERIFY(curves.has_value());
        QCOMPARE(readLobes(*curves, Signal::of(0.5), Signal::of(0.5)).bound, LevelBound::atMost);
        QCOMPARE(readLobes(*curves, Signal::of(3.0), Signal::of(0.5)).bound, LevelBound::exact);
    }

    void whatCannotBeASaddleTankIsSaid()
    {
        const std::vector<CalibrationPoint> turning{point(0, 0, 0), point(10, 4, 1), point(20, 2, 2),
                                                    point(30, 5, 3)};
        QVERIFY(!fitLobes(turning));
        const std::vector<CalibrationPoint> still{point(0, 0, 0), point(10, 4, 0), point(20, 5, 0)};
        QVERIFY(!fitLobes(still));
    }

    void equalLobesInSeriesAddNoSpread()
    {
        QCOMPARE(seriesSpread(Volume::fromLitres(30), Volume::fromLitres(30)).litres(), 0.0);
        QVERIFY(std::abs(seriesSpread(Volume::fromLitres(40), Volume::fromLitres(20)).litres()
                         - 10.0 / std::sqrt(3.0)) < 1e-12);
    }

    void aLobeThatDoesNotEmptyIsFoundOnce()
    {
        const auto lobe = [](double litres) {
            return LevelObservation{ReadingKind::exact, {Volume::fromLitres(litres), {}}, {}};
        };
        const auto limits = TransferLimits::ofSaddle(Volume::fromLitres(60));
        TransferWatch broken(limits), working(limits);
        int found = 0, wrong = 0;
        double foundAt = 0.0;
        for (int t = 0; t < 6000; ++t) {
            const double burnt = t / 600.0;
            if (broken.add(Seconds(t), Volume::fromLitres(30 - burnt), lobe(20.0)) == TransferWatch::Found::stopped) {
                ++found;
                foundAt = burnt;
            }
            wrong += working.add(Seconds(t), Volume::fromLitres(30), lobe(20.0 - burnt)) != TransferWatch::Found::nothing;
        }
        QCOMPARE(found, 1);
        QCOMPARE(wrong, 0);
        QVERIFY(foundAt < 5.0);   // 6 % of 60 L and the smoothing
    }
};

UNDERMARK_TEST(LobesTest)
#include "lobes_test.moc"
