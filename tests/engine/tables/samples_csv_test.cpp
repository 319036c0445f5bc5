// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/samples_csv.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

class SamplesCsvTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    std::string fileWith(const char* text)
    {
        QFile file(m_folder.filePath("in.csv"));
        if (file.open(QIODevice::WriteOnly))
            file.write(text);
        return file.fileName().toStdString();
    }

private slots:
    void readsEveryColumnInAnyOrder()
    {
        auto samples = SamplesCsv::open(fileWith(
            "signal,t_s,distance_km,fuel_rate_l_h,speed_kmh,signal2,rpm\n"
            "2.5,10,1.25,4.5,60,1.5,800\n"));
        QVERIFY(samples.has_value());
        QCOMPARE(samples->unknownColumns(), std::vector<std::string>{"rpm"});
        Sample row;
        QVERIFY(samples->next(row).value());
        QCOMPARE(row.time.count(), 10.0);
        QCOMPARE(row.signal->value(), 2.5);
        QCOMPARE(row.signal2->value(), 1.5);
        QCOMPARE(row.speed->kmPerHour(), 60.0);
        QCOMPARE(row.fuelRate->litresPerHour(), 4.5);
        QCOMPARE(row.distance->km(), 1.25);
        QVERIFY(!samples->next(row).value());
    }

    void anEmptyCellIsNoReadingAndNotZero()
    {
        auto samples = SamplesCsv::open(fileWith("t_s,signal,speed_kmh\n0,,\n"));
        Sample row;
        QVERIFY(samples->next(row).value());
        QVERIFY(!row.signal && !row.speed && !row.distance);
    }

    void impossibleNumbersAreNamed()
    {
        auto samples = SamplesCsv::open(fileWith("t_s,signal,speed_kmh\n0,1,5\n1,1,-5\n"));
        Sample row;
        QVERIFY(samples->next(row));
        const auto more = samples->next(row);
        QVERIFY(!more);
        QCOMPARE(more.error().where.line, 3L);
        QCOMPARE(more.error().where.column, std::string("speed_kmh"));
        QCOMPARE(more.error().code, ErrorCode::badInput);
    }
};

UNDERMARK_TEST(SamplesCsvTest)
#include "samples_csv_test.moc"
