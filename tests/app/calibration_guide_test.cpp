// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/calibration_guide.h"
#include "tests/support/fake_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QSignalSpy>
#include <QTest>

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

} // namespace

class CalibrationGuideTest : public QObject {
    Q_OBJECT
private slots:
    void nothingIsPouredBeforeEveryCautionIsAcknowledged()
    {
        test::FakeCar car;
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
        test::FakeCar car;
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
        QVERIFY(guide.preparing()); // done: the next one starts anew
        QVERIFY(!*findDraft(car.folder()));
    }
    void aPowerCutLosesNothing()
    {
        test::FakeCar car;
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
        test::FakeCar car;
        CalibrationGuide(car).acknowledge(2);
        QVERIFY(CalibrationGuide(car).cautions()[2].acknowledged);
    }
    void noMovementIsSaidWhilePouring()
    {
        test::FakeCar car;
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
        test::FakeCar car;
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
        test::FakeCar car;
        CalibrationGuide guide(car);
        prepare(guide);
        for (const char* reading : {"3.02", "3.021", "3.019", "3.02"}) {
            type(guide, 0, reading);
            guide.go();
        }
        QVERIFY(guide.facts()[2].value.startsWith("not settled"));
        type(guide, 0, "3.02");
        guide.go();
        QCOMPARE(guide.facts()[2].value, "settled");
    }
    void aLevelNeedsItsLitresAndAReading()
    {
        test::FakeCar car;
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
        test::FakeCar car;
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
    void aDraftThatIsNoDraftIsLeftThereAndSaid()
    {
        test::FakeCar car;
        const QString path = QString::fromStdString((car.folder() / "calibration-draft.json").string());
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("half a fi");
        file.close();
        CalibrationGuide guide(car);
        QVERIFY(saysProblem(guide, "calibration-draft.json"));
        QVERIFY(QFile::exists(path));
    }
};

UNDERMARK_TEST(CalibrationGuideTest)
#include "calibration_guide_test.moc"
