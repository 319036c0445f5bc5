// SPDX-License-Identifier: GPL-3.0-or-later
//
// The numbers of calibration against values from outside.
#include "engine/calibration/circuit.h"
#include "engine/calibration/gauge_table.h"
#include "engine/calibration/isotonic.h"
#include "engine/calibration/level_curve.h"
#include "engine/calibration/settled_reading.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QProcess>
#include <QTest>

using namespace undermark;

namespace {

LevelCurve curveThrough(const std::vector<double>& readings, const std::vector<double>& litres)
{
    std::vector<CurveKnot> knots;
    for (std::size_t i = 0; i < readings.size(); ++i)
        knots.push_back({Signal::of(readings[i]), Volume::fromLitres(litres[i]), {}, {}});
    if (knots.front().added > knots.back().added)
        std::reverse(knots.begin(), knots.end());
    return *LevelCurve::fromKnots(knots);
}

double litresAt(const LevelCurve& curve, double signal)
{
    return curve.read(Signal::of(signal)).added.mean.litres();
}

const std::vector<double> kOhms{33, 60, 95, 130, 165, 200, 225, 240};
const std::vector<double> kLitres{60, 52, 41, 30.5, 21, 12, 7, 5};

} // namespace

class CalibrationTest : public QObject {
    Q_OBJECT

    static SettledReading settleAll(const std::vector<double>& values)
    {
        std::vector<TimedSignal> series;
        for (std::size_t i = 0; i < values.size(); ++i)
            series.push_back({std::chrono::duration<double>(double(i)), Signal::of(values[i])});
        return settle(series, Signal::of(1));
    }

private slots:
    // NAG E01BEC example data, as in scipy's interpolate tests; values recomputed
    // with the three-point end slopes, apart from the project.
    void theCurveIsThePublishedMonotoneCubic()
    {
        const LevelCurve curve = curveThrough(
            {7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20},
            {0, 2.76429e-5, 4.37498e-2, .169183, .469428, .943740, .998636, .999919, .999994});
        const double expected[][2] = {{8.14, 0.017697167376}, {8.5, 0.116632576939},
                                      {9, 0.337534326846},    {9.5, 0.685217945111},
                                      {11, 0.986043362535},   {13, 0.999361822092},
                                      {18, 0.999982683848}};
        for (const auto& [x, y] : expected)
            QVERIFY2(qAbs(litresAt(curve, x) - y) < 6e-13, qPrintable(QString::number(x)));
    }

    // A falling sender, computed apart from the project (Fritsch-Butland slopes,
    // three-point shape-preserving ends).
    void aFallingSenderReadsThePublishedLitres()
    {
        const LevelCurve curve = curveThrough(kOhms, kLitres);
        const double expected[][2] = {{40, 57.967232190}, {110, 36.410726151}, {150, 24.985643369},
                                      {180, 16.985041259}, {232.5, 5.908043033}};
        for (const auto& [ohm, litres] : expected)
            QVERIFY2(qAbs(litresAt(curve, ohm) - litres) < 6e-10, qPrintable(QString::number(ohm)));
    }

    // A general library as a live oracle.
    void scipyDrawsTheSameCurve()
    {
        QProcess python;
        python.start("/usr/bin/python3", {"-c",
            "from scipy.interpolate import PchipInterpolator as P\n"
            "p=P([33,60,95,130,165,200,225,240],[60,52,41,30.5,21,12,7,5])\n"
            "print(*['%.15g' % p(33+207*i/50) for i in range(51)])"});
        if (!python.waitForFinished() || python.exitCode() != 0)
            QSKIP("python3 with scipy is not installed");
        const QList<QByteArray> values = python.readAllStandardOutput().trimmed().split(' ');
        QCOMPARE(values.size(), 51);
        const LevelCurve curve = curveThrough(kOhms, kLitres);
        for (int i = 0; i <= 50; ++i)
            QVERIFY(qAbs(litresAt(curve, 33 + 207.0 * i / 50) - values[i].toDouble()) < 1e-10);
    }

    void theCurvePassesItsKnotsIsMonotoneAndInverts()
    {
        const LevelCurve curve = curveThrough(kOhms, kLitres);
        for (std::size_t i = 0; i < kOhms.size(); ++i)
            QVERIFY(qAbs(litresAt(curve, kOhms[i]) - kLitres[i]) < 1e-12);
        double before = 61;
        for (double ohm = 33; ohm <= 240; ohm += 0.25) {
            const double litres = litresAt(curve, ohm);
            QVERIFY(litres <= before);
            QVERIFY(qAbs(curve.signalAt(Volume::fromLitres(litres)).value() - ohm) < 1e-6);
            before = litres;
        }
    }

    void twoKnotsAreTheStraightLine()
    {
        const LevelCurve curve = curveThrough({1, 3}, {0, 50});
        QCOMPARE(litresAt(curve, 1.5), 12.5);
    }

    void outsideTheKnotsTheLevelIsOneSided()
    {
        const LevelCurve curve = curveThrough(kOhms, kLitres);
        const LevelReading low = curve.read(Signal::of(241));
        QVERIFY(low.bound == LevelBound::atMost);
        QCOMPARE(low.added.mean.litres(), 5.0);
        const LevelReading high = curve.read(Signal::of(30));
        QVERIFY(high.bound == LevelBound::atLeast);
        QCOMPARE(high.added.mean.litres(), 60.0);
    }

