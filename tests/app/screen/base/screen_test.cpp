// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is common to all pages: settings, first run, the lock while moving, and
// pages that keep in step.
#include "app/screen/base/screen.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <sys/stat.h>

using namespace undermark;

namespace {

void type(NumberForm& form, int field, const QString& text)
{
    form.select(field);
    for (const QChar key : text)
        form.press(key);
}

} // namespace

class ScreenTest : public QObject {
    Q_OBJECT
private slots:
    void unitsAreChosenShownEverywhereAndKept()
    {
        QTemporaryDir folder;
        const QString file = folder.filePath("screen.ini");
        test::DemoCar car;
        {
            Screen screen(car, file);
            screen.settings.choose(ScreenSettings::InLanguage, 0); // English
            screen.settings.choose(ScreenSettings::DistanceUnit, 1); // miles
            screen.settings.choose(ScreenSettings::VolumeUnit, 1); // US gallons
            screen.settings.choose(ScreenSettings::RateUnit, 2); // mpg US
            QCOMPARE(screen.now.distanceUnit(), "mi");
            QCOMPARE(screen.pump.form()->padTitle(), "fuel put in, gal");
            QVERIFY(screen.logbook.rates()[0].value.endsWith("mpg"));
        }
        Screen again(car, file);
        QCOMPARE(again.settings.units(), Units::us());
        QCOMPARE(again.now.distanceUnit(), "mi");
    }
    void aSettingThatNoChoiceHasCountsAsTheFirst()
    {
        QTemporaryDir folder;
        const QString file = folder.filePath("screen.ini");
        QFile broken(file);
        QVERIFY(broken.open(QIODevice::WriteOnly));
        broken.write("[General]\ndistance=7\nvolume=-1\nrate=x\ntext=900\nlanguage=xx\n");
        broken.close();
        const ScreenSettings settings(file);
        QCOMPARE(settings.units(), Units{});
        QCOMPARE(settings.language(), "en");
        QCOMPARE(settings.textScale(), 2.0);
    }
    void aFirstCarIsSetUp()
    {
        const test::TestFolder folder;
        auto car = test::emptyCar(folder.path);
        Screen screen(car);
        QVERIFY(screen.setup.needed());
        screen.setup.save(); // without the tank
        QVERIFY(screen.setup.needed());
        QVERIFY(screen.setup.notices()[0].problem());
        screen.setup.setName("Ibis");
        screen.setup.selectFuel(1);
        type(*screen.setup.form(), 0, "61.5");
        screen.setup.save();
        QVERIFY(!screen.setup.needed());
        const Vehicle& vehicle = (*car.knowledge())->vehicle();
        QCOMPARE(vehicle.name, "Ibis");
        QCOMPARE(vehicle.fuel, FuelKind::diesel);
        QCOMPARE(vehicle.capacity, Volume::fromLitres(61.5));
        QVERIFY(!vehicle.zeroMark);
        // The first fill is guessed from the tank.
        QCOMPARE(screen.pump.form()->fields()[0].text, "61.5");
    }
    void whatWasTypedHalfWayIsThereAgain()
    {
        const test::TestFolder folder;
        QTemporaryDir config;
        const QString file = config.filePath("screen.ini");
        auto car = test::emptyCar(folder.path);
        {
            Screen screen(car, file);
            screen.settings.choose(ScreenSettings::InLanguage, 0);
            screen.setup.setName("Ibis");
            type(*screen.setup.form(), 0, "61");
        }
        Screen again(car, file);
        QCOMPARE(again.setup.name(), "Ibis");
        QCOMPARE(again.setup.form()->fields()[0].text, "61");
        again.setup.save();
        QVERIFY(!again.setup.needed());
        auto other = test::emptyCar(config.path().toStdString());
        QCOMPARE(Screen(other, file).setup.form()->fields()[0].text, ""); // used up
    }
    void anotherCarIsSetUpChosenAndRemembered()
    {
        const test::TestFolder folder;
        QTemporaryDir config;
        const QString file = config.filePath("screen.ini");
        {
            auto car = test::demoCar(folder.path);
            Screen screen(car, file);
            screen.settings.choose(ScreenSettings::InLanguage, 0);
            QCOMPARE(screen.settings.cars().options, QStringList({"Ouzel wagon", "Another car"}));
            QCOMPARE(screen.settings.cars().current, 0);
            screen.settings.chooseCar(1);
            QVERIFY(screen.setup.another());
            screen.setup.leave(); // not now
            QVERIFY(!screen.setup.needed());
            screen.settings.chooseCar(1);
            screen.setup.setName("Ibis");
            type(*screen.setup.form(), 0, "61.5");
            screen.setup.save();
            QVERIFY(!screen.setup.needed());
            QCOMPARE(screen.settings.cars().options, QStringList({"Ouzel wagon", "Ibis", "Another car"}));
            QCOMPARE(screen.settings.cars().current, 1);
            QCOMPARE(screen.logbook.rows()->rowCount(), 0); // every page shows it
            QVERIFY(!screen.tank.calibrated());
            QCOMPARE(screen.pump.form()->fields()[0].text, "61.5");
            QCOMPARE(screen.setup.name(), "My car"); // nothing of it for the next one
        }
        auto again = test::reopenedCar(folder.path); // would show the first one
        Screen screen(again, file);
        QCOMPARE(screen.settings.cars().current, 1);
        QVERIFY(!screen.tank.calibrated());
        screen.settings.chooseCar(0);
        QCOMPARE(screen.now.title(), "Ouzel wagon");
        QCOMPARE(screen.logbook.rows()->rowCount(), 47);
        QVERIFY(screen.tank.calibrated());
        screen.settings.chooseCar(7); // there is none
        QCOMPARE(screen.now.title(), "Ouzel wagon");
    }
    void aCarThatIsGoneIsNotMissed()
    {
        QTemporaryDir config;
        const test::TestFolder folder;
        auto car = test::demoCar(folder.path);
        {
            ScreenSettings settings(config.filePath("screen.ini"));
            settings.keepCar("a car of another logbook");
        }
        Screen screen(car, config.filePath("screen.ini"));
        QCOMPARE(screen.now.title(), "Ouzel wagon");
    }
    void aCalibrationBegunOnOneCarIsNotTheOthers()
    {
        const test::TestFolder folder;
        auto car = test::demoCar(folder.path);
        Screen screen(car);
        CalibrationGuide& guide = *screen.tank.guide();
        for (int i = 0; i < guide.cautions().size(); ++i)
            guide.acknowledge(i);
        guide.go();
        QVERIFY(guide.started());
        screen.settings.chooseCar(1);
        type(*screen.setup.form(), 0, "61.5");
        screen.setup.save();
        QVERIFY(!guide.started());
        screen.settings.chooseCar(0);
        QVERIFY(guide.started());
    }
    void theDemoCarCanBeLookedAt()
    {
        const test::TestFolder folder;
        qputenv("XDG_DATA_HOME", QByteArray::fromStdString(folder.path.string()));
        auto car = test::emptyCar(folder.path);
        Screen screen(car);
        screen.setup.lookAtDemo();
        qunsetenv("XDG_DATA_HOME");
        QVERIFY(!screen.setup.needed());
        QCOMPARE(screen.now.title(), "Ouzel wagon");
        QCOMPARE(screen.logbook.rows()->rowCount(), 47);
    }
    void aFillAtThePumpIsTheFirstLineOfTheLog()
    {
        const test::TestFolder folder;
        auto car = test::demoCar(folder.path);
        Screen screen(car);
        const int before = screen.logbook.rows()->rowCount();
        const QString sure = screen.now.sureNumber();
        type(*screen.pump.form(), 0, "21");
        screen.pump.save();
        QCOMPARE(screen.logbook.rows()->rowCount(), before + 1);
        QVERIFY(screen.now.sureNumber().toInt() > sure.toInt()); // full again
        screen.pump.undo();
        QCOMPARE(screen.logbook.rows()->rowCount(), before);
        QCOMPARE(screen.now.sureNumber(), sure);
    }
    void anOddFillIsMendedAtThePumpOrTakenBackWhole()
    {
        const test::TestFolder folder;
        auto car = test::demoCar(folder.path);
        Screen screen(car);
        const int before = screen.logbook.rows()->rowCount();
        type(*screen.pump.form(), 0, "5.5"); // gallons, for 20.7 L
        screen.pump.save();
        QVERIFY(!screen.pump.notices().isEmpty());
        QVERIFY2(!screen.pump.mendWord().isEmpty(), qPrintable(screen.pump.notices()[0].text));
        screen.pump.mend();
        QVERIFY(screen.pump.notices().isEmpty());
        QCOMPARE(screen.pump.mendWord(), "");
        // 5.5 US gallons are 20.82 L (NIST HB 44), imperial ones 25.0 L
        const double litres = (*car.knowledge())->log.fills.back().value.volume.litres();
        QVERIFY2(litres > 20.7 && litres < 25.1, qPrintable(QString::number(litres)));
        screen.pump.undo();
        QCOMPARE(screen.logbook.rows()->rowCount(), before);
    }
    void whileMovingEntryIsLockedUnlessAPassengerSaysSo()
    {
        DrivingLock lock;
        QVERIFY(!lock.locked()); // speed unknown
        lock.setSpeed(Speed::fromKmPerHour(3)); // a receiver at rest
        QVERIFY(!lock.locked());
        lock.setSpeed(Speed::fromKmPerHour(60));
        QVERIFY(lock.locked());
        lock.confirmPassenger();
        QVERIFY(!lock.locked());
        lock.setSpeed(Speed::fromKmPerHour(70));
        QVERIFY(!lock.locked());
        lock.setSpeed(Speed::fromKmPerHour(0));
        lock.setSpeed(Speed::fromKmPerHour(60)); // another drive, another word
        QVERIFY(lock.locked());
        lock.setSpeed(std::nullopt);
        QVERIFY(!lock.locked());
    }
    void speedsComeThroughAPipe()
    {
        QTemporaryDir folder;
        const QString pipe = folder.filePath("speed");
        QCOMPARE(mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
        DrivingLock lock;
        QVERIFY(lock.follow(pipe));
        QFile writer(pipe);
        QVERIFY(writer.open(QIODevice::WriteOnly | QIODevice::Unbuffered));
        writer.write("0\n62.5\n");
        QTRY_VERIFY(lock.locked());
        writer.write("no fix\n");
        QTRY_VERIFY(!lock.locked());
        QVERIFY(!DrivingLock().follow(folder.filePath("nothing")));
    }
};

UNDERMARK_TEST(ScreenTest)
#include "screen_test.moc"
