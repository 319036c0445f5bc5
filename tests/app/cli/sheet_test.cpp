// SPDX-License-Identifier: GPL-3.0-or-later
//
// The hand-over sheet, read back from its PDF by an independent reader (pdftotext).
#include "tests/support/cli_runner.h"
#include "tests/support/pictures.h"
#include "tests/support/test_main.h"

#include <QFileInfo>
#include <QProcess>
#include <QRect>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTest>
#include <cmath>

using namespace undermark::test;
using nlohmann::json;

class SheetTest : public QObject {
    Q_OBJECT
    // What stands on it, runs of blanks as one.
    static QString readBack(const QString& pdf)
    {
        QProcess reader;
        reader.start("pdftotext", {"-layout", "-enc", "UTF-8", pdf, "-"});
        reader.waitForFinished();
        return QString::fromUtf8(reader.readAllStandardOutput())
            .replace(QRegularExpression("[ \t]+"), " ");
    }
    static QString inFolder(const CliRunner& run, const char* name)
    {
        return QFileInfo(run.logbook()).dir().filePath(name);
    }

private slots:
    void init()
    {
        if (QStandardPaths::findExecutable("pdftotext").isEmpty())
            QSKIP("needs pdftotext: install poppler-utils");
    }
    void itSaysWhatTheLogbookHas()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString pdf = inFolder(run, "sheet.pdf");
        QCOMPARE(run("sheet " + pdf).exitCode, 0);
        const QString text = readBack(pdf);
        const json reserve = run("reserve --json").json(), table = run("calibrate --json --verify "
            + run.file("v.csv", "poured_l,signal\n-5,0.81\n")).json();
        QVERIFY2(text.contains("Wren"), qPrintable(text));
        for (const char* step : {"0.0 3.020 1", "5.0 2.840 1", "25.0 1.880 1", "50.0 0.550 1"})
            QVERIFY2(text.contains(step), step);
        QVERIFY(text.contains("zero mark, since drained 5.0 L"));
        QVERIFY(text.contains("supply 5.0 V") && text.contains("pull-up 220 ohm"));
        QVERIFY(text.contains("odometer, last noted 104000 km, 2026-09-10"));
        const double sure = std::floor(reserve["past_zero_km"]["p99"].get<double>());
        QVERIFY2(text.contains(QString("sure (99 %) past zero %1 km").arg(sure)), qPrintable(text));
        QVERIFY2(text.contains(QString::asprintf("estimate %.1f ± %.1f L", reserve["reserve_l"]["mean"].get<double>(),
                                                 reserve["reserve_l"]["sd"].get<double>())), qPrintable(text));
        for (const json& finding : table["findings"])
            QVERIFY(text.contains(QString::fromStdString(finding["text"].get<std::string>()).left(40)));
        QVERIFY(text.contains("Litres taken out: ____"));
        QVERIFY(text.contains("petrol vapour ignites") && text.contains("Never try out the reserve on a public road"));
    }
    void aVerificationIsOnIt()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString pdf = inFolder(run, "sheet.pdf");
        const QString sound = run.file("v.csv", "poured_l,signal\n-5,0.81\n-10,1.36\n");
        QVERIFY(run("sheet " + pdf + " --verify " + sound + " --json").json()["verified"].get<bool>());
        QVERIFY2(readBack(pdf).contains("Passed at 99 %"), qPrintable(readBack(pdf)));
        QVERIFY(readBack(pdf).contains("0.810 45.0 L"));
        QCOMPARE(run("sheet " + pdf + " --verify " + run.file("w.csv", "total_l,signal\n20,0.81\n")).exitCode, 0);
        QVERIFY(readBack(pdf).contains("NOT PASSED at 99 %"));
    }
    // A year later the readings, the verification and the pictures are still there.
    void whatTheLogbookKeepsOfAVerificationIsOnIt()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString levels = run.file("v.csv", "poured_l,signal\n-5,0.81\n-10,1.36\n");
        QCOMPARE(run("calibrate --verify " + levels + " --note again").exitCode, 2);   // nothing to keep
        QCOMPARE(run("calibrate --save --verify " + levels + " --note by-two-cans").exitCode, 0);
        const QString pdf = inFolder(run, "sheet.pdf");
        QCOMPARE(run("sheet " + pdf).exitCode, 0);
        QVERIFY2(readBack(pdf).contains("Passed at 99 %"), qPrintable(readBack(pdf)));
        QVERIFY(readBack(pdf).contains("by-two-cans") && readBack(pdf).contains("0.810 45.0 L"));
        // A calibration after it is not verified by it. (Records are told apart to the second.)
        QTest::qWait(1100);
        QCOMPARE(run("calibrate --save --note new-sender " + run.file("p.csv", "total_l,signal\n0,3\n5,2.8\n50,0.5\n")).exitCode, 0);
        QCOMPARE(run("sheet " + pdf).exitCode, 0);
        QVERIFY(readBack(pdf).contains("Litres taken out: ____") && readBack(pdf).contains("new-sender"));
    }
    void photosAreOnASecondPage()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString jpeg = run.file("meter.jpg", QByteArray::fromStdString(jpegPicture("GPS 61.25 N")));
        const QString png = run.file("meter.png", QByteArray::fromStdString(pngPicture()));
        QCOMPARE(run("photo add " + jpeg + " --step base --total-l 5 --note meter").exitCode, 0);
        QCOMPARE(run("photo add " + png + " --step full").exitCode, 0);
        const QString pdf = inFolder(run, "sheet.pdf");
        QCOMPARE(run("sheet " + pdf).exitCode, 0);
        QVERIFY2(readBack(pdf).contains("base, 5.0 L: meter"), qPrintable(readBack(pdf)));
        QProcess images;
        images.start("pdfimages", {"-list", pdf});
        images.waitForFinished();
        const QString listed = QString::fromUtf8(images.readAllStandardOutput());
        QCOMPARE(listed.trimmed().count('\n'), 3); // two lines of headings, two pictures
        QVERIFY2(listed.contains("jpeg"), qPrintable(listed));
    }
    // Held upright: 16 by 12 points of the camera stand as 12 by 16 on the page.
    void aPhotoIsTurnedAsTheCameraWasHeld()
    {
        const auto drawnAs = [](const std::string& bytes) {
            const CliRunner run;
            if (!run.prepareCar()
                || run("photo add --step full " + run.file("m.jpg", QByteArray::fromStdString(bytes))).exitCode != 0)
                return QString();
            const QString pdf = inFolder(run, "sheet.pdf");
            run("sheet " + pdf);
            QProcess draw;
            draw.start("pdftoppm", {"-f", "2", "-l", "2", "-r", "72", pdf});
            draw.waitForFinished();
            // P6, width, height, 255, then three bytes a point.
            const QByteArray page = draw.readAllStandardOutput();
            const QList<QByteArray> head = page.left(40).simplified().split(' ');
            const int wide = head.value(1).toInt(), high = head.value(2).toInt();
            const QByteArray points = page.right(3 * wide * high);
            const QRect where(36, 66, 250, 230); // of the first photo, of the page in points
            int left = wide, right = 0, top = high, bottom = 0;
            for (int y = where.top(); y < where.bottom(); ++y)
                for (int x = where.left(); x < where.right(); ++x)
                    if (const auto* point = points.constData() + 3 * (y * wide + x); uchar(point[0]) < 235 || uchar(point[2]) < 235) {
                        left = std::min(left, x), right = std::max(right, x);
                        top = std::min(top, y), bottom = std::max(bottom, y);
                    }
            return QString(right - left > bottom - top ? "lying" : "upright");
        };
        const QByteArray turned("MM\0*\0\0\0\x08\0\1\x01\x12\0\3\0\0\0\1\0\6\0\0\0\0\0\0", 26);
        const QString as = drawnAs(jpegPicture());
        const QString clockwise = drawnAs(jpegPicture(std::string("Exif\0\0", 6) + turned.toStdString()));
        QCOMPARE(as, QString("lying"));
        QCOMPARE(clockwise, QString("upright"));
    }
    void aHandOverIsNoted()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString pdf = inFolder(run, "sheet.pdf");
        QVERIFY(run("vehicle list --json").json()["vehicles"][0]["handed_over"].is_null());
        QCOMPARE(run("sheet " + pdf + " --handed-over --note to-the-driver").exitCode, 0);
        QVERIFY(run("vehicle list --json").json()["vehicles"][0]["handed_over"].is_string());
        QCOMPARE(run("sheet " + pdf + " --note alone").exitCode, 2);
    }
    void aLongCalibrationFindsRoom()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        QByteArray points = "total_l,signal\n";
        for (int i = 0; i <= 100; ++i)
            points += QString("%1,%2\n").arg(i * 0.5).arg(0.5 + 0.04 * i).toUtf8();
        QCOMPARE(run("calibrate --save --zero-at-l 5 " + run.file("p.csv", points)).exitCode, 0);
        const QString pdf = inFolder(run, "sheet.pdf");
        QCOMPARE(run("sheet " + pdf).exitCode, 0);
        QVERIFY2(readBack(pdf).contains("The logbook has 83 more."), qPrintable(readBack(pdf)));
    }
    void aSaddleTankShowsBothLobes()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        QCOMPARE(run("calibrate --save --zero-at-l 5 "
                     + run.file("p.csv", "total_l,signal,signal2\n0,0.5,0.5\n15,2,0.5\n30,3.5,0.5\n50,3.5,3.5\n")).exitCode, 0);
        const QString pdf = inFolder(run, "sheet.pdf");
        QCOMPARE(run("sheet " + pdf).exitCode, 0);
        QVERIFY2(readBack(pdf).contains("50.0 3.500 3.500 1"), qPrintable(readBack(pdf)));
        QVERIFY(!readBack(pdf).contains("Gauge table"));
    }
    void whatCannotBeHandedOverIsRefused()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        const QString pdf = inFolder(run, "sheet.pdf");
        const CliAnswer bare = run("sheet " + pdf);
        QCOMPARE(bare.exitCode, 2);
        QVERIFY2(bare.err.contains("no calibration"), bare.err.constData());
        QCOMPARE(bare.errorLines(), 1);
        QVERIFY(!QFileInfo::exists(pdf));
        const CliRunner whole;
        QVERIFY(whole.prepareCar());
        QVERIFY(whole("sheet " + inFolder(whole, "no/such/folder.pdf")).exitCode != 0);
    }
};

UNDERMARK_TEST(SheetTest)
#include "sheet_test.moc"
