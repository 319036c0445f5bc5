// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/csv_reader.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <array>

using namespace undermark;

class CsvReaderTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    static constexpr std::array<CsvColumn, 2> kColumns{{{"litres", true}, {"note", false}}};

    std::string fileWith(const char* text)
    {
        QFile file(m_folder.filePath("in.csv"));
        if (file.open(QIODevice::WriteOnly))
            file.write(text);
        return file.fileName().toStdString();
    }

    // The error met when reading every row of `text` as litres of 0 or more.
    Error firstError(const char* text)
    {
        auto reader = CsvReader::open(fileWith(text), kColumns);
        if (!reader)
            return reader.error();
        for (;;) {
            const auto more = reader->nextRow();
            if (!more)
                return more.error();
            if (!*more)
                return {};
            if (const auto value = reader->number(0, kNotNegative); !value)
                return value.error();
        }
    }

private slots:
    void readsColumnsInAnyOrderAndNamesUnknownOnes()
    {
        auto reader = CsvReader::open(
            fileWith("\xEF\xBB\xBFnote,extra,litres\r\n\"a, b\",x, 4.5 \r\n\r\n,,+7e0\n"), kColumns);
        QVERIFY(reader.has_value());
        QCOMPARE(reader->unknownColumns(), std::vector<std::string>{"extra"});
        QVERIFY(*reader->nextRow());
        QCOMPARE(reader->text(1), std::string_view("a, b"));
        QCOMPARE(*reader->number(0), 4.5);
        QVERIFY(*reader->nextRow());
        QCOMPARE(reader->line(), 4L);
        QCOMPARE(*reader->number(0), 7.0);
        QVERIFY(!*reader->nextRow());
    }

    void saysWhereAndWhatIsWrong_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("line");
        QTest::addColumn<QString>("words");
        QTest::newRow("text in a number") << QByteArray("litres,note\n1,a\nabc,b\n") << 3 << "not a number";
        QTest::newRow("comma decimals") << QByteArray("litres,note\n\"1,5\",a\n") << 2 << "point";
        QTest::newRow("bare comma decimals") << QByteArray("litres,note\n1,5,a\n") << 2 << "more cells";
        QTest::newRow("a stray unit") << QByteArray("litres,note\n5 L,a\n") << 2 << "without a unit";
        QTest::newRow("NaN") << QByteArray("litres,note\nnan,a\n") << 2 << "outside";
        QTest::newRow("infinity") << QByteArray("litres,note\ninf,a\n") << 2 << "outside";
        QTest::newRow("negative litres") << QByteArray("litres,note\n-1,a\n") << 2 << "outside";
        QTest::newRow("nothing") << QByteArray("litres,note\n,a\n") << 2 << "missing";
        QTest::newRow("missing column") << QByteArray("note\na\n") << 1 << "lacks";
        QTest::newRow("column twice") << QByteArray("litres,litres\n1,2\n") << 1 << "twice";
        QTest::newRow("open quote") << QByteArray("litres,note\n1,\"a\n") << 2 << "not closed";
        QTest::newRow("empty file") << QByteArray("") << 0 << "empty";
    }

    void saysWhereAndWhatIsWrong()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, line);
        QFETCH(QString, words);
        const Error error = firstError(text.constData());
        QCOMPARE(error.code, ErrorCode::badInput);
        QCOMPARE(error.where.line, long(line));
        QVERIFY2(QString::fromStdString(describe(error)).contains(words), describe(error).c_str());
    }

    void aMissingFileIsNotBadInput()
    {
        const auto reader = CsvReader::open(m_folder.filePath("none.csv").toStdString(), kColumns);
        QVERIFY(!reader);
        QCOMPARE(reader.error().code, ErrorCode::fileAccess);
    }
};

UNDERMARK_TEST(CsvReaderTest)
#include "csv_reader_test.moc"
