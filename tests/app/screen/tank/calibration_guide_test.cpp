// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/calibration_draft_file.h"
#include "app/screen/tank/calibration_guide.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QSignalSpy>
#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

void type(CalibrationGuide& guide, int field, const QString& text)
{
    guide.form()->select(field);
    while (!guide.form()->fields()[field].text.isEmpty())
        guide.form()->erase();
    for (const QChar key : text)
        guide.form()->press(key);
}

void prepare(CalibrationGuide& guide)
{
    for (int i = 0; i < guide.cautions().size(); ++i)
        guide.acknowledge(i);
    guide.go();
}

// A level with one reading, and on.
void level(CalibrationGuide& guide, const QString& litres, const QString& reading)
{
    type(guide, 0, litres);
    type(guide, 1, reading);
    guide.go();
    guide.go();
}

void drained(CalibrationGuide& guide, const QString& reading)
{
    type(guide, 0, reading);
    guide.go();
    guide.go();
}

bool saysProblem(const CalibrationGuide& guide, const QString& part)
{
    for (const NoticeText& notice : guide.notices())
        if (notice.problem() && notice.text.contains(part))
            return true;
    return false;
}

// A source that gives this reading ten times a second for so many seconds.
struct FakeSource {
    explicit FakeSource(CalibrationGuide& guide) : m_guide(guide)
    {
        guide.live().setClock([this] { return m_now; });
    }
    void give(double first, int seconds, std::optional<double> second = {})
    {
        for (int i = 0; i < 10 * seconds; ++i) {
            m_now += LiveSignal::Seconds(0.1);
            m_guide.live().take(Signal::of(first), second ? std::optional(Signal::of(*second)) : std::nullopt);
        }
    }

private:
    CalibrationGuide& m_guide;
    LiveSignal::Seconds m_now{500};
};

QString liveFact(const CalibrationGuide& guide, const QString& name)
{
    for (const Fact& fact : guide.liveFacts())
        if (fact.name == name)
            return fact.value;
    return {};
}

// A level with both readings of a saddle tank, and on.
void level(CalibrationGuide& guide, const QString& litres, const QString& first, const QString& second)
{
    type(guide, 0, litres);
    type(guide, 1, first);
    type(guide, 2, second);
    guide.go();
    guide.go();
}

// Two lobes of 20 L: the pump's fills first, then the other.
void pourSaddle(CalibrationGuide& guide)
{
    guide.chooseWiring(int(TankWiring::twoSignals));
    prepare(guide);
    type(guide, 0, "3.0");
    type(guide, 1, "2.9");
    guide.go();
    guide.go();
    level(guide, "10", "2.0", "2.9");
    level(guide, "10", "1.0", "2.9");
    level(guide, "10", "1.0", "1.9");
    guide.other();
    level(guide, "10", "1.0", "0.9");
}

} // namespace

