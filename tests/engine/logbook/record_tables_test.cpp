// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/database.h"
#include "engine/logbook/record_tables.h"
#include "engine/logbook/schema.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>
#include <SQLiteCpp/SQLiteCpp.h>
#include <cmath>
#include <filesystem>
#include <map>

using namespace undermark;
using namespace undermark::logbook;

namespace {

// What makes each thing of a file, blanks and line ends aside.
QStringList schemaIn(SQLite::Database& database)
{
    SQLite::Statement select(database, "SELECT type, name, sql FROM sqlite_master "
                                       "WHERE sql IS NOT NULL AND type <> 'index' ORDER BY type, name");
    QStringList all;
    while (select.executeStep())
        all.push_back(QString::fromStdString(select.getColumn(0).getString() + " "
                                             + select.getColumn(1).getString() + ": "
                                             + select.getColumn(2).getString())
                          .simplified()
                          .replace(" ,", ",").replace("( ", "(").replace(" )", ")"));
    return all;
}

// Whether the file would take the number in that column.
bool fileTakes(SQLite::Database& database, const ColumnShape& column, double number)
{
    SQLite::Statement select(database, "SELECT " + column.check + " FROM (SELECT ? AS "
                                           + column.name + ")");
    select.bind(1, number);
    select.executeStep();
    return select.getColumn(0).getInt() != 0;
}

// Names under which answers state the columns; the spread is told with its mean.
template <class T>
QStringList toldNames()
{
    QStringList names;
    for (const auto& column : tableOf<T>().fields)
        if (!column.isSd)
            names.append(column.told().name);
    return names;
}

double justBelow(double number)
{
    return std::nextafter(number, -std::numeric_limits<double>::infinity());
}

} // namespace

class RecordTablesTest : public QObject {
    Q_OBJECT
    SQLite::Database m_database{":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};

private slots:
    // Files of older schemas that earlier programs made, brought up: the columns make the same.
    // (Indexes are no part of a schema: they are made in older files, too, when these are
    // opened.)
    void theyMakeTheSchemaOfTheReleasedFiles()
    {
        m_database.exec(createSchemaSql());
        const QStringList made = schemaIn(m_database);
        QCOMPARE(made.size(), 71);   // 18 tables, 17 of them with three triggers, two views
        for (const std::string schema : {"schema_1.sqlite", "schema_2.sqlite"}) {
            const auto file = std::filesystem::path(UNDERMARK_TEST_DATA) / schema;
            QTemporaryDir folder;
            const std::filesystem::path copy = folder.filePath("log.sqlite").toStdString();
            std::filesystem::copy_file(file, copy);
            std::filesystem::permissions(copy, std::filesystem::perms::owner_all);
            auto released = openDatabase(copy, OpenMode::readWrite, kBusyTimeout);
            QVERIFY(released.has_value());
            const QStringList kept = schemaIn(*released);
            for (int i = 0; i < std::min(made.size(), kept.size()); ++i)
                QCOMPARE(made[i], kept[i]);
            QCOMPARE(made.size(), kept.size());
        }
    }

    // Else a fill could be accepted and its row refused, or a merged file hold what could
    // never be entered.
    void aNumberIsPossibleForARecordWhereItIsForTheFile()
    {
        int seen = 0;
        for (const TableShape* table : valueTables()) {
            for (const ColumnShape& column : table->columns) {
                if (!column.range)
                    continue;
                ++seen;
                const std::string where = std::string(table->name) + "." + column.name;
                QVERIFY2(fileTakes(m_database, column, column.range->lowest), where.c_str());
                QVERIFY2(fileTakes(m_database, column, column.range->highest), where.c_str());
                QVERIFY2(!fileTakes(m_database, column, justBelow(column.range->lowest)), where.c_str());
            }
        }
        QVERIFY(seen > 30);
    }

    // Or one of two columns would be lost in the JSON of an entry.
    void everyColumnOfTheLogIsToldUnderANameOfItsOwn()
    {
        for (const QStringList& names :
             {toldNames<Fill>(), toldNames<Trip>(), toldNames<Proof>(), toldNames<LevelRecord>()})
            QCOMPARE(QSet<QString>(names.begin(), names.end()).size(), names.size());
        QCOMPARE(toldNames<Fill>().size(), qsizetype(tableOf<Fill>().columns.size()));
        QCOMPARE(toldNames<Proof>().join(','),
                 QStringLiteral("date,kind,litres,left_behind_l,signal,km,mode,tank"));
    }

    // Units and words of people, whatever the file keeps.
    void aFillIsToldInItsOwnWords()
    {
        Fill fill;
        fill.extent = FillExtent::neck;
        fill.displayed = Consumption::fromLitresPer100Km(7.5);
        fill.counted = false;
        std::map<std::string, Cell> told;
        for (const auto& column : tableOf<Fill>().fields)
            told[column.told().name] = column.told().field.get(fill);
        QCOMPARE(std::get<std::string>(told["extent"]), std::string("neck"));
        QCOMPARE(std::get<double>(told["displayed_l_per_100km"]), 7.5);
        QCOMPARE(std::get<std::string>(told["ruling"]), std::string("left out"));
        QVERIFY(told["signal"] == Cell());   // not known
    }

    void namesAreListedForSql()
    {
        QCOMPARE(tableOf<SurgeMargin>().names(), std::string("mode, litres"));
        QCOMPARE(tableOf<SurgeMargin>().names("v."), std::string("v.mode, v.litres"));
    }
};

UNDERMARK_TEST(RecordTablesTest)
#include "record_tables_test.moc"