    // (23, 27, 25, 28) is a published exercise; the weighted one was
    // computed apart from the project.
    void pooledNeighboursAreThePublishedOnes()
    {
        const std::vector<double> ones(4, 1.0);
        const auto blocks = isotonicBlocks(std::vector<double>{23, 27, 25, 28}, ones);
        QCOMPARE(blocks.size(), std::size_t(3));
        QCOMPARE(blocks[1].mean, 26.0);
        QCOMPARE(blocks[1].count, std::size_t(2));
        const auto weighted = isotonicBlocks(std::vector<double>{1, 3, 2, 4, 3.5, 3, 6},
                                             std::vector<double>{1, 1, 2, 1, 1, 3, 1});
        QCOMPARE(weighted.size(), std::size_t(4));
        QVERIFY(qAbs(weighted[1].mean - 7.0 / 3) < 1e-15);
        QVERIFY(qAbs(weighted[2].mean - 3.3) < 1e-15);
        QCOMPARE(weighted[3].mean, 6.0);
    }

    void voltsBehindAPullUpAtTheSupplyAreAnOpenWire()
    {
        Sender sender;
        sender.circuit = CircuitKind::resistive;
        sender.supplyVolts = 5;
        sender.pullUpOhms = 220;
        QVERIFY(circuitFault(Signal::of(5.0), sender) == CircuitFault::open);
        QVERIFY(!circuitFault(Signal::of(0.0), sender));   // 0-90 ohm senders exist
        QVERIFY(circuitFault(Signal::of(7.0), sender) == CircuitFault::impossible);
        QVERIFY(!circuitFault(Signal::of(2.2), sender));
    }

    // NIST StRD NumAcc3 and NumAcc4: mean and sd are certified exactly; naive sums
    // of squares lose them.
    void largeOffsetsCostNoDigits()
    {
        for (const double base : {1000000.0, 10000000.0}) {
            std::vector<double> values{base + 0.2};
            for (int i = 0; i < 500; ++i)
                values.insert(values.end(), {base + 0.1, base + 0.3});
            const SettledReading reading = settleAll(values);
            QVERIFY(qAbs(reading.mean.value() - (base + 0.2)) < 1e-8);
            QVERIFY(qAbs(reading.sd->value() - 0.1) < 1e-8);
        }
    }

    // NIST StRD univariate data, certified mean and standard deviation.
    void certifiedStatisticsAreMet_data()
    {
        QTest::addColumn<QString>("file");
        QTest::addColumn<int>("count");
        QTest::addColumn<double>("mean");
        QTest::addColumn<double>("sd");
        QTest::newRow("Lew") << "LEW.DAT" << 200 << -177.435 << 277.332168044316;
        QTest::newRow("Michelso") << "MICHELSO.DAT" << 100 << 299.8524 << 0.0790105478190518;
        QTest::newRow("Mavro") << "MAVRO.DAT" << 50 << 2.001856 << 0.000429123454003053;
    }

    void certifiedStatisticsAreMet()
    {
        QFETCH(QString, file);
        QFETCH(int, count);
        QFETCH(double, mean);
        QFETCH(double, sd);
        QFile data(QStringLiteral(UNDERMARK_SHARED_DATA "/nist/") + file);
        if (!data.open(QIODevice::ReadOnly))
            QSKIP("the NIST data is not beside this checkout");
        std::vector<double> values;
        const QList<QByteArray> lines = data.readAll().split('\n');
        for (auto line = lines.crbegin(); line != lines.crend(); ++line) {   // the data comes last
            bool isNumber = false;
            const double value = line->simplified().split(' ').first().toDouble(&isNumber);
            if (isNumber && int(values.size()) < count)
                values.insert(values.begin(), value);
        }
        QCOMPARE(int(values.size()), count);
        const SettledReading reading = settleAll(values);
        QVERIFY(qAbs(reading.mean.value() / mean - 1) < 1e-12);
        QVERIFY(qAbs(reading.sd->value() / sd - 1) < 1e-10);
    }

    void aGaugeTableIsNoWorseThanItSays()
    {
        const LevelCurve curve = curveThrough(kOhms, kLitres);
        GaugeTableRequest request;
        request.points = 6;
        request.unit = GaugeUnit::litres;
        request.decimals = 1;
        request.zeroMark = Volume::fromLitres(8);
        const auto table = gaugeTable(curve, request);
        QVERIFY(table.has_value());
        double worst = 0;
        for (std::size_t i = 0; i + 1 < table->rows.size(); ++i) {
            const GaugeTableRow& a = table->rows[i];
            const GaugeTableRow& b = table->rows[i + 1];
            for (double part = 0; part <= 1; part += 0.01) {
                const double signal = a.signal.value() + part * (b.signal - a.signal).value();
                const double shown = a.value + part * (b.value - a.value);
                const double real = litresAt(curve, signal) - 8;
                if (real >= 0)
                    worst = std::max(worst, qAbs(shown - real));
            }
        }
        QVERIFY2(worst <= table->worstError.litres() + 1e-6, qPrintable(QString::number(worst)));
        QVERIFY(table->worstError <= table->interpolationError + table->roundingError
                    + Volume::fromLitres(1e-9));
    }
};

UNDERMARK_TEST(CalibrationTest)
#include "calibration_test.moc"
