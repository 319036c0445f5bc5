// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which cars of many are wanted. (What is due of one: workshop tests of the command line.)
#include "app/car/car_file.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

CarFile fileOf(const char* name)
{
    CarFile file;
    file.vehicle.value.name = name;
    return file;
}

} // namespace

class CarFileTest : public QObject {
    Q_OBJECT
private slots:
    void aNameIsFoundInLargeOrSmallLettersOfLatin1()
    {
        QVERIFY(isWanted(fileOf("Überlandbus"), {.name = "über"}, {}));
        QVERIFY(isWanted(fileOf("Blaue Möwe"), {.name = "MÖW"}, {}));
        QVERIFY(!isWanted(fileOf("Blaue Möwe"), {.name = "mow"}, {}));
        QVERIFY(!isWanted(fileOf("3×4"), {.name = "3÷4"}, {})); // no letters: D7 and F7
        QVERIFY(isWanted(fileOf("Ibis"), {.name = ""}, {}));
    }
    void dueAndOldAreWantedTogether()
    {
        const Instant now = std::chrono::sys_days(std::chrono::year(2026) / 9 / 1);
        CarFile file = fileOf("Ibis");
        const CarWish old{.name = {}, .months = 12}, due{.name = {}, .due = true},
            both{.name = {}, .months = 12, .due = true};
        QVERIFY(!isWanted(file, old, now)); // never calibrated
        QVERIFY(!isWanted(file, due, now));
        file.calibrated = now - std::chrono::days(366);
        QVERIFY(isWanted(file, old, now));
        QVERIFY(!isWanted(file, both, now));
        file.due.push_back(Sentence::just("anything"));
        QVERIFY(isWanted(file, both, now));
    }
};

UNDERMARK_TEST(CarFileTest)
#include "car_file_test.moc"
