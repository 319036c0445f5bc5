// SPDX-License-Identifier: GPL-3.0-or-later
//
// A tank calibrated by touch: typed level by level, with a slip that is asked about and one
// that is corrected later; and from a noisy source, with the program killed in between.
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/journeys/real_program.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>

using namespace undermark;
using test::Hand;

namespace {

// What the meter shows by litres: a straight sender of 3.02 V drained, 0.05 V a litre.
double volts(double litres) { return 3.02 - 0.05 * litres; }

// The sender while the car rocks a little: ten readings a second.
class Rocking {
public:
    explicit Rocking(LiveSignal& live) : m_live(live)
    {
        m_live.setClock([this] { return m_now; });
    }
    void read(double litres, int seconds)
    {
        for (int i = 0; i < 10 * seconds; ++i) {
            m_now += LiveSignal::Seconds(0.1);
            const double slosh = 0.004 * std::sin(2.1 * m_now.count()) + 0.003 * std::sin(3.7 * m_now.count());
            m_live.take(Signal::of(std::round(1000 * (volts(litres) + slosh)) / 1000)); // of a meter
        }
        m_live.look(); // a moment of the program's own
    }

private:
    LiveSignal& m_live;
    LiveSignal::Seconds m_now{50};
};

} // namespace

class CalibrationJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void aTankIsCalibratedByTyping_data() { test::addScreenSizes(); }
    void aTankIsCalibratedByTyping()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("calibration, typed");
        QTemporaryDir folder;
        test::OpenScreen start(newCar(folder), size, "tank");
        Hand hand(*start.window);
        walk(hand, start.screen);
        if (QTest::currentTestFailed())
            return;
        isThere(start.car);
        qInfo("%d touches; longest %.0f ms of work", hand.touches(), watch.longest() * 1e3);
    }
    void theSameInTheRealProgram()
    {
        if (const QString missing = test::RealProgram::missing(); !missing.isEmpty())
            QSKIP(qPrintable(missing));
        const QSize size(800, 480);
        QTemporaryDir own, folder;
        test::OpenScreen start(newCar(own), size, "tank");
        Hand hand(*start.window);
        walk(hand, start.screen);
        if (QTest::currentTestFailed())
            return;
        const QString file = newCar(folder);
        const QString wrong = test::walk({"--logbook", file, "--page", "tank"}, size, hand.gestures());
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        Result<Car> car = Car::open(file.toStdString(), OpenMode::readOnly);
        QVERIFY(car.has_value());
        isThere(*car);
    }
    void theSameFromANoisySourceKilledAndResumed_data() { test::addScreenSizes(); }
    void theSameFromANoisySourceKilledAndResumed()
    {
        QFETCH(QSize, size);
        const test::LoopWatch watch("calibration, live");
        QTemporaryDir folder;
        const QString file = newCar(folder);
        {
            test::OpenScreen start(file, size, "tank");
            Hand hand(*start.window);
            Rocking source(start.screen.tank.guide()->live());
            prepare(hand, start.screen);
            source.read(0, 31);
            QVERIFY(hand.touch("Take it"));
            QVERIFY(hand.touch("Next step"));
            source.read(5, 31);
            QVERIFY(hand.touchPad("5"));
            QVERIFY(hand.touch("Take it"));
            QVERIFY(hand.finds("settled"));
        } // the power is cut here
        test::OpenScreen again(file, size, "now");
        Hand hand(*again.window);
        Rocking source(again.screen.tank.guide()->live());
        QVERIFY(hand.sees("A calibration lies open"));
        QVERIFY(hand.touch("Go on with the calibration"));
        QVERIFY(hand.sees("nothing is lost"));
        QVERIFY(hand.touch("Next step"));
        source.read(40, 5);
        QVERIFY(hand.touchPad("35"));
        QVERIFY(hand.touch("Take it")); // too early
        QVERIFY(hand.sees("It has not settled"));
        source.read(40, 31);
        QVERIFY(hand.touch("Take it"));
        QVERIFY(hand.touch("Next pour"));
        finish(hand);
        if (!QTest::currentTestFailed())
            isThere(again.car);
    }

