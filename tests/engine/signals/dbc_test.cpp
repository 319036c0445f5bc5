// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/dbc.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <algorithm>

using namespace undermark;

namespace {

constexpr const char* kDbc = R"(VERSION ""

NS_ :
	CM_
	BA_DEF_
	SIG_VALTYPE_
	SIGTYPE_VALTYPE_
	BO_TX_BU_

BS_:
BU_: Cluster Gateway

BO_ 496 ExampleMessage: 8 Gateway
 SG_ Temperature : 0|12@0- (0.01,250) [229.52|270.47] "degK" Cluster
 SG_ AverageRadius : 13|10@0+ (1,0) [0|5] "m" Cluster

BO_ 2566846718 Fuel: 8 Vector__XXX
 SG_ Level : 8|8@1+ (0.4,0) [0|100] "%" Vector__XXX

BO_ 2566847488 FuelOfOne: 8 Vector__XXX
 SG_ Level : 8|8@1+ (0.4,0) [0|100] "%"  Vector__XXX

BO_ 100 Many: 8 Gateway
 SG_ Which M : 0|8@1+ (1,0) [0|0] "" Cluster
 SG_ Litres m0 : 8|16@1- (0.1,-5) [0|0] "L" Cluster
 SG_ Speed m1 : 8|16@1+ (0.01,0) [0|0] "km/h" Cluster
 SG_ Deep m2M : 8|8@1+ (1,0) [0|0] "" Cluster

BO_ 101 Floats: 8 Gateway
 SG_ Narrow : 0|32@1- (1,0) [0|0] "" Cluster
 SG_ Wide : 7|64@0- (2,1) [0|0] "" Cluster
 SG_ Signed : 15|16@0- (1E-1,+0.5) [ 0 | 1 ] "" Cluster,Gateway

CM_ SG_ 496 Temperature "of
BO_ 7 nothing: this is a text; ";
BA_ "X" BO_ 496 8;
VAL_ 496 AverageRadius 0 "none" 1 "one" ;
SIG_VALTYPE_ 101 Narrow : 1;
SIG_VALTYPE_ 101 Wide : 2;
)";

CanFrame sentBy(std::uint32_t id, bool extended, std::initializer_list<std::uint8_t> bytes)
{
    CanFrame frame{.id = id, .extended = extended, .length = static_cast<std::uint8_t>(bytes.size())};
    std::ranges::copy(bytes, frame.data.begin());
    return frame;
}

} // namespace

class DbcTest : public QObject {
    Q_OBJECT

    static double valueIn(const char* name, const CanFrame& frame)
    {
        const auto dbc = Dbc::parse(kDbc, "a.dbc");
        const auto signal = dbc ? dbc->signal(name) : tl::unexpected(dbc.error());
        if (!signal) {
            qWarning("%s", describe(signal.error()).c_str());
            return -999;
        }
        const auto value = signal->valueIn(frame);
        return value && signal->match.matches(frame) ? *value : -1000;
    }

private slots:
    // cantools README (MIT), where canmatrix agrees: 0x1F0 with 80 4A 0F.
    void signalsOfBothByteOrdersAreRead()
    {
        const CanFrame frame = sentBy(0x1F0, false, {0x80, 0x4A, 0x0F, 0, 0, 0, 0, 0});
        QVERIFY(std::abs(valueIn("ExampleMessage.Temperature", frame) - 255.92) < 1e-9);
        QCOMPARE(valueIn("ExampleMessage.AverageRadius", frame), 160.0);
    }

    // Worked out by hand.
    void signFactorAndOffsetCount()
    {
        QCOMPARE(valueIn("Many.Litres", sentBy(100, false, {0, 0xF6, 0xFF, 0, 0, 0, 0, 0})), -10 * 0.1 - 5);
        QCOMPARE(valueIn("Many.Litres", sentBy(100, false, {0, 0x0A, 0x00, 0, 0, 0, 0, 0})), 10 * 0.1 - 5);
        QCOMPARE(valueIn("Floats.Signed", sentBy(101, false, {0, 0xFF, 0xFE, 0, 0, 0, 0, 0})), -2 * 0.1 + 0.5);
    }

    void whatIsMultiplexedIsThereOnlyWithItsSelector()
    {
        QCOMPARE(valueIn("Many.Speed", sentBy(100, false, {1, 0x10, 0x27, 0, 0, 0, 0, 0})), 100.0);
        QCOMPARE(valueIn("Many.Speed", sentBy(100, false, {0, 0x10, 0x27, 0, 0, 0, 0, 0})), -1000.0);
        QCOMPARE(valueIn("Many.Which", sentBy(100, false, {7, 0, 0, 0, 0, 0, 0, 0})), 7.0);
    }

