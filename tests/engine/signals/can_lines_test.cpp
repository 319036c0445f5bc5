// SPDX-License-Identifier: GPL-3.0-or-later
//
// Frames out of the texts that carry them: candump, slcan, ASC.
#include "engine/signals/can_frame.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

CanFrame frameOf(std::uint32_t id, bool extended, std::initializer_list<std::uint8_t> bytes)
{
    CanFrame frame{.id = id, .extended = extended, .length = static_cast<std::uint8_t>(bytes.size())};
    std::ranges::copy(bytes, frame.data.begin());
    return frame;
}

const CanFrame kLevelAnswer = frameOf(0x7E8, false, {0x03, 0x41, 0x2F, 0x80});
const CanFrame kTruck = frameOf(0x18FEFC31, true, {0xFF, 0x77, 0xFF, 0xFF, 0xFF, 0xFF, 0x00, 0xFF});

} // namespace

class CanLinesTest : public QObject {
    Q_OBJECT

private slots:
    // The forms of can-utils (from memory).
    void candumpIsReadLoggedAndShown_data()
    {
        QTest::addColumn<QByteArray>("line");
        QTest::addColumn<double>("time");
        QTest::newRow("logged") << QByteArray("(1436509052.249713) vcan0 7E8#03412F80") << 1436509052.249713;
        QTest::newRow("with direction") << QByteArray("(12.5) can0 7E8#03412F80 R") << 12.5;
        QTest::newRow("dots") << QByteArray("(12.5) can0 7E8#03.41.2F.80") << 12.5;
        QTest::newRow("bare") << QByteArray("7E8#03412F80") << -1.0;
        QTest::newRow("bus, no time") << QByteArray("can0 7E8#03412F80") << -1.0;
        QTest::newRow("shown") << QByteArray("  can0  7E8   [4]  03 41 2F 80") << -1.0;
        QTest::newRow("shown with time") << QByteArray(" (000.010000)  can0  7E8   [4]  03 41 2F 80   '.A/.'") << 0.01;
        QTest::newRow("shown with direction") << QByteArray(" can0  RX - -  7E8   [4]  03 41 2F 80") << -1.0;
        QTest::newRow("shown without bus") << QByteArray("7E8 [4] 03 41 2F 80") << -1.0;
    }
    void candumpIsReadLoggedAndShown()
    {
        QFETCH(const QByteArray, line);
        QFETCH(const double, time);
        TimedFrame out;
        QCOMPARE(parseCandump(line.toStdString(), out), Heard::value);
        QCOMPARE(out.frame, kLevelAnswer);
        QCOMPARE(out.time.value_or(Seconds(-1)).count(), time);
    }

    void anIdOfEightDigitsIsExtendedAndBusesAreToldApart()
    {
        TimedFrame one, other;
        QCOMPARE(parseCandump("can0 18FEFC31#FF77FFFFFFFF00FF", one), Heard::value);
        QCOMPARE(one.frame, kTruck);
        QCOMPARE(parseCandump("can1 000007E8#03412F80", other), Heard::value);
        QVERIFY(other.frame.extended);
        QVERIFY(one.bus != other.bus);
    }

    void whatHasNoDataForUsIsNothing_data()
    {
        QTest::addColumn<QByteArray>("line");
        for (const char* line : {"can0 7E8#R", "can0 7E8#R8", "can0 7E8##1112233", "can0 20000004#0000000000000000",
                                 " can0 7E8 [8] remote request", "can0 7E8 [64] 00 00"})
            QTest::newRow(line) << QByteArray(line);
    }
    void whatHasNoDataForUsIsNothing()
    {
        QFETCH(const QByteArray, line);
        TimedFrame out;
        QCOMPARE(parseCandump(line.toStdString(), out), Heard::nothing);
    }

    void brokenCandumpIsGarbled_data()
    {
        QTest::addColumn<QByteArray>("line");
        for (const char* line : {"", "hello", "can0", "(x) can0 7E8#00", "can0 7E#00", "can0 8FF#00",
                                 "can0 7E8#0", "can0 7E8#001122334455667788", "can0 7E8#0G", "can0 40000000#00",
                                 "can0 7E8 [4] 03 41 2F", "can0 7E8 [] 03", "can0 7E8 [x] 03", "can0 7E8 [1] 3",
                                 "# # #", "(1.0", "()", "[4] 00 00 00 00"})
            QTest::newRow(line) << QByteArray(line);
    }
    void brokenCandumpIsGarbled()
    {
        QFETCH(const QByteArray, line);
        TimedFrame out;
        QCOMPARE(parseCandump(line.toStdString(), out), Heard::garbled);
    }