private:
    // A logbook with a car that takes 45 L, as its handbook says.
    static QString newCar(const QTemporaryDir& folder)
    {
        const QString file = folder.filePath("car.sqlite");
        auto car = Car::open(file.toStdString(), OpenMode::createIfMissing);
        Vehicle vehicle;
        vehicle.name = "Wren wagon";
        vehicle.capacity = Volume::fromLitres(45);
        if (!car || !car->setUp(vehicle))
            return {};
        return file;
    }
    static void walk(Hand& hand, Screen& screen)
    {
        prepare(hand, screen);
        QVERIFY(typed(hand, {}, "3.02"));
        QVERIFY(typed(hand, "5", "2.77"));
        QVERIFY(asksAboutALevel(hand, "350", "1.02")); // 35 L were meant
        QVERIFY2(hand.sees("That makes 355.0 L"), qPrintable(hand.texts().join(" | ")));
        QVERIFY(hand.touch("Change it"));
        QVERIFY(hand.touch("Erase")); // the last nought
        QVERIFY(hand.touch("Take this reading"));
        QVERIFY(hand.touch("Next pour"));
        QVERIFY(hand.finds("40.0 L: 1.02 V"));
        QVERIFY(hand.touch("5.0 L: 2.77 V")); // it was 2.76
        QVERIFY(hand.sees("Correct a level"));
        QVERIFY(hand.touchField("reading"));
        QVERIFY(hand.touchPad("2.76"));
        QVERIFY(hand.touch("Save the correction"));
        QVERIFY(hand.finds("5.0 L: 2.76 V"));
        finish(hand);
    }
    static void prepare(Hand& hand, Screen& screen)
    {
        QVERIFY(hand.touch("Calibrate"));
        QVERIFY(hand.sees("1 of 7"));
        const CalibrationGuide& guide = *screen.tank.guide();
        for (int i = 0; i < guide.cautions().size(); ++i) {
            const QString text = guide.cautions()[i].text;
            for (int tries = 0; !guide.cautions()[i].acknowledged && tries < 3; ++tries) {
                QVERIFY2(hand.touch(text), qPrintable(text)); // (one may only stop the sliding page)
                QTest::qWait(50);
            }
            QVERIFY2(guide.cautions()[i].acknowledged, qPrintable(text));
        }
        QVERIFY(hand.touch("All of it holds"));
        QVERIFY(hand.sees("2 of 7"));
    }
    // A level with one reading, up to the question that it may raise.
    static bool asksAboutALevel(Hand& hand, const QString& litres, const QString& reading)
    {
        if (!litres.isEmpty() && (!hand.touchPad(litres) || !hand.touchField("reading")))
            return false;
        return hand.touchPad(reading) && hand.touch("Take this reading");
    }
    static bool typed(Hand& hand, const QString& litres, const QString& reading)
    {
        return asksAboutALevel(hand, litres, reading) && hand.touch("Next step");
    }
    // Filled up, verified not, saved; and the sheet takes what was poured.
    static void finish(Hand& hand)
    {
        QVERIFY(hand.touch("Now fill it up"));
        QVERIFY(hand.sees("5 of 7"));
        QVERIFY(asksAboutALevel(hand, "10", "0.52"));
        QVERIFY(hand.touch("Next step"));
        QVERIFY(hand.touch("Without verifying"));
        QVERIFY(hand.sees("L since drained")); // the curve comes first
        QVERIFY(hand.touch("Save this calibration"));
        QVERIFY(hand.touch("Make 51.4 L the car's capacity"));
    }
    // The curve, and the capacity that was poured.
    static void isThere(Car& car)
    {
        const auto known = car.knowledge();
        QVERIFY((*known)->gauge.isKnown());
        QCOMPARE((*known)->log.calibration->value.points.size(), std::size_t(4));
        const LevelReading half = *(*known)->gauge.read({Signal::of(volts(25)), {}});
        QVERIFY2(std::abs(half.added.mean.litres() - 25.0) < 1.5,
                 qPrintable(QString::number(half.added.mean.litres())));
        QCOMPARE(int(std::lround(car.vehicle()->value.capacity.litres() * 10)), 514);
    }
};

UNDERMARK_TEST(CalibrationJourneyTest)
#include "calibration_journey_test.moc"
