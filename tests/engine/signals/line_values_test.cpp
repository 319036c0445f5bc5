// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/line_values.h"
#include "engine/signals/text_fields.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <array>

using namespace undermark;

class LineValuesTest : public QObject {
    Q_OBJECT

private slots:
    void oneNumberIsTheSignalAndTwoAreThoseOfTwoSenders()
    {
        LineValues lines;
        std::vector<TimedValue> out;
        QCOMPARE(lines.take("2.5", Seconds(7), out), Heard::value);
        QCOMPARE(lines.take(" 1.5 , -2e1 ", Seconds(8), out), Heard::value);
        QCOMPARE(out.size(), std::size_t(3));
        QVERIFY(out[0].channel == Channel::signal && out[0].value == 2.5 && out[0].time == Seconds(7));
        QVERIFY(out[2].channel == Channel::signal2 && out[2].value == -20.0);
        QVERIFY(!lines.timed());
    }

    void anythingElseIsGarbledAndAddsNothing()
    {
        LineValues lines;
        std::vector<TimedValue> out;
        for (const char* line : {"", ",", "1,", ",1", "1,2,3", "1;2", "2,5 V", "nan", "inf", "1e999", "0x10", "volts", "--1"})
            QCOMPARE(lines.take(line, Seconds(0), out), Heard::garbled);
        QVERIFY(out.empty());
    }

    void aHeaderNamesTheColumns()
    {
        LineValues lines;
        std::vector<TimedValue> out;
        QCOMPARE(lines.take("t_s,speed_kmh,rpm,signal,distance_km", Seconds(0), out), Heard::nothing);
        QVERIFY(lines.timed());
        QCOMPARE(lines.take("12.5,60,rot,2.5,", Seconds(99), out), Heard::value);
        QCOMPARE(out.size(), std::size_t(2));
        QVERIFY(out[0].channel == Channel::speed && out[0].value == 60.0 && out[0].time == Seconds(12.5));
        QVERIFY(out[1].channel == Channel::signal && out[1].value == 2.5);
        QCOMPARE(lines.take("13,,,,", Seconds(99), out), Heard::nothing); // all unknown
        for (const char* line : {"13,60,0,2.5", "13,60,0,2.5,1,1", ",60,0,2.5,1", "13,-1,0,2.5,1", "13,x,0,2.5,1", "13"})
            QCOMPARE(lines.take(line, Seconds(99), out), Heard::garbled);
        QCOMPARE(out.size(), std::size_t(2));
    }

    void fieldsAreStrict()
    {
        QCOMPARE(trimmed(" \t a b\t "), std::string_view("a b"));
        QVERIFY(trimmed("  ").empty());
        std::array<std::uint8_t, 2> bytes{};
        QCOMPARE(hexBytesIn("0aFF", bytes).value(), std::size_t(2));
        QCOMPARE(bytes[1], std::uint8_t(0xFF));
        for (const char* text : {"0", "0g", "000000", "-1", "0x"})
            QVERIFY(!hexBytesIn(text, bytes));
        QCOMPARE(wholeIn("FFFFFFFF", 16).value(), 0xFFFFFFFFu);
        for (const char* text : {"", "000000000", "-1", "+1", " 1", "1 ", "G"})
            QVERIFY(!wholeIn(text, 16));
        for (const Channel channel : kChannels)
            QCOMPARE(channelNamed(nameOf(channel)).value(), channel);
        QVERIFY(!channelNamed("speed"));
    }
};

UNDERMARK_TEST(LineValuesTest)
#include "line_values_test.moc"
