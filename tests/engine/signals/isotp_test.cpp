// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/isotp.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <vector>

using namespace undermark;

class IsotpTest : public QObject {
    Q_OBJECT
    using Bytes = std::vector<std::uint8_t>;
    using Step = IsoTpReceiver::Step;

    static Bytes bytesOf(const IsoTpReceiver& receiver)
    {
        return {receiver.message().begin(), receiver.message().end()};
    }

private slots:
    void aSingleFrameIsAWholeMessageWithoutItsPadding()
    {
        IsoTpReceiver receiver;
        QCOMPARE(receiver.take(Bytes{0x03, 0x41, 0x2F, 0x80, 0x55, 0x55, 0x55, 0x55}, Seconds(0)), Step::complete);
        QCOMPARE(bytesOf(receiver), (Bytes{0x41, 0x2F, 0x80}));
    }

    // brendan-w/python-OBD, test_protocol_can: 32 bytes over four frames; the sender waits
    // for a flow control after the first.
    void severalFramesAreOneMessage()
    {
        IsoTpReceiver receiver;
        QCOMPARE(receiver.take(Bytes{0x10, 0x20, 0x49, 0x04, 0x00, 0x01, 0x02, 0x03}, Seconds(0)), Step::begun);
        QCOMPARE(receiver.take(Bytes{0x21, 0x04, 0x05, 0x06, 0x07, 0x08, 0x09, 0x0A}, Seconds(0.1)), Step::going);
        QCOMPARE(receiver.take(Bytes{0x22, 0x0B, 0x0C, 0x0D, 0x0E, 0x0F, 0x10, 0x11}, Seconds(0.2)), Step::going);
        QCOMPARE(receiver.take(Bytes{0x23, 0x12, 0x13, 0x14, 0x15, 0x16, 0x17, 0x18}, Seconds(0.3)), Step::going);
        QCOMPARE(receiver.take(Bytes{0x24, 0xAA, 0xBB, 0xCC, 0xDD, 0xEE, 0x00, 0x00}, Seconds(0.4)), Step::complete);
        const Bytes message = bytesOf(receiver);
        QCOMPARE(message.size(), std::size_t(32));
        QCOMPARE(message[0], std::uint8_t(0x49));
        for (std::size_t i = 2; i < 27; ++i)
            QCOMPARE(message[i], std::uint8_t(i - 2));
    }

    void aFrameMissingTwiceOrLateEndsTheMessage()
    {
        const Bytes first{0x10, 0x10, 1, 2, 3, 4, 5, 6};
        const Bytes second{0x21, 7, 8, 9, 10, 11, 12, 13};
        const Bytes third{0x22, 14, 15, 16};
        for (const Bytes& wrong : {third, first, Bytes{0x21, 7, 8}}) { // skipped, begun anew, cut
            IsoTpReceiver receiver;
            receiver.take(first, Seconds(0));
            QCOMPARE(receiver.take(wrong, Seconds(0)), wrong == first ? Step::begun : Step::garbled);
        }
        IsoTpReceiver receiver;
        receiver.take(first, Seconds(0));
        receiver.take(second, Seconds(0));
        QCOMPARE(receiver.take(second, Seconds(0)), Step::garbled);
        QCOMPARE(receiver.take(third, Seconds(0)), Step::garbled); // what was begun is lost
        receiver.take(first, Seconds(0));
        receiver.take(second, Seconds(1));
        QCOMPARE(receiver.take(third, Seconds(2.1)), Step::garbled);
        receiver.take(first, Seconds(3));
        receiver.take(second, Seconds(3));
        QCOMPARE(receiver.take(third, Seconds(3)), Step::complete);
    }

    // The number runs round after 15, and the longest message fits.
    void theLongestMessageFits()
    {
        IsoTpReceiver receiver;
        QCOMPARE(receiver.take(Bytes{0x1F, 0xFF, 0, 0, 0, 0, 0, 0}, Seconds(0)), Step::begun);
        Step step = Step::going;
        int frames = 0;
        while (step == Step::going && frames < 1000) {
            ++frames;
            step = receiver.take(Bytes{std::uint8_t(0x20 + frames % 16), 1, 2, 3, 4, 5, 6, 7}, Seconds(0));
        }
        QCOMPARE(step, Step::complete);
        QCOMPARE(frames, (4095 - 6 + 6) / 7);
        QCOMPARE(receiver.message().size(), std::size_t(4095));
    }

    void whatIsNoFrameOfItIsGarbled()
    {
        IsoTpReceiver receiver;
        for (const Bytes& wrong : {Bytes{}, Bytes{0x00}, Bytes{0x04, 1, 2}, Bytes{0x0F, 1, 2, 3, 4, 5, 6, 7},
                                   Bytes{0x10}, Bytes{0x10, 0x07, 1, 2, 3, 4, 5, 6}, Bytes{0x10, 0x00, 0, 0, 1, 0, 1, 1},
                                   Bytes{0x21, 1}, Bytes{0x40}, Bytes{0xFF, 1}})
            QCOMPARE(receiver.take(wrong, Seconds(0)), Step::garbled);
        QCOMPARE(receiver.take(Bytes{0x30, 0, 0}, Seconds(0)), Step::nothing);
    }

    void theFlowControlLetsEverythingCome()
    {
        const CanFrame frame = flowControl(0x7E0, false);
        QCOMPARE(Bytes(frame.bytes().begin(), frame.bytes().end()), (Bytes{0x30, 0, 0, 0, 0, 0, 0, 0}));
        QCOMPARE(frame.id, 0x7E0u);
    }
};

UNDERMARK_TEST(IsotpTest)
#include "isotp_test.moc"
