// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/gauge_table_csv.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class GaugeTableCsvTest : public QObject {
    Q_OBJECT
private slots:
    void theTableIsWrittenWithItsDecimalsAndAPoint()
    {
        GaugeTable table;
        table.rows = {{Signal::of(3.02), 0.0}, {Signal::of(1.0 / 3.0), 55.5}, {Signal::of(0.55), 100.0}};
        QCOMPARE(gaugeTableCsv(table, GaugeUnit::percent, 0),
                 std::string("signal,percent\n3.02,0\n0.33333333,56\n0.55,100\n"));
        QCOMPARE(gaugeTableCsv(table, GaugeUnit::litres, 1),
                 std::string("signal,litres\n3.02,0.0\n0.33333333,55.5\n0.55,100.0\n"));
    }
};

UNDERMARK_TEST(GaugeTableCsvTest)
#include "gauge_table_csv_test.moc"
