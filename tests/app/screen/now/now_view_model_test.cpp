// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/now_view_model.h"
#include "engine/outlook/outlook.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

class NowViewModelTest : public QObject {
    Q_OBJECT
private slots:
    void theBigNumberIsTheSureDistanceToZero()
    {
        test::DemoCar car;
        const NowViewModel now(car);
        const Outlook outlook = car.now()->outlook;
        const Distances toZero = distances(outlook.toZero);
        QVERIFY(now.known());
        QCOMPARE(now.sureNumber(), QString::number(int(toZero.p99.km())));
        const QList<RangeRow> rows = now.rows();
        QCOMPARE(rows.size(), 3);
        QCOMPARE(rows[0].sure, now.sureNumber());
        QCOMPARE(rows[0].even, QString::number(int(toZero.p50.km())));
        QCOMPARE(rows[0].hopeful, QString::number(int(toZero.p10.km())));
        QCOMPARE(rows[2].sure, QString::number(int(distances(outlook.toDry).p99.km())));
    }
    void sureKilometresPastZeroStandBetweenAsTheCommandReserveSaysThem()
    {
        test::DemoCar car;
        NowViewModel now(car);
        for (const int mode : {0, 4}) { // the usual mix, special stages
            now.selectMode(mode);
            const std::string name = mode == 0 ? std::string() : kSpecialStage;
            const Distances past = *pastZero(**car.knowledge(), name);
            QCOMPARE(now.rows()[1].sure, QString::number(int(past.p99.km())));
            QCOMPARE(now.rows()[1].hopeful, QString::number(int(past.p10.km())));
            QVERIFY(now.rows()[1].ofReserve);
        }
    }
    void theAgeOfTheLogIsSaidAndAfterAWeekACaution()
    {
        test::DemoCar car;
        NowViewModel now(car);
        QCOMPARE(now.age(), "log, 23 h ago"); // the demo's last trip, the evening before
        QVERIFY(now.notices().isEmpty());
        car.pass(std::chrono::days(67));
        now.refresh();
        QCOMPARE(now.age(), "log, 67 days ago");
        QVERIFY(now.notices()[0].caution());
        QVERIFY2(now.notices()[0].text.contains("67 days"), qPrintable(now.notices()[0].text));
    }
    void aCarWithoutAFillIsToldWhatToDoFirst()
    {
        test::EmptyCar car;
        Vehicle vehicle;
        vehicle.name = "Ibis";
        vehicle.capacity = Volume::fromLitres(60);
        QVERIFY(car.setUp(vehicle));
        NowViewModel now(car);
        QVERIFY(!now.known());
        QVERIFY(now.waiting());
        QVERIFY(!now.readable());
        QVERIFY(now.notices().isEmpty()); // that is no problem
        QVERIFY(now.why().contains("first click"));
        Fill full;
        full.time = car.time();
        full.volume = Volume::fromLitres(60);
        QVERIFY(car.recordFill(full));
        now.refresh();
        QVERIFY(now.known() && !now.waiting());
        QCOMPARE(now.facts()[1].name, "hidden reserve, assumed");
    }
    void whatCannotBeReadIsAProblem()
    {
        const test::TestFolder folder;
        Car car = test::carInState("unknown", folder.path);
        const NowViewModel now(car);
        QVERIFY(!now.known() && !now.waiting());
        QVERIFY(now.notices()[0].problem());
    }
    void everyNumberIsInTheUsersUnits()
    {
        test::DemoCar car;
        const NowViewModel now(car, Units::imperial());
        QCOMPARE(now.distanceUnit(), "mi");
        QCOMPARE(now.sureNumber(),
                 QString::number(int(distances(car.now()->outlook.toZero).p99.miles())));
        QCOMPARE(now.title(), "Ouzel wagon");
        QCOMPARE(now.facts()[3].value, "171 mi"); // since the last fill: the demo's 61.3 + 214.9 km, cut
        QVERIFY(now.facts()[0].value.endsWith("gal"));
        QVERIFY(now.facts()[2].value.endsWith("mpg"));
    }
    void levelReserveAndRateCarryTheirSpread()
    {
        test::DemoCar car;
        const QList<Fact> facts = NowViewModel(car).facts();
        const Outlook outlook = car.now()->outlook;
        QCOMPARE(facts.size(), 4);
        QCOMPARE(facts[0], (Fact{"above zero", UnitFormat().volume(outlook.aboveZero)}));
        QCOMPARE(facts[1], (Fact{"hidden reserve", UnitFormat().volume(outlook.reserve)}));
        QCOMPARE(facts[2], (Fact{"rate", UnitFormat().rate(outlook.rate)}));
    }
    void aLevelUnderTheMarkIsSaidInWords()
    {
        test::DemoCar car;
        test::drive(car, 400);
        const NowViewModel now(car);
        const Estimate<Volume> level = car.now()->outlook.aboveZero;
        QVERIFY(level.mean < Volume{});
        QCOMPARE(now.facts()[0], (Fact{"below zero", UnitFormat().volume({abs(level.mean), level.sd})}));
        QCOMPARE(now.sureNumber(), "0");
    }
    void aSureDistanceBelowZeroIsShownAsZeroAndSaid()
    {
        test::DemoCar car;
        test::drive(car, 275);
        const NowViewModel zeroInDoubt(car);
        QVERIFY(car.now()->outlook.aboveZero.mean > Volume{});
        QCOMPARE(zeroInDoubt.sureNumber(), "0");
        QCOMPARE(zeroInDoubt.notices().size(), 1);
        QVERIFY(zeroInDoubt.notices()[0].caution());

        test::drive(car, 145);
        const NowViewModel dryInDoubt(car);
        QCOMPARE(dryInDoubt.rows()[2].sure, "0");
        QVERIFY(dryInDoubt.notices()[0].problem());
    }
    void theWorstNoticeComesFirstAndNamesItsSeverity()
    {
        const std::vector<Notice> unsorted{{Severity::info, Sentence::just("a")},
                                           {Severity::error, Sentence::just("b")},
                                           {Severity::warning, Sentence::just("c")},
                                           {Severity::error, Sentence::just("d")}};
        QStringList all;
        for (const NoticeText& notice : noticeTexts(unsorted, UnitFormat()))
            all.append(notice.word + ' ' + notice.text);
        QCOMPARE(all, (QStringList{"Problem b", "Problem d", "Caution c", "Note a"}));
    }
    void whatWaitsForARulingIsSaid()
    {
        const test::TestFolder folder;
        Car car = test::carInState("warned", folder.path);
        const QList<NoticeText> notices = NowViewModel(car).notices();
        QCOMPARE(notices.size(), 2);
        QVERIFY(notices[0].caution() && notices[0].text.contains("a fill is kept out"));
    }
    void theDrivingModeIsShownAndSwitchingItAnswersAnew()
    {
        test::DemoCar car;
        NowViewModel now(car);
        QSignalSpy changed(&now, &NowViewModel::changed);
        QCOMPARE(now.modes(), (QStringList{"Usual mix", "Town", "Open road", "Motorway", "Special stage"}));
        QCOMPARE(now.modeIndex(), 0); // as the command line answers unasked
        now.selectMode(2);
        changed.clear();
        const QString openRoad = now.sureNumber();
        const QString rate = now.facts()[2].value;
        now.selectMode(4);
        QCOMPARE(now.modeIndex(), 4);
        QCOMPARE(changed.count(), 1);
        QCOMPARE(now.facts()[2].value, UnitFormat().rate(car.now(kSpecialStage)->outlook.rate));
        QVERIFY2(now.sureNumber().toInt() < openRoad.toInt(), qPrintable(now.sureNumber()));
        now.selectMode(5);
        now.selectMode(-1);
        QCOMPARE(now.modeIndex(), 4);
        QCOMPARE(changed.count(), 1);
        now.refresh();
        QCOMPARE(now.modeIndex(), 4); // it stays
        now.selectMode(2);
        QCOMPARE(now.sureNumber(), openRoad);
        QCOMPARE(now.facts()[2].value, rate);
    }
    void aModeOfTheUsersOwnKeepsItsName()
    {
        test::DemoCar car;
        QVERIFY(car.record(Mode{"gravel, loaded", std::nullopt}));
        QCOMPARE(NowViewModel(car).modes().last(), "gravel, loaded");
    }
    void aCarThatCannotAnswerSaysWhy()
    {
        const test::TestFolder folder;
        Error error;
        error.detail = Sentence::just("the logbook is damaged");
        error.where.file = "trip.undermark";
        Car car = Car::none(folder.path / "demo.sqlite", error);
        const NowViewModel now(car);
        QVERIFY(!now.known());
        QCOMPARE(now.sureNumber(), "");
        QVERIFY(now.facts().isEmpty());
        QCOMPARE(now.modeIndex(), -1);
        QCOMPARE(now.notices().size(), 1);
        QVERIFY(now.notices()[0].problem());
        QVERIFY(now.notices()[0].text.contains("the logbook is damaged"));
    }
    void theFirstFillBringsAnAnswer()
    {
        test::EmptyCar car;
        NowViewModel now(car);
        QVERIFY(!now.known());
        Vehicle vehicle;
        vehicle.name = "Ibis";
        vehicle.capacity = Volume::fromLitres(60);
        QVERIFY(car.setUp(vehicle));
        now.refresh();
        QVERIFY(!now.known()); // no fill yet: the level is not known
        Fill fill;
        fill.time = car.time();
        fill.volume = Volume::fromLitres(55);
        QVERIFY(car.record(fill));
        now.refresh();
        QVERIFY(now.known());
        QCOMPARE(now.title(), "Ibis");
        QVERIFY(now.sureNumber().toInt() > 0);
    }
};

UNDERMARK_TEST(NowViewModelTest)
#include "now_view_model_test.moc"
