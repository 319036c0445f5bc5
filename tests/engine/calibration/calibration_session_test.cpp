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
        const auto typed = session.typed(Signal::of(reading), std::nullopt, {});
        return typed ? session.take(*typed, moved) : fail(typed.error());
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

    // A year later: tried by what is taken out, and corrected where it stands.
    void aKeptCalibrationIsTakenUpAgain()
    {
        Calibration kept = *poured().calibration({}, litres(5));
        CalibrationSession session;
        QVERIFY(!session.takeUp(kept)); // cautions first
        for (std::size_t i = 0; i < CalibrationSession::kCautions; ++i)
            session.acknowledge(i);
        QVERIFY(!session.takeUp(Calibration{})); // nothing was poured
        QVERIFY(session.takeUp(kept).has_value());
        QVERIFY(session.stage() == CalibrationStage::verify && session.takesOut());
        QVERIFY(session.isAsIn(kept));
        QCOMPARE(session.points().size(), kept.points.size());
        level(session, 0.81, litres(5));
        const auto tried = session.verification({}, Volume::fromLitres(0.2), {});
        QVERIFY(tried && *tried && (*tried)->levels.size() == 1);
        QVERIFY(session.isAsIn(kept)); // it was only tried
        QVERIFY(session.correct(1, std::nullopt, litres(6)).has_value());
        QVERIFY(!session.isAsIn(kept));
        QCOMPARE(session.points()[3].added.litres(), 51.0); // those above it move along
    }

    void aLevelNeedsItsLitresAndAReading()
    {
        CalibrationSession session = prepared();
        QVERIFY(!session.next({}));   // no reading yet
        level(session, 3.02);
        QVERIFY(!type(session, 2.84));
        QVERIFY(!type(session, 2.84, Volume()));
        QVERIFY(session.draft().current.readings.empty());
        QVERIFY(!session.typed(std::nullopt, std::nullopt, {}));
        level(session, 2.84, litres(5));
        QCOMPARE(session.stage(), CalibrationStage::pours);
        QCOMPARE(*session.zeroMark(), Volume::fromLitres(5));   // the base, until told otherwise
    }

    void twoSignalsNeedBothReadingsAndAreNotVerified()
    {
        CalibrationSession session = prepared(TankWiring::twoSignals);
        QVERIFY(!session.typed(Signal::of(3), std::nullopt, {}));
        QVERIFY(!session.typed(std::nullopt, Signal::of(3), {}));
        const auto both = [&](double first, double second, std::optional<Volume> moved) {
            QVERIFY(session.take(*session.typed(Signal::of(first), Signal::of(second), {}), moved));
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

    // 350 for 35, and the like: asked about, whatever else is typed.
    void aSlipIsAskedAboutBeforeItIsBelieved()
    {
        const CalibrationSession session = poured(); // 50 L in a tank that takes 52
        const Volume capacity = Volume::fromLitres(52);
        const auto doubt = [&](std::size_t level, double reading, double moved) {
            const auto typed = session.typed(Signal::of(reading), std::nullopt, {});
            const auto asked = session.doubt(level, *typed, litres(moved), capacity);
            return asked ? english(*asked) : std::string();
        };
        QCOMPARE(doubt(2, 1.88, 200), std::string("That makes 205.0 L in a tank that takes 52.0 L to the "
                                                  "first click. Is it right?"));
        QCOMPARE(doubt(2, 1.88, 20), std::string());
        // 5 L moved it by 0.18 V: 0.96 V are 26.7 L.
        QCOMPARE(doubt(2, 1.88, 2), std::string("By the readings so far this step is about 26.7 L, not "
                                                "2.0 L. Is it right?"));
        QVERIFY(doubt(2, 18.8, 20).starts_with("The reading moves against the fuel"));
        QVERIFY(doubt(4, 1.1, 55).starts_with("That is 5.0 L more than was poured in"));
        QVERIFY(doubt(4, 0.1, 10).starts_with("The reading moves against the fuel")); // taken out
        QCOMPARE(doubt(4, 1.1, 10), std::string());
        QCOMPARE(doubt(3, 1.87, 20), std::string()); // a stop of the float is no slip
        QCOMPARE(doubt(1, 0.28, 5), std::string());  // nothing to tell it by yet
    }

    void anyLevelIsCorrectedWhereItStands()
    {
        CalibrationSession session = poured();
        QVERIFY(session.correct(2, std::nullopt, litres(21))); // litres alone: the reading stays
        QCOMPARE(session.points()[2].signal, Signal::of(1.88));
        QCOMPARE(session.points()[3].added, Volume::fromLitres(51));
        QVERIFY(session.correct(0, *session.typed(Signal::of(3.1), {}, {}), std::nullopt));
        QCOMPARE(session.points()[0].signal, Signal::of(3.1));
        QCOMPARE(session.points()[0].added, Volume());
        QVERIFY(!session.correct(1, std::nullopt, std::nullopt)); // its litres are missing
        QVERIFY(!session.correct(4, std::nullopt, litres(1)));    // not taken yet
        QVERIFY(session.takesOut());
        level(session, 1.1, litres(10));
        QVERIFY(session.correct(4, std::nullopt, litres(11))); // out, as before
        QCOMPARE(session.points()[4].added, Volume::fromLitres(40));
    }

    void theMetersUnitTellsOfTheCircuit()
    {
        Sender sender;
        sender.supplyVolts = 5.0;
        QCOMPARE(readIn(sender, "V"), sender);
        QVERIFY(readIn(sender, "ohm").circuit == CircuitKind::resistive);
        QVERIFY(!readIn(sender, "ohm").supplyVolts);
        QVERIFY(readIn(sender, "%").circuit == CircuitKind::percent);
        QVERIFY(readIn(sender, "mA").circuit == CircuitKind::direct);
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
