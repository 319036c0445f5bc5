// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/fill_log.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

class FillLogTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    Result<Imported<Fill>> read(const QByteArray& text)
    {
        QFile file(m_folder.filePath("fills.csv"));
        if (file.open(QIODevice::WriteOnly))
            file.write(text);
        file.close();
        return readFillLog(file.fileName().toStdString());
    }

private slots:
    void readsKilometresSinceTheFillBefore()
    {
        const auto file = read("km,date,full,litres,price_per_l,note\n400,2024-05-31,,30.5,1.7,x\n"
                               "210,2024-06-02,0,12,,\n");
        QVERIFY(file.has_value());
        QCOMPARE(file->unknownColumns, std::vector<std::string>{"note"});
        QCOMPARE(file->rows.size(), std::size_t(2));
        const Fill& first = file->rows[0];
        QCOMPARE(first.sinceLast->km(), 400.0);
        QVERIFY(!first.odometer);
        QCOMPARE(first.volume.litres(), 30.5);
        QCOMPARE(*first.pricePerLitre, 1.7);
        QVERIFY(first.extent == FillExtent::full);
        QVERIFY(file->rows[1].extent == FillExtent::partial);
        QVERIFY(!file->rows[1].pricePerLitre);
        QCOMPARE(file->lines[1], 3L);
    }

    void readsOdometers()
    {
        const auto file = read("date,litres,odometer_km\n2024-05-31,30,120500\n");
        QVERIFY(file.has_value());
        QCOMPARE(file->rows[0].odometer->km(), 120500.0);
        QVERIFY(!file->rows[0].sinceLast);
    }

    void datesAreUtcAndMayCarryATime()
    {
        // 2024-05-31 is 19874 days after 1970-01-01.
        const Instant day = Instant(std::chrono::days(19874));
        QVERIFY(*parseInstant("2024-05-31") == day);
        QVERIFY(*parseInstant("2024-05-31T17:05") == day + std::chrono::minutes(17 * 60 + 5));
        QVERIFY(*parseInstant("2024-05-31 17:05:09Z") == day + std::chrono::seconds(61509));
        for (const char* bad : {"2024-02-30", "31.05.2024", "2024-5-31", "2024-05-31T25:00", "", "today"})
            QVERIFY2(!parseInstant(bad), bad);
    }

    void saysWhereAndWhatIsWrong_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("line");
        QTest::addColumn<QString>("column");
        QTest::newRow("no date") << QByteArray("date,litres,km\nyesterday,30,400\n") << 2 << "date";
        QTest::newRow("no such day") << QByteArray("date,litres,km\n2024-02-30,30,400\n") << 2 << "date";
        QTest::newRow("negative litres") << QByteArray("date,litres,km\n2024-02-01,-3,400\n") << 2 << "litres";
        QTest::newRow("no litres") << QByteArray("date,litres,km\n2024-02-01,0,400\n") << 2 << "litres";
        QTest::newRow("no km") << QByteArray("date,litres,km\n2024-02-01,3,\n") << 2 << "km";
        QTest::newRow("km of 0") << QByteArray("date,litres,km\n2024-02-01,3,0\n") << 2 << "km";
        QTest::newRow("no odometer") << QByteArray("date,litres,odometer_km\n2024-02-01,3,\n") << 2 << "odometer_km";
        QTest::newRow("text km") << QByteArray("date,litres,km\n2024-02-01,3,far\n") << 2 << "km";
        QTest::newRow("full") << QByteArray("date,litres,km,full\n2024-02-01,3,9,yes\n") << 2 << "full";
        QTest::newRow("no distance") << QByteArray("date,litres\n2024-02-01,3\n") << 1 << "km";
        QTest::newRow("both distances") << QByteArray("date,litres,km,odometer_km\n") << 1 << "km";
        QTest::newRow("no rows") << QByteArray("date,litres,km\n") << 1 << "date";
    }

    void saysWhereAndWhatIsWrong()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, line);
        QFETCH(QString, column);
        const auto file = read(text);
        QVERIFY(!file);
        QCOMPARE(file.error().code, ErrorCode::badInput);
        QCOMPARE(QString::fromStdString(file.error().where.column), column);
        QCOMPARE(file.error().where.line, long(line));
    }
};

UNDERMARK_TEST(FillLogTest)
#include "fill_log_test.moc"
