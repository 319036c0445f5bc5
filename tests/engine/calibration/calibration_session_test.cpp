// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibration_session.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class CalibrationSessionTest : public QObject {
    Q_OBJECT
    static std::optional<Volume> litres(double value) { return Volume::fromLitres(value); }
    static CalibrationSession prepared(TankWiring wiring = TankWiring::oneSender)
    {
        CalibrationSession session;
        session.choose(wiring);
        for (std::size_t i = 0; i < CalibrationSession::kCautions; ++i)
            session.acknowledge(i);
        (void)session.next({});
        return session;
    }
    static Result<void> type(CalibrationSession& session, double reading, std::optional<Volume> moved = {})
    {
        return session.takeTyped(Signal::of(reading), std::nullopt, {}, moved);
    }
    static void level(CalibrationSession& session, double reading, std::optional<Volume> moved = {})
    {
        QVERIFY(type(session, reading, moved));
        QVERIFY(session.next(moved));
    }
    // Drained, base of 5 L, 20 L, full with 25 L.
    static CalibrationSession poured()
    {
        CalibrationSession session = prepared();
        level(session, 3.02);
        level(session, 2.84, litres(5));
        level(session, 1.88, litres(20));
        (void)session.skip({});
        level(session, 0.55, litres(25));
        return session;
    }

private slots:
    void nothingIsPouredBeforeEveryCautionIsAcknowledged()
    {
        CalibrationSession session;
        for (std::size_t i = 0; i + 1 < CalibrationSession::kCautions; ++i)
            session.acknowledge(i);
        QVERIFY(!session.next({}));
        QVERIFY(session.isPreparing());
        session.acknowledge(CalibrationSession::kCautions - 1);
        session.acknowledge(0);   // and taken back
        QVERIFY(!session.next({}));
        session.acknowledge(0);
        QVERIFY(session.next({}).has_value());
        QCOMPARE(session.stage(), CalibrationStage::drained);
    }

    void aLevelNeedsItsLitresAndAReading()
    {
        CalibrationSession session = prepared();
        QVERIFY(!session.next({}));   // no reading yet
        level(session, 3.02);
        QVERIFY(!type(session, 2.84));
        QVERIFY(!type(session, 2.84, Volume()));
        QVERIFY(session.draft().current.readings.empty());
        QVERIFY(!session.takeTyped(std::nullopt, std::nullopt, {}, litres(5)));
        level(session, 2.84, litres(5));
        QCOMPARE(session.stage(), CalibrationStage::pours);
        QCOMPARE(*session.zeroMark(), Volume::fromLitres(5));   // the base, until told otherwise
    }

    void twoSignalsNeedBothReadingsAndAreNotVerified()
    {
        CalibrationSession session = prepared(TankWiring::twoSignals);
        QVERIFY(!session.takeTyped(Signal::of(3), std::nullopt, {}, {}));
        QVERIFY(!session.takeTyped(std::nullopt, Signal::of(3), {}, {}));
        const auto both = [&](double first, double second, std::optional<Volume> moved) {
            QVERIFY(session.takeTyped(Signal::of(first), Signal::of(second), {}, moved));
            QVERIFY(session.next(moved));
        };
        both(3.0, 2.9, {});
        both(2.0, 2.9, litres(10));
        both(1.0, 2.9, litres(10));
        QVERIFY(session.skip({}));
        both(1.0, 0.9, litres(20));
        QVERIFY(session.isReviewing());   // what goes in alone counts: nothing is taken out
        QVERIFY(session.gauge(Sender{})->hasTwoSignals());
    }

    void whatIsTakenOutCountsDown()
    {
        CalibrationSession session = poured();
        QVERIFY(session.takesOut());
        level(session, 1.1, litres(10));
        QVERIFY(session.isReviewing());
        const auto points = session.points();
        QCOMPARE(points.size(), std::size_t(5));
        QCOMPARE(points[3].added, Volume::fromLitres(50));
        QCOMPARE(points[4].added, Volume::fromLitres(40));
        QVERIFY(!session.calibration(Sender{}, std::nullopt));
        const auto calibration = session.calibration(Sender{}, litres(5));
        QCOMPARE(calibration->points, points);
    }

    void backGoesTheWayThatWasCome()
    {
        CalibrationSession session = poured();
        level(session, 1.1, litres(10));
        using enum CalibrationStage;
        for (const CalibrationStage expected : {verify, full, pours, base, drained}) {
            session.back();   // opens the level before
            QCOMPARE(session.stage(), expected);
            QCOMPARE(session.draft().current.readings.size(), std::size_t(1));
            session.back();   // takes its reading away
            QCOMPARE(session.stage(), expected);
        }
        session.back();
        QVERIFY(session.isPreparing());
        QVERIFY(session.points().empty());
    }

    void whatAllowsNoCurveIsNotHandedOut()
    {
        CalibrationSession session = prepared();
        level(session, 3.02);
        level(session, 3.02, litres(5));
        QVERIFY(type(session, 3.02, litres(40)));
        QVERIFY(!session.calibration(Sender{}, litres(5)));
        QCOMPARE(session.findings(Sender{}).front().code, std::string("no-movement"));
    }

    void onlyTheReviewTellsWhatTheWholeSweepShows()
    {
        CalibrationSession session = poured();
        QVERIFY(session.findings(Sender{}).empty());
        QVERIFY(session.skip({}));
        QVERIFY(!session.findings(Sender{}).empty());   // hysteresis unknown, an info
    }

    void aReadingIsWantedToAThirdOfALitre()
    {
        CalibrationSession session = prepared();
        level(session, 3.02);
        const Sender volts;
        QVERIFY(session.tolerance(0, volts, {}) == Signal());   // nothing to tell it by yet
        level(session, 2.84, litres(5));
        // 5 L moved it by 0.18 V: 0.3 L are 0.0108 V.
        QVERIFY(std::abs(session.tolerance(0, volts, {}).value() - 0.0108) < 1e-12);
    }
};

UNDERMARK_TEST(CalibrationSessionTest)
#include "calibration_session_test.moc"
