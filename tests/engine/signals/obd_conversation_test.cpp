// SPDX-License-Identifier: GPL-3.0-or-later
//
// A tester against a control unit that is written here on its own: the questions asked, and
// what the answers become.
#include "engine/signals/obd_conversation.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <map>

using namespace undermark;

namespace {

// Answers mode 01 as SAE J1979 has it; `values` are what it knows.
struct ControlUnit {
    std::map<std::uint8_t, std::vector<std::uint8_t>> values;
    bool of29 = false;
    std::vector<std::uint8_t> asked = {};

    std::vector<std::uint8_t> bitmap(std::uint8_t base) const
    {
        std::vector<std::uint8_t> bits(4);
        for (const auto& [pid, data] : values) {
            const int bit = pid - base - 1;
            if (bit >= 0 && bit < 32)
                bits[std::size_t(bit) / 8] |= std::uint8_t(0x80 >> bit % 8);
        }
        return bits;
    }
    std::optional<TimedFrame> answer(const CanFrame& question)
    {
        const bool mine = of29 ? question.extended && question.id == 0x18DB33F1
                               : !question.extended && question.id == 0x7DF;
        if (!mine || question.data[0] != 2 || question.data[1] != 1)
            return std::nullopt;
        const std::uint8_t pid = question.data[2];
        asked.push_back(pid);
        const auto known = values.find(pid);
        if (pid % 0x20 != 0 && known == values.end())
            return std::nullopt;
        const auto data = pid % 0x20 == 0 ? bitmap(pid) : known->second;
        TimedFrame out;
        out.frame = {.id = of29 ? 0x18DAF110u : 0x7E8u, .extended = of29, .length = 8};
        out.frame.data[0] = std::uint8_t(2 + data.size());
        out.frame.data[1] = 0x41;
        out.frame.data[2] = pid;
        std::ranges::copy(data, out.frame.data.begin() + 3);
        return out;
    }
};

const std::map<std::uint8_t, std::vector<std::uint8_t>> kUsual{
    {0x0D, {0x4A}}, {0x10, {0x03, 0xB8}}, {0x2F, {0x80}}, {0x51, {1}}, {0x5E, {0x01, 0x2C}},
    {0xA6, {0x00, 0x01, 0x86, 0xA0}}};

struct Drive {
    ObdConversation conversation;
    std::vector<TimedValue> values = {};
    std::vector<std::pair<double, std::uint8_t>> questions = {};

    // `seconds` of it, looked at every millisecond; answers come 20 ms later.
    void run(ControlUnit& unit, double seconds)
    {
        std::optional<TimedFrame> coming;
        double comesAt = 0.0;
        for (double t = m_now; t < m_now + seconds; t += 0.001) {
            if (coming && t >= comesAt) {
                conversation.hear(*coming, Seconds(t), values);
                coming.reset();
            }
            while (const auto question = conversation.next(Seconds(t))) {
                questions.push_back({t, question->data[2]});
                coming = unit.answer(*question);
                comesAt = t + 0.02;
            }
        }
        m_now += seconds;
    }
    int asked(std::uint8_t pid) const
    {
        return int(std::ranges::count(questions, pid, &std::pair<double, std::uint8_t>::second));
    }
    double m_now = 0.0;
};

} // namespace

class ObdConversationTest : public QObject {
    Q_OBJECT

    static TimedFrame said(std::initializer_list<std::uint8_t> bytes, std::uint32_t id = 0x7E8)
    {
        TimedFrame out;
        out.frame = {.id = id, .length = std::uint8_t(bytes.size())};
        std::ranges::copy(bytes, out.frame.data.begin());
        return out;
    }

private slots:
    void theCarIsAskedWhatItKnowsAndThenOnlyThat()
    {
        ControlUnit unit{.values = {{0x0D, {0x4A}}, {0x2F, {0x80}}}};
        Drive drive{ObdConversation(ObdConversation::Part::asks, std::nullopt)};
        drive.run(unit, 10.0);
        QVERIFY(drive.conversation.answered());
        const std::vector<std::uint8_t> first(unit.asked.begin(), unit.asked.begin() + 5);
        QCOMPARE(first, (std::vector<std::uint8_t>{0x00, 0x20, 0x40, 0x80, 0xA0}));
        for (std::size_t i = 5; i < unit.asked.size(); ++i)
            QVERIFY(unit.asked[i] == 0x0D || unit.asked[i] == 0x2F);
        QVERIFY(drive.conversation.knows(ObdPid::level) && !drive.conversation.knows(ObdPid::odometer));
    }

