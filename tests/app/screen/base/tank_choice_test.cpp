// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/tank_choice.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

VehicleLog logOf(const char* car, std::initializer_list<const char*> tanks)
{
    VehicleLog log;
    log.vehicle.id.uuid = car;
    for (const char* name : tanks) {
        ExtraTank tank;
        tank.name = name;
        log.tanks.push_back({{}, {}, tank});
    }
    return log;
}

} // namespace

class TankChoiceTest : public QObject {
    Q_OBJECT
private slots:
    void ofOneTankThereIsNothingToChoose()
    {
        TankChoice choice;
        choice.look(logOf("a", {}));
        QVERIFY(choice.choices().isEmpty());
        QVERIFY(choice.word().isEmpty());
        QVERIFY(choice.tank().empty());
        QVERIFY(!choice.choose(0));
    }
    void theOwnIsMeantUntilAnotherIsChosenAndThenThatOne()
    {
        TankChoice choice;
        choice.look(logOf("a", {"aux", "roof"}));
        QCOMPARE(choice.choices()[0].options, QStringList({"The car's own", "aux", "roof"}));
        QCOMPARE(choice.choices()[0].current, 0);
        QVERIFY(choice.choose(2));
        QVERIFY(!choice.choose(2) && !choice.choose(3) && !choice.choose(-1));
        choice.look(logOf("a", {"aux", "roof"}));
        QCOMPARE(choice.tank(), std::string("roof"));
        QCOMPARE(choice.word(), "roof");
        QCOMPARE(choice.choices()[0].current, 2);
    }
    void anotherCarOrATankTakenBackMeansTheOwnAgain()
    {
        TankChoice choice;
        choice.look(logOf("a", {"aux"}));
        choice.choose(1);
        choice.look(logOf("b", {"aux"}));
        QVERIFY(choice.tank().empty());
        choice.choose(1);
        choice.look(logOf("b", {"roof"}));
        QVERIFY(choice.tank().empty());
    }
};

UNDERMARK_TEST(TankChoiceTest)
#include "tank_choice_test.moc"
