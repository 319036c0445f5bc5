// SPDX-License-Identifier: GPL-3.0-or-later
//
// A workshop's many cars: found by name and age, what is due of each; photos in and out.
#include "app/car/car_file.h"
#include "tests/support/cli_runner.h"
#include "tests/support/logbook_samples.h"
#include "tests/support/pictures.h"
#include "tests/support/test_main.h"

#include <QFileInfo>
#include <QTest>

using namespace undermark;
using namespace undermark::test;
using nlohmann::json;

namespace {

Instant onDay(int year, unsigned month, unsigned day)
{
    return std::chrono::sys_days(std::chrono::year(year) / int(month) / int(day));
}

VehicleLog calibratedLog(Instant time)
{
    VehicleLog log;
    log.vehicle.value = fullVehicle();
    Entry<Calibration> calibration;
    calibration.value = fullCalibration(time);
    log.calibration = calibration;
    return log;
}

QStringList namesOf(const json& vehicles)
{
    QStringList names;
    for (const json& each : vehicles)
        names << QString::fromStdString(each["name"].get<std::string>());
    return names;
}

} // namespace

class WorkshopTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsDueFollowsFromWhatWasDone()
    {
        VehicleLog log = calibratedLog(onDay(2025, 3, 31));
        QCOMPARE(carFileOf(log, onDay(2025, 4, 1)).due.size(), std::size_t(2));   // verify, hand over
        Entry<VerificationRecord> tried;
        tried.value.time = onDay(2025, 3, 1);   // of the calibration before
        tried.value.passed = true;
        log.verifications.push_back(tried);
        QVERIFY(!carFileOf(log, onDay(2025, 4, 1)).verified);
        tried.value.time = onDay(2025, 4, 1);
        log.verifications.push_back(tried);
        log.handOvers.push_back({{}, {}, {onDay(2025, 4, 2), {}}});
        QVERIFY(carFileOf(log, onDay(2025, 4, 3)).due.empty());
        QCOMPARE(carFileOf(log, onDay(2027, 4, 3)).due.size(), std::size_t(1));   // two years
        log.verifications.back().value.passed = false;
        QCOMPARE(carFileOf(log, onDay(2025, 4, 3)).due.size(), std::size_t(1));
        log.calibration.reset();
        QCOMPARE(carFileOf(log, onDay(2025, 4, 3)).due.size(), std::size_t(1));   // calibrate, nothing else
    }

    // Calendar months; the end of a longer month falls on that of a shorter one.
    void monthsAreThoseOfTheCalendar()
    {
        const CarFile file = carFileOf(calibratedLog(onDay(2025, 2, 28)), onDay(2025, 3, 31));
        QVERIFY(isCalibratedBefore(file, 1, onDay(2025, 3, 31)));
        QVERIFY(isCalibratedBefore(file, 1, onDay(2025, 3, 28)));
        QVERIFY(!isCalibratedBefore(file, 1, onDay(2025, 3, 27)));
        QVERIFY(isCalibratedBefore(file, 12, onDay(2026, 2, 28)));
        QVERIFY(!isCalibratedBefore(file, 13, onDay(2026, 2, 28)));
        QVERIFY(!isCalibratedBefore(CarFile{}, 1, onDay(2026, 2, 28)));   // never
    }

    void carsAreFoundByNameAgeAndWhatIsDue()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QCOMPARE(run("vehicle add --name Heron --capacity-l 60 --fuel diesel --currency NOK").exitCode, 0);
        QCOMPARE(run("vehicle add --name Lark --capacity-l 60 --fuel diesel --currency nok").exitCode, 2);
        const auto found = [&](const QString& how) {
            return namesOf(run("vehicle list --json " + how).json()["vehicles"]);
        };
        QCOMPARE(found(""), (QStringList{"Wren", "Heron"}));
        QCOMPARE(found("--name ron"), QStringList{"Heron"});
        QCOMPARE(found("--name owl"), QStringList{});
        QCOMPARE(found("--older-than-months 1"), QStringList{});   // calibrated today, or never
        QCOMPARE(found("--due"), (QStringList{"Wren", "Heron"}));
        QVERIFY(run("vehicle list --due").out.contains("there is no calibration yet"));
        QCOMPARE(run("vehicle list --older-than-months 0").exitCode, 2);
        const json heron = run("vehicle list --json --name heRon").json()["vehicles"][0]; // however it is typed
        QCOMPARE(heron["currency"].get<std::string>(), std::string("NOK"));
        QVERIFY(heron["calibrated"].is_null());
    }

    void photosAreListedShownAndTravelWithTheLogbook()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString picture = run.file("meter.jpg", QByteArray::fromStdString(jpegPicture()));
        const json added = run("photo add --json --step drained --note meter " + picture).json();
        QCOMPARE(added["step"].get<std::string>(), std::string("drained"));
        const QString id = QString::fromStdString(added["id"].get<std::string>());
        const json shown = run("photo show --json " + id.left(8)).json();
        QVERIFY(shown["sha256"] == added["sha256"]);
        QVERIFY(QFileInfo::exists(QString::fromStdString(shown["file"].get<std::string>())));
        QCOMPARE(run("photo list --json").json()["photos"].size(), std::size_t(1));
        QCOMPARE(run("photo show nothing").exitCode, 2);
        for (const QString& bad : {run.file("note.jpg", "3.02 V"), QString("no/such/file.jpg")})
            QVERIFY(run("photo add " + bad).exitCode != 0);
        QCOMPARE(run("photo list --json").json()["photos"].size(), std::size_t(1));
        // By bundle to another device, and by restore to a third.
        const QString bundle = QFileInfo(run.logbook()).dir().filePath("car.undermark");
        QCOMPARE(run("export --bundle " + bundle).exitCode, 0);
        const CliRunner other, third, fourth;
        QCOMPARE(other("merge " + bundle).exitCode, 0);
        QCOMPARE(third("restore " + bundle).exitCode, 0);
        const QString fresh = QFileInfo(run.logbook()).dir().filePath("salvaged.sqlite");
        QCOMPARE(run("check --salvage " + fresh).exitCode, 0);
        QCOMPARE(fourth("restore " + fresh).exitCode, 0);
        for (const CliRunner* each : {&other, &third, &fourth})
            QCOMPARE((*each)("photo show " + id.left(8)).exitCode, 0);
    }
};

UNDERMARK_TEST(WorkshopTest)
#include "workshop_test.moc"
