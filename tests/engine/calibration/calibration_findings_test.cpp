// SPDX-License-Identifier: GPL-3.0-or-later
//
// Each finding of a calibration, provoked by readings that a person could take.
#include "engine/calibration/calibrate.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

using Rows = std::vector<std::pair<double, double>>;   // litres, signal

class CalibrationFindingsTest : public QObject {
    Q_OBJECT

    static std::vector<CalibrationPoint> points(const Rows& rows)
    {
        std::vector<CalibrationPoint> list;
        for (const auto& [litres, signal] : rows)
            list.push_back({Volume::fromLitres(litres), Signal::of(signal), {}, {}, 1});
        return list;
    }

    static CalibrationFit fit(const Rows& rows, const Sender& sender = {}, const Rows& loaded = {})
    {
        const auto on = points(loaded);
        CalibrationOptions options;
        options.loaded = on;
        return *fitCalibration(points(rows), sender, options);
    }

    static bool has(const CalibrationFit& fit, const char* code)
    {
        for (const Finding& finding : fit.findings)
            if (finding.code == code)
                return !finding.text.empty();
        return false;
    }

    static Sender pulledUp()
    {
        Sender sender;
        sender.circuit = CircuitKind::resistive;
        sender.supplyVolts = 5;
        sender.pullUpOhms = 220;
        return sender;
    }

    // Sound readings, rising, up to 50 L.
    static Rows sound()
    {
        Rows rows;
        for (int i = 0; i <= 10; ++i)
            rows.push_back({5.0 * i, 0.500 + 0.351 * i + 0.007 * i * i});
        return rows;
    }

private slots:
    void soundReadingsHaveNoWarning()
    {
        const CalibrationFit sane = fit(sound());
        QVERIFY(sane.curve.has_value());
        QVERIFY(*sane.direction == SignalDirection::rising);
        for (const Finding& finding : sane.findings)
            QVERIFY2(finding.severity == Severity::info, english(finding.text).c_str());
    }

    void aFallingSenderIsRecognised()
    {
        Rows rows = sound();
        for (auto& [litres, signal] : rows)
            signal = 5 - signal * 0.9;
        QVERIFY(*fit(rows).direction == SignalDirection::falling);
    }

    void noMovementWhilePouringIsAnErrorAndStillAnAnswer()
    {
        const CalibrationFit dead = fit({{0, 2.2}, {5, 2.2}, {25, 2.2}, {50, 2.2}});
        QVERIFY(has(dead, "no-movement"));
        QVERIFY(dead.findings.front().severity == Severity::error);
        QVERIFY(!dead.curve);
    }

    void whatTheCircuitCannotGiveIsNamed()
    {
        QVERIFY(has(fit({{0, 3.0}, {5, 5.0}, {50, 0.6}}, pulledUp()), "open-circuit"));
        Sender share;
        share.circuit = CircuitKind::ratiometric;
        share.unit = "";   // of the supply, 0 to 1
        QVERIFY(has(fit({{0, 0.10}, {5, 0.0}, {50, 0.88}}, share), "short-circuit"));
        QVERIFY(has(fit({{0, 3.0}, {5, 2.8}, {50, 9.6}}, pulledUp()), "impossible-reading"));
    }

    void aFoulingFloatIsNotMonotone()
    {
        Rows rows = sound();
        rows[5].second = rows[3].second;
        QVERIFY(has(fit(rows), "not-monotone"));
    }

    void aJamInMidSweepIsAFlatPiece()
    {
        Rows rows = sound();
        rows[5].second = rows[6].second = rows[4].second;
        QVERIFY(has(fit(rows), "flat-piece"));
    }

    void anArmThatDoesNotReachSweepsTooLittle()
    {
        Sender percent;
        percent.circuit = CircuitKind::percent;
        percent.unit = "%";
        QVERIFY(has(fit({{0, 40.0}, {10, 41.5}, {25, 44.0}, {40, 46.5}, {50, 48.0}}, percent),
                    "sweep-too-small"));
    }

    void tooFewDecimalsAreTooCoarse()
    {
        QVERIFY(has(fit({{0, 1.0}, {10, 2.0}, {20, 2.0}, {30, 3.0}, {40, 4.0}, {50, 4.0}}),
                    "resolution-too-coarse"));
    }

    void bothDirectionsRevealHysteresisAndTheFallingBranchCounts()
    {
        Rows rows = sound();
        for (int i = 9; i >= 0; --i)
            rows.push_back({5.0 * i, sound()[std::size_t(i)].second + 0.06});
        const CalibrationFit both = fit(rows);
        QVERIFY(has(both, "hysteresis"));
        QVERIFY(both.drainedDown);
        QCOMPARE(both.readsHigh.mean.litres(), 0.0);
        const CalibrationFit up = fit(sound());
        QVERIFY(has(up, "hysteresis-unknown"));
        QVERIFY(up.readsHigh.mean > Volume());   // carried on the unsafe side
    }

    void stopsAtBothEndsAreFoundWithTheLitresTheGaugeCannotSee()
    {
        Rows rows = sound();
        rows[1].second = rows[0].second;
        rows[2].second = rows[0].second;
        rows[9].second = rows[10].second;
        const CalibrationFit stopped = fit(rows);
        QVERIFY(has(stopped, "stop-at-bottom"));
        QVERIFY(has(stopped, "stop-at-top"));
        QVERIFY(stopped.curve->lowest().width >= Volume::fromLitres(9));
        QVERIFY(stopped.curve->read(Signal::of(rows[0].second)).bound == LevelBound::atMost);
    }

    void anOffsetThatMovesWithLoadPointsToTheGround()
    {
        QVERIFY(has(fit(sound(), {}, {{25, sound()[5].second + 0.15}}), "load-offset"));
    }

    void aRepeatThatDisagreesIsSaid()
    {
        Rows rows = sound();
        rows.insert(rows.begin() + 6, {25.0, rows[5].second + 0.2});
        QVERIFY(has(fit(rows), "repeat-disagrees"));
    }

    void onePointIsBadInput()
    {
        const auto one = fitCalibration(points({{0, 1.0}}), Sender{});
        QVERIFY(!one);
        QCOMPARE(one.error().code, ErrorCode::badInput);
    }

    void aPointLeftOutShowsUpInTheResidual()
    {
        Rows rows = sound();
        rows[5].second += 0.05;   // about 0.7 L off
        QVERIFY(*fit(rows).residualSd > *fit(sound()).residualSd);
    }
};

UNDERMARK_TEST(CalibrationFindingsTest)
#include "calibration_findings_test.moc"