class CalibrationGuideTest : public QObject {
    Q_OBJECT
private slots:
    void nothingIsPouredBeforeEveryCautionIsAcknowledged()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        guide.go();
        QVERIFY(guide.preparing());
        for (int i = 0; i + 1 < guide.cautions().size(); ++i)
            guide.acknowledge(i);
        guide.go();
        QVERIFY(guide.preparing());
        QVERIFY(saysProblem(guide, "caution"));
        guide.acknowledge(int(guide.cautions().size()) - 1);
        guide.go();
        QCOMPARE(guide.stage(), int(CalibrationStage::drained));
    }
    void fromDrainedToTheLogbook()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        QSignalSpy stored(&guide, &CalibrationGuide::stored);
        prepare(guide);
        drained(guide, "3.02");
        level(guide, "5", "2.84");
        level(guide, "20", "1.88");
        guide.other(); // now full
        QCOMPARE(guide.stage(), int(CalibrationStage::full));
        level(guide, "25.2", "0.55");
        QCOMPARE(guide.stage(), int(CalibrationStage::verify));
        level(guide, "10", "1.1");
        QVERIFY(guide.reviewing());
        QCOMPARE(stored.count(), 0);
        QCOMPARE(guide.form()->fields()[0].text, "5"); // the base is proposed as zero mark
        QVERIFY(!guide.plot().isEmpty());
        guide.go();
        QCOMPARE(stored.count(), 1);
        const auto known = car.knowledge();
        const Calibration& saved = (*known)->log.calibration->value;
        QCOMPARE(saved.points.size(), 5u);
        QCOMPARE(saved.points[0].added, Volume{});
        QCOMPARE(saved.points[3].added, Volume::fromLitres(50.2));
        QCOMPARE(saved.points[4].added, Volume::fromLitres(40.2)); // verified by taking out
        QCOMPARE(saved.points[1].signal, Signal::of(2.84));
        QCOMPARE(saved.zeroMark, Volume::fromLitres(5));
        QVERIFY(!saved.lobes);
        const auto& tried = (*known)->log.verifications;
        QCOMPARE(tried.size(), 1u);
        QCOMPARE(tried.front().value.levels.size(), 1u);
        QCOMPARE(tried.front().value.levels.front().added, Volume::fromLitres(40.2));
        QVERIFY(tried.front().value.passed);
        QVERIFY(guide.preparing()); // done: the next one starts anew
        QVERIFY(!*findDraft(draftFile(car.folder(), car.shownCar())));
    }
    void aPowerCutLosesNothing()
    {
        test::DemoCar car;
        {
            CalibrationGuide guide(car);
            prepare(guide);
            drained(guide, "3.02");
            type(guide, 0, "5");
            type(guide, 1, "2.84");
            guide.go();
            type(guide, 1, "2.86");
            guide.go(); // two readings, the level is not done
        }
        CalibrationGuide again(car);
        QCOMPARE(again.stage(), int(CalibrationStage::base));
        QCOMPARE(again.facts()[0].value, "2");
        QCOMPARE(again.facts()[1].value.left(4), "2.85");
        QCOMPARE(again.form()->fields()[0].text, "5");
        QVERIFY(again.notices()[0].text.contains("nothing is lost"));
        again.go();
        QCOMPARE(again.stage(), int(CalibrationStage::pours));
        QCOMPARE(again.done().size(), 2);
    }
    void whatIsAcknowledgedSurvivesToo()
    {
        test::DemoCar car;
        CalibrationGuide(car).acknowledge(2);
        QVERIFY(CalibrationGuide(car).cautions()[2].acknowledged);
    }
    void noMovementIsSaidWhilePouring()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        prepare(guide);
        drained(guide, "3.02");
        level(guide, "5", "3.02");
        type(guide, 0, "10");
        type(guide, 1, "3.021");
        guide.go();
        QCOMPARE(guide.stage(), int(CalibrationStage::pours));
        QVERIFY(saysProblem(guide, "stayed near 3.02"));
    }
    void aSoundSenderIsNotAccusedWhilePouring()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        prepare(guide);
        drained(guide, "3.02");
        level(guide, "5", "2.84");
        level(guide, "5", "2.61");
        for (const NoticeText& notice : guide.notices())
            QVERIFY2(!notice.problem(), qPrintable(notice.text));
    }
    void aReadingSettlesWithFiveThatAgree()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        prepare(guide);
        for (const char* reading : {"3.02", "3.021", "3.019", "3.02"}) {
            type(guide, 0, reading);
            guide.go();
            car.pass(std::chrono::seconds(1));
        }
        QVERIFY(guide.facts()[2].value.startsWith("not settled"));
        type(guide, 0, "3.02");
        guide.go();
        QCOMPARE(guide.facts()[2].value, "settled");
    }
    void aLevelNeedsItsLitresAndAReading()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        prepare(guide);
        guide.go();
        QCOMPARE(guide.stage(), int(CalibrationStage::drained));
        drained(guide, "3.02");
        type(guide, 1, "2.84"); // no litres
        guide.go();
        QVERIFY(guide.notices()[0].problem());
        QVERIFY(guide.done().size() == 1);
    }
    void backTakesReadingsAwayThenOpensTheLevelBefore()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        prepare(guide);
        drained(guide, "3.02");
        type(guide, 0, "5");
        type(guide, 1, "2.84");
        guide.go();
        guide.back();
        QCOMPARE(guide.stage(), int(CalibrationStage::base));
        QVERIFY(guide.facts()[0].value.startsWith("none"));
        guide.back();
        QCOMPARE(guide.stage(), int(CalibrationStage::drained));
        QCOMPARE(guide.facts()[0].value, "1");
    }
    void withoutASourceNothingIsSaidOfOne()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        prepare(guide);
        QVERIFY(guide.liveReading().isEmpty());
        QVERIFY(guide.liveFacts().isEmpty());
    }
    void aSourceIsTakenOnceItHasSettledAndOnlyAtATouch()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        FakeSource source(guide);
        prepare(guide);
        for (int i = 0; i < 12; ++i) { // fuel runs in
            source.give(3.0 - 0.05 * i, 1);
        }
        QCOMPARE(guide.liveState(), "still moving");
        guide.takeLive();
        QVERIFY(saysProblem(guide, "not settled"));
        QVERIFY(guide.facts()[0].value.startsWith("none"));
        source.give(2.45, 31);
        QCOMPARE(guide.liveReading(), "2.45 V");
        QCOMPARE(guide.liveState(), "settled");
        QVERIFY(guide.facts()[0].value.startsWith("none"));
        guide.takeLive();
        QCOMPARE(guide.facts()[0].value, "1");
        QCOMPARE(guide.facts()[1].value, "2.45 V");
        QCOMPARE(guide.facts()[2].value, "settled");
        QVERIFY(!guide.liveSettled()); // the same is not taken twice
    }
    void aSettledReadingCountsForAsManyAsAreIndependent()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        FakeSource source(guide);
        prepare(guide);
        for (int i = 0; i < 30; ++i) // slosh: alike for a second at a time
            source.give(i % 3 == 0 ? 2.999 : i % 5 == 0 ? 3.001 : 3.0, 1);
        QVERIFY(guide.liveSettled());
        const std::size_t gathered = guide.live().first().size();
        guide.takeLive();
        const auto draft = findDraft(draftFile(car.folder(), car.shownCar()));
        const DraftReading& taken = (*draft)->current.readings.at(0);
        QVERIFY(taken.settled);
        QVERIFY2(taken.readings > 5 && taken.readings < int(gathered) / 2,
                 qPrintable(QString::number(taken.readings)));
    }
    void whatTheSourceGetsWrongIsSaid()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        FakeSource source(guide);
        prepare(guide);
        source.give(3.0, 1);
        source.give(3, 1, 1); // "3,01", with a decimal comma
        QCOMPARE(liveFact(guide, "lines not read"), "10, the first: 3,1");
        guide.live().end();
        QCOMPARE(guide.liveState(), "the source has ended");
        QCOMPARE(guide.liveReading(), "no reading");
    }
    void theSpreadIsToldInLitresOnceThereIsACurve()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        FakeSource source(guide);
        prepare(guide);
        source.give(3.0, 12);
        QVERIFY(!liveFact(guide, "drift a minute").contains("L"));
        drained(guide, "3.0");
        level(guide, "5", "2.8"); // 25 L a volt
        for (int i = 0; i < 13; ++i)
            source.give(2.7 + 0.001 * i, 1); // 0.06 V a minute
        // (13 stairs of a second rise by 1 - 1/13^2 of 0.06 V a minute; spreads are rounded up)
        QCOMPARE(liveFact(guide, "drift a minute"), "0.0596 V (1.50 L)");
    }
    void aSaddleTankByTwoSignalsFromDrainedToTheLogbook()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        pourSaddle(guide);
        QVERIFY(guide.reviewing()); // what was poured is not taken out again to verify
        QVERIFY(!guide.plot().isEmpty());
        QVERIFY(!guide.secondPlot().isEmpty());
        QCOMPARE(guide.facts()[1].value.left(4), "20.0");
        QCOMPARE(guide.facts()[2].value.left(4), "20.0");
        type(guide, 0, "6");
        guide.go();
        const auto known = car.knowledge();
        QVERIFY((*known)->gauge.hasTwoSignals());
        const LevelReading half = *(*known)->gauge.read({Signal::of(1.5), Signal::of(2.4)});
        QVERIFY(std::abs(half.added.mean.litres() - 20.0) < 0.5); // 15 + 5, lines nearly straight
        QCOMPARE((*known)->log.calibration->value.zeroMark, Volume::fromLitres(6));
        QCOMPARE((*known)->log.calibration->value.points[3].signal2, Signal::of(1.9));
    }
    void bothReadingsBelongToALevel()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        guide.chooseWiring(int(TankWiring::twoSignals));
        prepare(guide);
        type(guide, 0, "3.0");
        guide.go();
        QVERIFY(saysProblem(guide, "both lobes"));
        QVERIFY(guide.facts()[0].value.startsWith("none"));
        QCOMPARE(guide.form()->activeField(), 1); // there it is missing
    }
    void aPowerCutLosesNothingOfASaddleTank()
    {
        test::DemoCar car;
        {
            CalibrationGuide guide(car);
            guide.chooseWiring(int(TankWiring::twoSignals));
            prepare(guide);
            type(guide, 0, "3.0");
            type(guide, 1, "2.9");
            guide.go();
        }
        CalibrationGuide again(car);
        QCOMPARE(again.wiring(), int(TankWiring::twoSignals));
        QCOMPARE(again.facts()[1].value, "3 V, other lobe 2.9 V");
        FakeSource source(again);
        source.give(2.0, 12, 2.9); // and the source is asked for two numbers
        QCOMPARE(again.liveReading(), "2 V, other lobe 2.9 V");
    }
    void aSaddleTankWhoseSignalsStandStillIsSaidWhilePouring()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        guide.chooseWiring(int(TankWiring::twoSignals));
        prepare(guide);
        type(guide, 0, "3.0");
        type(guide, 1, "2.9");
        guide.go();
        guide.go();
        level(guide, "5", "3.0", "2.9");
        QVERIFY(saysProblem(guide, "Neither signal has moved"));
        level(guide, "5", "2.5", "2.9"); // one of the two is enough
        QVERIFY(!saysProblem(guide, "Neither signal has moved"));
    }
    void whatHasNoCurveIsNotSaved()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        QSignalSpy stored(&guide, &CalibrationGuide::stored);
        prepare(guide);
        drained(guide, "3.02");
        level(guide, "5", "3.02");
        level(guide, "20", "3.02");
        guide.other();
        level(guide, "20", "3.02");
        guide.other();
        QVERIFY(guide.reviewing());
        guide.go();
        QCOMPARE(stored.count(), 0);
        QVERIFY(saysProblem(guide, "no curve"));
    }
    void aSlipIsAskedAboutAndChangedOrKept()
    {
        test::DemoCar car; // takes 52 L
        CalibrationGuide guide(car);
        prepare(guide);
        drained(guide, "3.02");
        level(guide, "5", "2.84");
        type(guide, 0, "350");
        type(guide, 1, "1.88");
        guide.go();
        QVERIFY(guide.notices()[0].caution());
        QVERIFY2(guide.notices()[0].text.startsWith("That makes 355.0 L"), qPrintable(guide.notices()[0].text));
        QVERIFY(guide.facts()[0].value.startsWith("none")); // not taken
        guide.go(); // the way on, tapped twice: to change it
        QCOMPARE(guide.form()->activeField(), 0);
        QVERIFY(guide.facts()[0].value.startsWith("none"));
        type(guide, 0, "2");
        guide.go(); // 0.96 V for two litres
        QCOMPARE(guide.otherWord(), "Keep it");
        guide.other();
        QCOMPARE(guide.facts()[0].value, "1"); // taken as typed
        guide.go(); // and asked about no more
        QCOMPARE(guide.done().first(), "7.0 L: 1.88 V");
        guide.correct(0);
        type(guide, 0, "200");
        guide.go();
        QVERIFY(guide.notices()[0].text.startsWith("That makes 205.0 L"));
        guide.go();
        type(guide, 0, "20");
        guide.go();
        QCOMPARE(guide.done().first(), "25.0 L: 1.88 V");
    }
    void anyLevelIsCorrectedOrLeftAsItWas()
    {
        test::DemoCar car;
        {
            CalibrationGuide guide(car);
            prepare(guide);
            drained(guide, "3.2");
            level(guide, "5", "2.84");
            level(guide, "20", "1.88");
            guide.correct(2); // drained, the first one: no litres
            QCOMPARE(guide.form()->fields().size(), 1);
            QCOMPARE(guide.form()->fields()[0].text, "3.2");
            for (const QChar key : QString("3.02")) // the first key replaces it
                guide.form()->press(key);
            guide.go();
            QCOMPARE(guide.stage(), int(CalibrationStage::pours)); // where it was
            guide.correct(1);
            QCOMPARE(guide.title(), "Correct a level");
            type(guide, 0, "6");
            guide.back(); // leave it
            QCOMPARE(guide.done(), (QStringList{"25.0 L: 1.88 V", "5.0 L: 2.84 V", "drained: 3.02 V"}));
        }
        CalibrationGuide again(car); // the correction is on disk
        QCOMPARE(again.done().last(), "drained: 3.02 V");
    }
    void theReviewsCurveLiesInItsBandAndPointsShowHowFarTheyMiss()
    {
        test::DemoCar car;
        CalibrationGuide guide(car);
        prepare(guide);
        drained(guide, "3.02");
        level(guide, "5", "2.84");
        level(guide, "10", "2.3");
        level(guide, "10", "1.9"); // 15 L at 2.3 V and 25 L at 1.9 V: no straight line
        guide.other();
        level(guide, "25", "0.55");
        guide.other();
        QVERIFY(guide.reviewing());
        const PlotPicture plot = guide.plot();
        const qsizetype n = plot.line.size();
        QCOMPARE(plot.band.size(), 2 * n + 1);
        QCOMPARE(plot.band.first(), plot.band.last()); // closed
        for (qsizetype i = 0; i < n; ++i) { // there along the top, and back below
            QVERIFY(plot.band[i].y() <= plot.line[i].y());
            QVERIFY(plot.band[2 * n - 1 - i].y() >= plot.line[i].y());
        }
        QCOMPARE(plot.marks.size(), 5);
        QCOMPARE(plot.marks[0].missBy, 0.0); // nothing beyond an end to tell it by
        QVERIFY(plot.marks[2].missBy != 0.0);
    }
    void theUnitIsTheMetersAndBelongsToTheCarOnceSaved()
    {
        test::DemoCar car; // in volts so far
        {
            CalibrationGuide guide(car);
            guide.chooseUnit(int(guide.units().indexOf("ohm")));
            prepare(guide);
            QCOMPARE(guide.form()->fields()[0].unit, "ohm");
            drained(guide, "10");
            level(guide, "5", "30");
            QCOMPARE(car.vehicle()->value.sender.unit, "V");
        }
        CalibrationGuide guide(car);
        QCOMPARE(guide.done().first(), "5.0 L: 30 ohm");
        guide.other();
        level(guide, "45", "180"); // in volts of a supply of 5 it could not be
        guide.other();
        guide.go();
        QCOMPARE(car.vehicle()->value.sender.unit, "ohm");
        QVERIFY(car.vehicle()->value.sender.circuit == CircuitKind::resistive);
        QCOMPARE((*car.knowledge())->log.calibration->value.points[2].signal, Signal::of(180));
    }
    void lobesInSeriesTellHowFarTheyCanMislead()
    {
        test::DemoCar car;
        {
            CalibrationGuide guide(car);
            guide.chooseWiring(int(TankWiring::inSeries));
            prepare(guide);
            drained(guide, "3.02");
            level(guide, "5", "2.84");
            level(guide, "30", "1.5");
            guide.other();
            level(guide, "20", "0.55");
            guide.other();
            QVERIFY(guide.reviewing());
            type(guide, 1, "35");
            type(guide, 2, "20");
        }
        CalibrationGuide again(car); // the lobes are on disk, too
        QString said;
        for (const Fact& fact : again.facts())
            if (fact.name.contains("unequally"))
                said = fact.value;
        QVERIFY2(said.contains("4.3"), qPrintable(said)); // (35 - 20) / 2 / sqrt 3 = 4.33
        again.go();
        const auto known = car.knowledge();
        QCOMPARE((*known)->log.calibration->value.lobes,
                 (std::optional(LobeVolumes{Volume::fromLitres(35), Volume::fromLitres(20)})));
        QVERIFY(std::abs((*known)->gauge.seriesSpread().litres() - 4.33) < 0.01); // of every answer since
    }
    // Its own capacity, sender and calibration; the own tank's stay as they are.
    void ofSeveralTanksTheChosenOneIsCalibrated()
    {
        test::DemoCar car;
        test::addAuxTank(car, false);
        const Calibration own = car.log()->calibration->value;
        {
            CalibrationGuide guide(car);
            guide.turnTo("aux", "aux");
            QVERIFY2(guide.title().contains("aux"), qPrintable(guide.title()));
            QVERIFY(guide.otherWord().isEmpty()); // it has no calibration to be taken up
            guide.chooseUnit(int(guide.units().indexOf("ohm")));
            prepare(guide);
            drained(guide, "190");
            level(guide, "4", "160");
        }
        CalibrationGuide guide(car); // another start goes on with that tank
        QCOMPARE(guide.tank(), std::string("aux"));
        guide.turnTo("", "The car's own"); // it lies open: it stays of its own tank
        QCOMPARE(guide.tank(), std::string("aux"));
        QVERIFY2(guide.title().contains("aux"), qPrintable(guide.title()));
        type(guide, 0, "300"); // a slip: the tank takes 30
        type(guide, 1, "90");
        guide.go();
        QCOMPARE(guide.goWord(), "Change it");
        guide.go();
        type(guide, 0, "13");
        guide.go();
        guide.go();
        guide.other();
        level(guide, "13", "10");
        level(guide, "10", "72");
        QVERIFY(guide.reviewing());
        guide.go();
        const auto log = car.log();
        const Entry<Calibration>* saved = log->latestCalibration(std::string("aux"));
        QVERIFY(saved);
        QCOMPARE(saved->value.points.size(), 5u);
        QCOMPARE(saved->value.zeroMark, Volume::fromLitres(4));
        QCOMPARE(log->calibration->value, own);
        QCOMPARE(log->verifications.back().value.tank, std::optional<std::string>("aux"));
        QCOMPARE(log->tanks[0].value.sender.unit, std::string("ohm"));
        QCOMPARE(log->vehicle.value.sender.unit, std::string("V"));
        QVERIFY(guide.otherWord() == "Take up the last one");
    }
    // A later session asks no more for what the tank's lobes hold.
    void lobesThatAreKnownNeedNotBeSaidAgain()
    {
        test::DemoCar car;
        Calibration kept = car.log()->calibration->value;
        kept.lobes = LobeVolumes{Volume::fromLitres(35), Volume::fromLitres(20)};
        kept.time = car.time();
        car.record(kept).value();
        car.pass(std::chrono::hours(24));
        CalibrationGuide guide(car);
        guide.chooseWiring(int(TankWiring::inSeries));
        prepare(guide);
        drained(guide, "3.02");
        level(guide, "5", "2.84");
        level(guide, "30", "1.5");
        guide.other();
        level(guide, "20", "0.55");
        guide.other();
        QVERIFY(guide.reviewing());
        QCOMPARE(guide.form()->fields()[1].text, "35");
        guide.go();
        QCOMPARE(car.log()->calibration->value.points.size(), 4u);
        QCOMPARE(car.log()->calibration->value.lobes, kept.lobes);
    }
    void aDraftThatIsNoDraftIsLeftThereAndSaid()
    {
        test::DemoCar car;
        const QString path =
            QString::fromStdString(draftFile(car.folder(), car.shownCar()).string());
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("half a fi");
        file.close();
        CalibrationGuide guide(car);
        QVERIFY(saysProblem(guide, "calibration-draft"));
        QVERIFY(QFile::exists(path));
    }
};

UNDERMARK_TEST(CalibrationGuideTest)
#include "calibration_guide_test.moc"