    void atMostFiveQuestionsASecondAndOneAtATime()
    {
        ControlUnit unit{.values = kUsual};
        Drive drive{ObdConversation(ObdConversation::Part::asks, std::nullopt)};
        drive.run(unit, 62.0);
        for (std::size_t i = 1; i < drive.questions.size(); ++i)
            QVERIFY(drive.questions[i].first - drive.questions[i - 1].first > 0.199);
        // 61 s remain after the bitmaps; with the odometer now and then all are served alike.
        QVERIFY2(std::abs(drive.asked(0x0D) - 121) <= 4, qPrintable(QString::number(drive.asked(0x0D))));
        QVERIFY(std::abs(drive.asked(0x5E) - 121) <= 4);
        QVERIFY(std::abs(drive.asked(0x2F) - 61) <= 3);
        QVERIFY(drive.asked(0xA6) == 2 || drive.asked(0xA6) == 3);
        QCOMPARE(drive.asked(0x51), 1);
        QCOMPARE(drive.asked(0x10), 0); // a fuel rate is told
        const auto last = [&values = drive.values](Channel channel) {
            return *std::ranges::find(values.rbegin(), values.rend(), channel, &TimedValue::channel);
        };
        QCOMPARE(last(Channel::speed).value, 74.0);
        QCOMPARE(last(Channel::fuelRate).value, 15.0);
        QCOMPARE(last(Channel::distance).value, 10000.0);
        QCOMPARE(last(Channel::distance).goodFor.count(), 75.0);
        QVERIFY(std::abs(last(Channel::signal).value - 100.0 * 128 / 255) < 1e-9);
    }

    void airFlowCountsOfAPetrolEngineWithoutAFuelRate()
    {
        auto values = kUsual;
        values.erase(0x5E);
        ControlUnit petrol{.values = values};
        Drive drive{ObdConversation(ObdConversation::Part::asks, std::nullopt)};
        drive.run(petrol, 10.0);
        const auto rate = std::ranges::find(drive.values, Channel::fuelRate, &TimedValue::channel);
        QVERIFY(rate != drive.values.end());
        QVERIFY(std::abs(rate->value - 9.52 * 3600 / (14.7 * 745)) < 1e-9);

        values[0x51] = {4};
        ControlUnit diesel{.values = values};
        Drive other{ObdConversation(ObdConversation::Part::asks, std::nullopt)};
        other.run(diesel, 10.0);
        QCOMPARE(other.asked(0x10), 0);
        QVERIFY(std::ranges::find(other.values, Channel::fuelRate, &TimedValue::channel) == other.values.end());
        // Also where somebody else asks.
        ObdConversation listener(ObdConversation::Part::listens, FuelKind::diesel);
        std::vector<TimedValue> heard;
        QCOMPARE(listener.hear(said({4, 0x41, 0x10, 3, 0xB8}), Seconds(0), heard), Heard::nothing);
    }

    void waitIsWaitedForAndARefusalNotAskedAgain()
    {
        ObdConversation one(ObdConversation::Part::asks, std::nullopt);
        std::vector<TimedValue> out;
        QCOMPARE(one.next(Seconds(0))->data[2], std::uint8_t(0x00));
        QVERIFY(!one.next(Seconds(0.4)));
        one.hear(said({3, 0x7F, 0x01, 0x78}), Seconds(0.4), out);
        QVERIFY(!one.next(Seconds(4.0)));
        one.hear(said({6, 0x41, 0x00, 0x00, 0x08, 0, 0}), Seconds(4.1), out); // knows 0D
        for (int i = 1; i < 5; ++i) { // the other bitmaps are refused
            const auto question = one.next(Seconds(4.1 + i));
            QVERIFY(question);
            one.hear(said({3, 0x7F, 0x01, 0x12}), Seconds(4.15 + i), out);
        }
        QCOMPARE(one.next(Seconds(10))->data[2], std::uint8_t(0x0D));
        one.hear(said({3, 0x7F, 0x01, 0x12}), Seconds(10.1), out);
        QVERIFY(!one.next(Seconds(20)));
    }