    // IEEE 754: 3FC00000 is 1.5, C000000000000000 is -2.
    void floatsAreRead()
    {
        QCOMPARE(valueIn("Floats.Narrow", sentBy(101, false, {0x00, 0x00, 0xC0, 0x3F, 0, 0, 0, 0})), 1.5);
        QCOMPARE(valueIn("Floats.Wide", sentBy(101, false, {0xC0, 0, 0, 0, 0, 0, 0, 0})), -3.0);
        QCOMPARE(valueIn("Floats.Narrow", sentBy(101, false, {0x00, 0x00, 0xC0, 0x7F, 0, 0, 0, 0})), -1000.0); // NaN
    }

    void extendedIdsCarryBit31AndTheNullAddressIsAnySender()
    {
        const auto level = {std::uint8_t(0xFF), std::uint8_t(0x77), std::uint8_t(0)};
        QCOMPARE(valueIn("Fuel.Level", sentBy(0x18FEF8FE, true, level)), 0x77 * 0.4);
        QCOMPARE(valueIn("Fuel.Level", sentBy(0x0CFEF831, true, level)), 0x77 * 0.4);
        QCOMPARE(valueIn("FuelOfOne.Level", sentBy(0x18FEFD00, true, level)), -1000.0);
        QCOMPARE(valueIn("FuelOfOne.Level", sentBy(0x18FEFC00, true, level)), 0x77 * 0.4);
    }

    void textsThatRunOverLinesAreSkipped()
    {
        const auto dbc = Dbc::parse(kDbc, "a.dbc");
        QVERIFY(dbc);
        QCOMPARE(dbc->entries().size(), std::size_t(11));
        QCOMPARE(dbc->entries()[0].unit, std::string("degK"));
        QCOMPARE(dbc->entries().back().name, std::string("Floats.Signed"));
    }

    void tooShortAFrameHoldsNoValue()
    {
        QCOMPARE(valueIn("Many.Speed", sentBy(100, false, {1, 0x10})), -1000.0);
        QCOMPARE(valueIn("Many.Speed", sentBy(100, false, {})), -1000.0);
    }

    void whatCannotBeReadIsAnErrorWithItsLine_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<long>("line");
        const QByteArray head = "VERSION \"\"\n\nBO_ 1 A: 8 X\n";
        QTest::newRow("no message") << QByteArray(" SG_ a : 0|8@1+ (1,0) [0|0] \"\" X") << 1L;
        QTest::newRow("no bits") << head + " SG_ a : (1,0) [0|0] \"\" X" << 4L;
        QTest::newRow("too many bits") << head + " SG_ a : 0|65@1+ (1,0) [0|0] \"\" X" << 4L;
        QTest::newRow("no order") << head + " SG_ a : 0|8@2+ (1,0) [0|0] \"\" X" << 4L;
        QTest::newRow("no factor") << head + "\n SG_ a : 0|8@1+ (x,0) [0|0] \"\" X" << 5L;
        QTest::newRow("no limits") << head + " SG_ a : 0|8@1+ (1,0) \"\" X" << 4L;
        QTest::newRow("no unit") << head + " SG_ a : 0|8@1+ (1,0) [0|0] X" << 4L;
        QTest::newRow("odd multiplexer") << head + " SG_ a q7 : 0|8@1+ (1,0) [0|0] \"\" X" << 4L;
        QTest::newRow("no id") << QByteArray("BO_ A: 8 X") << 1L;
        QTest::newRow("id too large") << QByteArray("BO_ 4096 A: 8 X") << 1L;
        QTest::newRow("text without end") << head + "CM_ \"never" << 4L;
        QTest::newRow("cut") << head + " SG_ a" << 4L;
        QTest::newRow("float of 16 bits") << head + " SG_ a : 0|16@1- (1,0) [0|0] \"\" X\nSIG_VALTYPE_ 1 a : 1;" << 5L;
    }
    void whatCannotBeReadIsAnErrorWithItsLine()
    {
        QFETCH(const QByteArray, text);
        QFETCH(const long, line);
        const auto dbc = Dbc::parse(text.toStdString(), "a.dbc");
        QVERIFY(!dbc);
        QCOMPARE(dbc.error().code, ErrorCode::badInput);
        QCOMPARE(dbc.error().where.line, line);
        QCOMPARE(dbc.error().where.file, std::string("a.dbc"));
        QVERIFY(!describe(dbc.error()).empty());
    }

    void signalsThatAreNotThereOrNestedAreRefused()
    {
        const auto dbc = Dbc::parse(kDbc, "a.dbc");
        QCOMPARE(dbc->signal("Many.Depth").error().code, ErrorCode::badInput);
        QVERIFY(describe(dbc->signal("Many.Depth").error()).find("Many.Depth") != std::string::npos);
        QVERIFY(!dbc->signal("Many.Deep"));
    }
};

UNDERMARK_TEST(DbcTest)
#include "dbc_test.moc"