    // As python3-can's client sends them (seen on a pseudo-terminal).
    void slcanIsReadAndWritten()
    {
        TimedFrame out;
        QCOMPARE(parseSlcan("t7E8403412F80", out), Heard::value);
        QCOMPARE(out.frame, kLevelAnswer);
        QCOMPARE(parseSlcan("t7E8403412F80ABCD", out), Heard::value); // with a time stamp
        QCOMPARE(out.frame, kLevelAnswer);
        QCOMPARE(parseSlcan("T18FEFC318FF77FFFFFFFF00FF", out), Heard::value);
        QCOMPARE(out.frame, kTruck);
        for (const CanFrame& frame : {kLevelAnswer, kTruck, frameOf(1, false, {})}) {
            std::string line = slcanLine(frame);
            QVERIFY(line.ends_with('\r'));
            line.pop_back();
            QCOMPARE(parseSlcan(line, out), Heard::value);
            QCOMPARE(out.frame, frame);
        }
    }

    void slcanTalkIsNothingAndBrokenLinesAreGarbled()
    {
        TimedFrame out;
        for (const char* line : {"z", "Z", "\a", "\a\az", "V1013", "NA123", "F00", "r7E80", "R18FEFC310"})
            QCOMPARE(parseSlcan(line, out), Heard::nothing);
        QCOMPARE(parseSlcan("\at7E8403412F80", out), Heard::value);
        for (const char* line : {"", "t", "t7E", "t7E89", "t7E8403412F8", "t7E8403412F801", "t8FF0", "T7E80", "x",
                                 "tG00100", "t7E84034-2F80", "T2000000000"})
            QCOMPARE(parseSlcan(line, out), Heard::garbled);
    }

    void anAdapterIsOpenedAtTheSpeedsItHas()
    {
        QCOMPARE(slcanOpening(500).value(), std::string("C\rS6\rO\r"));
        QCOMPARE(slcanOpening(10).value(), std::string("C\rS0\rO\r"));
        QCOMPARE(slcanOpening(1000).value(), std::string("C\rS8\rO\r"));
        QVERIFY(!slcanOpening(33));
    }

    // The header's lines and a frame's as recordings have them (from memory).
    void ascIsReadByItsHeader()
    {
        AscReader asc;
        TimedFrame out;
        for (const char* line : {"date Wed Apr 16 09:21:13.159 am 2014", "base hex  timestamps absolute",
                                 "internal events logged", "// version 7.0.0", "Begin Triggerblock",
                                 "0.000000 Start of measurement", "   1.0 1  ErrorFrame",
                                 " 1.1 1  7E8             Rx   r 8", "0.5 CANFD 1 Rx 7E8", "End TriggerBlock"})
            QCOMPARE(asc.take(line, out), Heard::nothing);
        QCOMPARE(asc.take("   2.501000 1  7E8             Rx   d 4 3 41 2F 80  Length = 0", out), Heard::value);
        QCOMPARE(out.frame, kLevelAnswer);
        QCOMPARE(out.time->count(), 2.501);
        QCOMPARE(asc.take("   3.1 2  18FEFC31x       Tx   d 8 FF 77 FF FF FF FF 0 FF", out), Heard::value);
        QCOMPARE(out.frame, kTruck);
        QCOMPARE(out.bus, 2u);
        for (const char* line : {"", "rubbish", "3.1 2 8FF Rx d 0", "3.1 2 7E8 Rx d 9 0", "3.1 2 7E8 Rx d 2 0",
                                 "3.1 2 7E8 Rx d 1 100", "3.1 2 7E8 up d 1 1", "base 12", "3.1 2 Gx Rx d 0"})
            QCOMPARE(asc.take(line, out), Heard::garbled);
    }

    void ascMayCountInTensAndFromLineToLine()
    {
        AscReader asc;
        TimedFrame out;
        QCOMPARE(asc.take("base dec  timestamps relative", out), Heard::nothing);
        QCOMPARE(asc.take("1.0 1 2024 Rx d 4 3 65 47 128", out), Heard::value);
        QCOMPARE(out.frame, kLevelAnswer);
        QCOMPARE(asc.take("0.5 1 2024 Rx d 0", out), Heard::value);
        QCOMPARE(out.time->count(), 1.5);
    }
};

UNDERMARK_TEST(CanLinesTest)
#include "can_lines_test.moc"