    void silenceIsAskedAgainEverMoreSeldomWithBothKindsOfIds()
    {
        Drive drive{ObdConversation(ObdConversation::Part::asks, std::nullopt)};
        for (double t = 0; t < 40; t += 0.01)
            while (const auto question = drive.conversation.next(Seconds(t)))
                drive.questions.push_back({t, std::uint8_t(question->extended)});
        QVERIFY(drive.questions.size() >= 5 && drive.questions.size() <= 8);
        for (std::size_t i = 0; i < drive.questions.size(); ++i)
            QCOMPARE(int(drive.questions[i].second), int(i % 2));
        QVERIFY(std::abs(drive.questions[1].first - 2.5) < 0.05); // half a second of waiting, then two
        QVERIFY(std::abs(drive.questions[2].first - 7.0) < 0.05);

        ControlUnit late{.values = kUsual, .of29 = true};
        Drive of29{ObdConversation(ObdConversation::Part::asks, std::nullopt)};
        of29.run(late, 10.0);
        QVERIFY(of29.conversation.answered());
        QVERIFY(!of29.values.empty());
    }

    void whoOnlyListensSaysNothing()
    {
        ObdConversation one(ObdConversation::Part::listens, std::nullopt);
        std::vector<TimedValue> out;
        QCOMPARE(one.hear(said({0x10, 0x14, 0x49, 2, 1, 'A', 'B', 'C'}), Seconds(0), out), Heard::nothing);
        QCOMPARE(one.hear(said({3, 0x41, 0x0D, 0x4A}), Seconds(0), out), Heard::value);
        for (double t = 0; t < 20; t += 0.1)
            QVERIFY(!one.next(Seconds(t)));
    }

    // Where we ask, whoever begins a long message is let go on.
    void aFirstFrameIsAnsweredByAFlowControl()
    {
        ObdConversation one(ObdConversation::Part::asks, std::nullopt);
        std::vector<TimedValue> out;
        one.hear(said({0x10, 0x0A, 0x41, 0x2F, 0x80, 0x0D, 0x4A, 0x5E}, 0x7E9), Seconds(0), out);
        const auto reply = one.next(Seconds(0));
        QVERIFY(reply);
        QCOMPARE(reply->id, 0x7E1u);
        QCOMPARE(reply->data[0], std::uint8_t(0x30));
        // and several parameters in one answer are all heard
        QCOMPARE(one.hear(said({0x21, 0x01, 0x2C, 0x51, 0x01}, 0x7E9), Seconds(0.1), out), Heard::value);
        QCOMPARE(out.size(), std::size_t(3));
        QCOMPARE(out[2].value, 15.0);
    }

    void framesOfOthersAreNothingAndBrokenAnswersAreSaid()
    {
        ObdConversation one(ObdConversation::Part::listens, std::nullopt);
        std::vector<TimedValue> out;
        QCOMPARE(one.hear(said({3, 0x41, 0x0D, 0x4A}, 0x123), Seconds(0), out), Heard::nothing);
        QCOMPARE(one.hear(said({9, 0x41, 0x0D}), Seconds(0), out), Heard::garbled);
        QCOMPARE(one.hear(said({2, 0x41, 0x0D}), Seconds(0), out), Heard::garbled);
        QCOMPARE(one.hear(said({3, 0x41, 0x0C, 0x4A}), Seconds(0), out), Heard::nothing);
        QVERIFY(out.empty());
    }
};

UNDERMARK_TEST(ObdConversationTest)
#include "obd_conversation_test.moc"
