// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/logbook_view_model.h"
#include "engine/logbook/backup.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFile>
#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

constexpr const char* kTwoFills = "date,litres,odometer_km,note\n"
                                  "2026-09-02,41.5,200100,x\n2026-09-20T17:05,38.25,200600,y\n";

struct Fixture {
    test::TestFolder folder;
    Car car = test::demoCar(folder.path);
    QList<FilePlace> places; // that there are
    LogbookViewModel logbook{car, {}, FileRoots{path(""), [this] { return places; }}};
    TransferViewModel& transfer = *logbook.transfer();

    QString path(const std::string& name) const
    {
        return QString::fromStdString((folder.path / name).string());
    }
    void write(const std::string& name, const QByteArray& text)
    {
        QFile file(path(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(text);
    }
    void pick(const QString& name)
    {
        FileList& files = *transfer.files();
        for (int row = 0; row < files.rowCount(); ++row)
            if (files.data(files.index(row), FileList::Name) == name)
                return transfer.pick(row);
        QFAIL(qPrintable("no file " + name));
    }
    std::vector<Entry<Fill>> fills() { return (*car.knowledge())->log.fills; }
    std::vector<std::filesystem::path> backups() const
    {
        return backupsOf(folder.path / "demo.sqlite");
    }
};

} // namespace

class TransferViewModelTest : public QObject {
    Q_OBJECT
private slots:
    void theWholeLogbookIsExportedToAStick()
    {
        Fixture f;
        QVERIFY(f.transfer.sticks().isEmpty());
        QVERIFY(QDir(f.path("")).mkdir("stick"));
        f.places = {{"Papers", f.path("")}, {"STICK", f.path("stick"), true}};
        f.transfer.files()->refresh();
        QCOMPARE(f.transfer.sticks(), QStringList("STICK"));
        f.transfer.exportTo(1); // no such stick
        QCOMPARE(f.transfer.stage(), TransferViewModel::Stage::start);
        f.transfer.exportTo(0);
        QCOMPARE(f.transfer.stage(), TransferViewModel::Stage::done);
        QCOMPARE(QDir(f.path("stick/export-20260901T120000Z")).entryList(QDir::Files).size(), 11);
        f.transfer.back();
        QVERIFY(QDir(f.path("stick")).removeRecursively()); // taken away while its button is there
        f.transfer.exportTo(0);
        QCOMPARE(f.transfer.stage(), TransferViewModel::Stage::start);
    }
    void theWholeLogbookIsExportedBesideIt()
    {
        Fixture f;
        f.transfer.exportAll();
        QCOMPARE(f.transfer.stage(), TransferViewModel::Stage::done);
        QVERIFY2(f.transfer.text().contains("export-20260901T120000Z"), qPrintable(f.transfer.text()));
        const QDir folder(f.path("export-20260901T120000Z"));
        QCOMPARE(folder.entryList(QDir::Files).size(), 11); // ten tables and the bundle
        const auto bundle = Logbook::open(folder.filePath("logbook.sqlite").toStdString(), OpenMode::readOnly);
        QVERIFY2(bundle, bundle ? "" : describe(bundle.error()).c_str());
        const auto vehicles = *bundle->vehicles();
        QCOMPARE(bundle->entries<Fill>(vehicles.front().id)->size(), f.fills().size());
        f.transfer.back();
        f.transfer.exportAll(); // in the same second
        QVERIFY(QDir(f.path("export-20260901T120000Z-2")).exists());
    }
    void aTableIsShownBeforeItIsTakenInAndUndoneAtOnce()
    {
        Fixture f;
        const std::size_t before = f.fills().size();
        f.write("other.csv", kTwoFills);
        f.transfer.chooseTable();
        f.pick("other.csv");
        QVERIFY(f.transfer.stating());
        f.transfer.confirm();
        QCOMPARE(f.transfer.stage(), TransferViewModel::Stage::preview);
        QCOMPARE(f.transfer.text(), "Would add 2 fills.");
        QCOMPARE(f.transfer.facts().size(), 2);
        QCOMPARE(f.transfer.facts()[1].value, "38.3 L, full, 200600 km");
        QVERIFY(f.transfer.notices()[0].text.contains("column 'note' is not imported"));
        QCOMPARE(f.fills().size(), before); // nothing yet
        QVERIFY(f.backups().empty());
        QVERIFY(f.logbook.undoWord().isEmpty());
        f.transfer.confirm();
        QCOMPARE(f.fills().size(), before + 2);
        QCOMPARE(f.backups().size(), std::size_t(1));
        QVERIFY(f.transfer.text().contains(
            QString::fromStdString(f.backups().front().filename().string())));
        QCOMPARE(f.logbook.undoWord(), "Undo the import");
        f.logbook.undo();
        QCOMPARE(f.fills().size(), before);
        QVERIFY(f.logbook.undoWord().isEmpty());
    }
    void tripsComeInLikeFillsAndAreUndoneAtOnce()
    {
        Fixture f;
        const auto trips = [&] { return (*f.car.knowledge())->log.trips; };
        const std::size_t before = trips().size();
        f.write("trips.csv", "date,km,mode,idle_min\n2.9.2026,10,town,\n3.9.2026,20.5,motorway,4\n");
        f.transfer.chooseTrips();
        f.pick("trips.csv");
        QCOMPARE(f.transfer.units().size(), 2); // a trip has no litres
        f.transfer.chooseUnit(0, 1);            // miles
        f.transfer.chooseUnit(1, 1);            // day first
        f.transfer.confirm();
        QCOMPARE(f.transfer.text(), "Would add 2 trips.");
        QCOMPARE(f.transfer.facts().size(), 2);
        QVERIFY2(f.transfer.facts()[1].value.startsWith("32 km"), qPrintable(f.transfer.facts()[1].value));
        QCOMPARE(trips().size(), before);
        QCOMPARE(f.transfer.confirmWord(), "Add 2 trips");
        f.transfer.confirm();
        QCOMPARE(trips().size(), before + 2);
        QVERIFY(std::fabs(trips().back().value.distance.km() - 20.5 * 1.609344) < 1e-9);
        QVERIFY(f.transfer.text().startsWith("Added 2 trips."));
        f.transfer.chooseTrips();
        f.pick("trips.csv");
        f.transfer.confirm();
        QCOMPARE(f.transfer.text(), "Would add 0 trips; 2 are in the log already.");
        f.logbook.undo();
        QCOMPARE(trips().size(), before);
        QVERIFY(f.logbook.undoWord().isEmpty());
        f.write("broken.csv", "date,km,mode\n2026-09-02,10,river\n"); // no mode of this car
        f.transfer.chooseTrips();
        f.pick("broken.csv");
        f.transfer.chooseUnit(1, 0);
        f.transfer.confirm();
        f.transfer.confirm();
        QVERIFY(f.transfer.notices()[0].problem());
        QCOMPARE(trips().size(), before);
    }
    void whatIsInTheLogAlreadyIsLeftOutAndCounted()
    {
        Fixture f;
        f.transfer.exportAll();
        const std::size_t before = f.fills().size();
        QFile table(f.path("export-20260901T120000Z/fills.csv"));
        QVERIFY(table.open(QIODevice::ReadOnly));
        QByteArray text = table.readAll();
        f.write("again.csv", text);
        f.transfer.chooseTable();
        f.pick("again.csv");
        f.transfer.confirm();
        QCOMPARE(f.transfer.text(),
                 QString("Would add 0 fills; %1 are in the log already.").arg(before));
        QVERIFY(f.transfer.confirmWord().isEmpty());
        f.transfer.confirm();
        QCOMPARE(f.fills().size(), before);
        f.write("again.csv", text.replace("Ouzel wagon", "Another car"));
        f.transfer.back();
        f.transfer.confirm();
        QCOMPARE(f.transfer.text(), QString("Would add 0 fills; %1 are of other vehicles.").arg(before));
    }
    void unitsAreWhatTheUserStates()
    {
        Fixture f;
        f.write("other.csv", "date,litres,odometer_km\n12/31/2026,10,200000\n");
        f.transfer.chooseTable();
        f.pick("other.csv");
        f.transfer.confirm();
        QVERIFY(f.transfer.stating()); // month and day are not guessed
        QVERIFY2(f.transfer.notices()[0].text.contains("other.csv:2"),
                 qPrintable(f.transfer.notices()[0].text));
        f.transfer.chooseUnit(0, 1); // US gallons
        f.transfer.chooseUnit(1, 1); // miles
        f.transfer.chooseUnit(2, 2); // month first
        f.transfer.confirm();
        f.transfer.confirm();
        const Fill fill = f.fills().back().value;
        QVERIFY(std::fabs(fill.volume.litres() - 37.85411784) < 1e-9);
        QVERIFY(std::fabs(fill.odometer->km() - 321868.8) < 1e-6);
        QCOMPARE(f.transfer.stage(), TransferViewModel::Stage::done);
    }
    void aBrokenTableAddsNothing()
    {
        Fixture f;
        const std::size_t before = f.fills().size();
        f.write("broken.csv", "date,litres\n2026-09-02,41.5\n2026-09-09,much\n");
        f.transfer.chooseTable();
        f.pick("broken.csv");
        f.transfer.confirm();
        QVERIFY(f.transfer.stating());
        QVERIFY(f.transfer.notices()[0].problem());
        QVERIFY2(f.transfer.notices()[0].text.contains("broken.csv:3"),
                 qPrintable(f.transfer.notices()[0].text));
        QCOMPARE(f.fills().size(), before);
        QVERIFY(f.backups().empty());
    }
    // Another program takes the same table in while this one is looked at.
    void whatCameInMeanwhileDoesNotComeInTwice()
    {
        Fixture f;
        f.write("other.csv", kTwoFills);
        f.transfer.chooseTable();
        f.pick("other.csv");
        f.transfer.confirm();
        auto second = Logbook::open(f.folder.path / "demo.sqlite", OpenMode::readWrite);
        const auto vehicle = second->vehicles()->front();
        const auto seen = previewImport<Fill>(*second, vehicle, f.folder.path / "other.csv", {});
        QCOMPARE(takeIn(*second, vehicle.id, *seen, f.car.time())->added.size(), std::size_t(2));
        const std::size_t before = f.fills().size();
        f.transfer.confirm();
        QVERIFY(f.transfer.notices()[0].problem());
        QCOMPARE(f.fills().size(), before);
    }
    void anotherDevicesLogbookIsTakenInOnce()
    {
        Fixture f;
        f.transfer.exportAll();
        const auto copy = f.folder.path / "tablet.sqlite";
        std::filesystem::copy_file(f.folder.path / "export-20260901T120000Z" / "logbook.sqlite", copy);
        {
            auto tablet = Logbook::open(copy, OpenMode::readWrite);
            Fill fill;
            fill.time = f.car.time() + std::chrono::hours(1);
            fill.volume = Volume::fromLitres(33);
            QVERIFY(tablet->add(tablet->vehicles()->front().id, fill, fill.time));
        }
        const std::size_t before = f.fills().size();
        for (const QString words : {"Took in 1 records", "Took in 0 records"}) {
            f.transfer.chooseLogbook();
            f.pick("tablet.sqlite");
            QCOMPARE(f.transfer.stage(), TransferViewModel::Stage::merge);
            f.transfer.confirm();
            QVERIFY2(f.transfer.text().startsWith(words), qPrintable(f.transfer.text()));
            QCOMPARE(f.fills().size(), before + 1);
        }
        QCOMPARE(f.backups().size(), std::size_t(2));
        QCOMPARE(std::size_t(f.logbook.rows()->rowCount()), (*f.car.knowledge())->log.trips.size() + before + 1
                     + (*f.car.knowledge())->log.proofs.size() + 1);
        f.write("no.sqlite", "no logbook");
        f.transfer.chooseLogbook();
        f.pick("no.sqlite");
        f.transfer.confirm();
        QVERIFY(f.transfer.notices()[0].problem());
        QCOMPARE(f.fills().size(), before + 1);
    }
};

UNDERMARK_TEST(TransferViewModelTest)
#include "transfer_view_model_test.moc"
