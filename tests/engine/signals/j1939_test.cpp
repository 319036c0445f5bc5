// SPDX-License-Identifier: GPL-3.0-or-later
//
// J1939 against frames of recorded truck traffic, with the scales as quoted from SAE or in
// nmfta-repo/pretty_j1939, beside each.
#include "engine/signals/frame_values.h"
#include "engine/signals/j1939.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class J1939Test : public QObject {
    Q_OBJECT
    static std::optional<double> valueOf(const char* line, std::uint32_t number)
    {
        TimedFrame frame;
        if (parseCandump(line, frame) != Heard::value)
            return std::nullopt;
        const J1939Parameter* parameter = j1939Parameter(groupOf(frame.frame.id), number);
        return parameter ? parameter->signal.valueIn(frame.frame) : std::nullopt;
    }

private slots:
    void recordedTrafficSaysWhatItShould()
    {
        // 0.4 %/bit as quoted from SAE
        QCOMPARE(valueOf("18FEFC31#FF77FFFFFFFF00FF", 96).value(), 47.6);
        QCOMPARE(valueOf("18FEFC31#FF77FFFFFFFF00FF", 38).value(), 0.0);
        // 1/256 km/h in pretty_j1939
        QCOMPARE(valueOf("18FEF100#FF3417FCFF6800CF", 84).value(), 23.203125);
        // 0.05 L/h from memory; agrees with SPN 184 against 84/183 over 300 frames, median 0.996
        QCOMPARE(valueOf("18FEF200#CA008A04C309E1FF", 183).value(), 10.10);
        // 5 m/bit, and 0.125 km/bit in pretty_j1939: the same truck at the same time
        QCOMPARE(valueOf("18FEC100#9AA73B05795F1D00", 917).value(), 438978.05);
        QCOMPARE(valueOf("18FEE000#C72C010010963500", 245).value(), 438978.0);
        // J1939-71: 7D is 50 %, 2C 01 is 15.0 L/h (from memory)
        QCOMPARE(valueOf("18FEFC31#FF7DFFFFFFFFFFFF", 96).value(), 50.0);
        QCOMPARE(valueOf("18FEF200#2C01FFFFFFFFFFFF", 183).value(), 15.0);
    }

    // Bytes above FA, words above FAFF, long words above FAFFFFFF are no values (from memory).
    void notAvailableAndErrorsAreNoValues()
    {
        QCOMPARE(valueOf("18FEFC31#FFFAFFFFFFFFFFFF", 96).value(), 100.0);
        for (const char* line : {"18FEFC31#FFFBFFFFFFFFFFFF", "18FEFC31#FFFEFFFFFFFFFFFF", "18FEFC31#FFFFFFFFFFFFFFFF",
                                 "18FEFC31#FF"}) // and too short a frame
            QVERIFY(!valueOf(line, 96));
        QVERIFY(valueOf("18FEF200#FFFAFFFFFFFFFFFF", 183));
        QVERIFY(!valueOf("18FEF200#00FBFFFFFFFFFFFF", 183));
        QVERIFY(valueOf("18FEC100#FFFFFFFAFFFFFFFF", 917));
        QVERIFY(!valueOf("18FEC100#000000FBFFFFFFFF", 917));
        QVERIFY(!valueOf("18FEC100#FFFFFFFFFFFFFFFF", 917));
    }

    void aGroupIsMatchedWhateverPriorityAndSender()
    {
        QCOMPARE(groupOf(0x18FEFC31), 65276u);
        QCOMPARE(groupOf(0x0CFEFCFE), 65276u);
        QCOMPARE(groupOf(0x18EA2100), 0xEA00u); // the low byte is an address
        QCOMPARE(groupOf(0x19FEFC31), 0x1FEFCu);
        QCOMPARE(valueOf("0CFEFC31#FF77FFFFFFFF00FF", 96).value(), 47.6);
        TimedFrame standard;
        QCOMPARE(parseCandump("6FC#FF77FFFFFFFF00FF", standard), Heard::value);
        QVERIFY(!j1939Parameter(65276, 96)->signal.match.matches(standard.frame));
    }

    void sendersOfOneGroupAreToldApart()
    {
        const FrameValues values(j1939Rules());
        TimedFrame one, other;
        parseCandump("18FEF100#FF3417FCFF6800CF", one);
        parseCandump("0CFEF10B#FF3417FCFF6800CF", other);
        std::vector<TimedValue> out;
        QCOMPARE(values.hear(one, Seconds(5), out), Heard::value);
        QCOMPARE(values.hear(other, Seconds(5), out), Heard::value);
        QCOMPARE(out.size(), std::size_t(2));
        QCOMPARE(out[0].channel, Channel::speed);
        QCOMPARE(out[0].time.count(), 5.0);
        QVERIFY(out[0].sender != out[1].sender);
    }
};

UNDERMARK_TEST(J1939Test)
#include "j1939_test.moc"
