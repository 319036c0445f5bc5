// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/now_view_model.h"
#include "tests/support/fake_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

class NowViewModelTest : public QObject {
    Q_OBJECT
private slots:
    void theBigNumberIsTheSureDistanceToZero()
    {
        test::FakeCar car;
        const NowViewModel now(car);
        const Distances toZero = distances(car.state.toZero);
        QVERIFY(now.known());
        QCOMPARE(now.sureNumber(), QString::number(int(toZero.p99.km())));
        QCOMPARE(now.toZero().sure, now.sureNumber());
        QCOMPARE(now.toZero().even, QString::number(int(toZero.p50.km())));
        QCOMPARE(now.toZero().hopeful, QString::number(int(toZero.p10.km())));
        QCOMPARE(now.toDry().sure, QString::number(int(distances(car.state.toDry).p99.km())));
    }
    void everyNumberIsInTheUsersUnits()
    {
        test::FakeCar car;
        const NowViewModel now(car, Units::imperial());
        QCOMPARE(now.distanceUnit(), "mi");
        QCOMPARE(now.sureNumber(), QString::number(int(distances(car.state.toZero).p99.miles())));
        QCOMPARE(now.title(), "Kestrel van");
        QCOMPARE(now.sinceFill(), "194 mi since the last fill");
        QVERIFY(now.facts()[0].value.endsWith("gal"));
        QVERIFY(now.facts()[2].value.endsWith("mpg"));
    }
    void levelReserveAndRateCarryTheirSpread()
    {
        test::FakeCar car;
        const QList<Fact> facts = NowViewModel(car).facts();
        QCOMPARE(facts.size(), 3);
        QCOMPARE(facts[0], (Fact{"above zero", "13.8 ± 0.6 L"}));
        QCOMPARE(facts[1], (Fact{"hidden reserve", "5.9 ± 0.7 L"}));
        QCOMPARE(facts[2], (Fact{"rate", "8.1 ± 0.4 L/100 km"}));
    }
    void aLevelUnderTheMarkIsSaidInWords()
    {
        test::FakeCar car;
        car.state = test::inventedState(-1.2);
        const NowViewModel now(car);
        QCOMPARE(now.facts()[0], (Fact{"below zero", "1.2 ± 0.6 L"}));
        QCOMPARE(now.sureNumber(), "0");
    }
    void aSureDistanceBelowZeroIsShownAsZeroAndSaid()
    {
        test::FakeCar car;
        car.state = test::inventedState(0.9);
        const NowViewModel zeroInDoubt(car);
        QCOMPARE(zeroInDoubt.sureNumber(), "0");
        QCOMPARE(zeroInDoubt.notices().size(), 1);
        QVERIFY(zeroInDoubt.notices()[0].caution());

        car.state = test::inventedState(-5.5);
        const NowViewModel dryInDoubt(car);
        QCOMPARE(dryInDoubt.toDry().sure, "0");
        QVERIFY(dryInDoubt.notices()[0].problem());
    }
    void theWorstNoticeComesFirstAndNamesItsSeverity()
    {
        test::FakeCar car;
        car.state.notices = {{Notice::Severity::info, Sentence::just("a")},
                             {Notice::Severity::error, Sentence::just("b")},
                             {Notice::Severity::warning, Sentence::just("c")},
                             {Notice::Severity::error, Sentence::just("d")}};
        const QList<NoticeText> notices = NowViewModel(car).notices();
        QStringList all;
        for (const NoticeText& notice : notices)
            all.append(notice.word + ' ' + notice.text);
        QCOMPARE(all, (QStringList{"Problem b", "Problem d", "Caution c", "Note a"}));
    }
    void theDrivingModeIsShownAndCanBeSwitched()
    {
        test::FakeCar car;
        NowViewModel now(car);
        QSignalSpy changed(&now, &NowViewModel::changed);
        QCOMPARE(now.modes(), (QStringList{"Town", "Open road", "Motorway", "Special stage"}));
        QCOMPARE(now.modeIndex(), 1);
        now.selectMode(3);
        QCOMPARE(now.modeIndex(), 3);
        QCOMPARE(changed.count(), 1);
        now.selectMode(4);
        now.selectMode(-1);
        QCOMPARE(now.modeIndex(), 3);
        QCOMPARE(changed.count(), 1);
    }
    void aModeOfTheUsersOwnKeepsItsName()
    {
        test::FakeCar car;
        car.state.modes.push_back("gravel, loaded");
        QCOMPARE(NowViewModel(car).modes().last(), "gravel, loaded");
    }
    void aCarThatCannotAnswerSaysWhy()
    {
        test::FakeCar car;
        Error error;
        error.detail = Sentence::just("the logbook is damaged");
        error.where.file = "trip.undermark";
        car.error = error;
        NowViewModel now(car);
        QVERIFY(!now.known());
        QCOMPARE(now.sureNumber(), "");
        QVERIFY(now.facts().isEmpty());
        QCOMPARE(now.modeIndex(), -1);
        QCOMPARE(now.notices().size(), 1);
        QVERIFY(now.notices()[0].problem());
        QVERIFY(now.notices()[0].text.contains("the logbook is damaged"));

        car.error.reset();
        now.refresh();
        QVERIFY(now.known());
        QVERIFY(now.notices().isEmpty());
    }
};

UNDERMARK_TEST(NowViewModelTest)
#include "now_view_model_test.moc"
