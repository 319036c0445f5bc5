// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whole sources: split anywhere, garbage among them, each kind by its word.
#include "engine/signals/source_decoder.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <random>

using namespace undermark;

namespace {

struct Decoded {
    std::vector<TimedValue> values;
    SourceCounts counts;
};

struct Recording {
    const char* source;
    std::string bytes;
    std::size_t values;
    long garbled;
};

const std::vector<Recording> kRecordings{
    {"candump:a,j1939",
     "(1.0) can0 18FEFC31#FF77FFFFFFFF00FF\r\nrubbish\n(2.0) can0 18FEF100#FF3417FCFF6800CF\n"
     "(3.5) can0 18FEF200#CA008A04C309E1FF\n(3.6) can0 18FEC100#9AA73B05795F1D00", 5, 1},
    {"candump:a", "(1.0) can0 7E8#03412F80\n(1.1) can0 7E8#03410D4A\n(1.2) can0 7E8#0941\n", 2, 1},
    {"asc:a,j1939", "base hex timestamps absolute\n 1.0 1 18FEFC31x Rx d 8 FF 77 FF FF FF FF FF FF\nxx\n", 1, 1},
    {"slcan:a,j1939", "\r\aT18FEFC318FF77FFFFFFFFFFFF\rz\rt7E8\r", 1, 1},
    {"nmea:a", "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\r\n$GP\r\n", 1, 1},
    {"lines:a", "t_s,signal,speed_kmh\n0,2.5,60\n1,2.4,\nboo\n2,2.3,61", 5, 1},
    {"lines:a", "2.5\n1.2,3.4\nx\n", 3, 1},
};

Decoded decode(const Recording& recording, const std::vector<std::string_view>& pieces)
{
    const SourceSpec spec = parseSourceSpec(recording.source).value();
    SourceDecoder decoder(spec.kind, frameRulesOf(spec, std::nullopt), SourceDecoder::Times::own);
    Decoded out;
    for (const std::string_view piece : pieces)
        decoder.takeBytes(piece, Seconds(100), out.values);
    decoder.finish(Seconds(100), out.values);
    out.counts = decoder.counts();
    return out;
}

} // namespace

class SourceDecoderTest : public QObject {
    Q_OBJECT

private slots:
    // Against the group's number and the ids of the answers, over random ids.
    void theFiltersOfABusPassWhatIsUnderstoodAndNothingElse()
    {
        const auto filters = filtersOf(frameRulesOf(*parseSourceSpec("can:can0"), {}));
        const auto passes = [&](std::uint32_t id, bool extended) {
            const CanFrame frame{.id = id, .extended = extended, .length = 8};
            return std::ranges::any_of(filters, [&](const CanFilter& filter) { return filter.passes(frame); });
        };
        const std::array<std::uint32_t, 5> groups{65276, 65266, 65265, 65248, 65217}; // SAE J1939-71
        std::mt19937 random(7);
        for (int i = 0; i < 20000; ++i) {
            std::uint32_t id = random() & kMostExtendedId;
            if (i % 2 == 0)
                id = (id & 0x1C0000FFu) | groups[random() % groups.size()] << 8;
            const bool ofGroup = std::ranges::find(groups, id >> 8 & 0x3FFFF) != groups.end();
            const bool answer = (id & 0x1FFFFF00u) == 0x18DAF100u;
            QCOMPARE(passes(id, true), ofGroup || answer);
        }
        for (std::uint32_t id = 0; id <= kMostStandardId; ++id)
            QCOMPARE(passes(id, false), id >= 0x7E8 && id <= 0x7EF);
        const auto one = parseFrameMap(R"({"speed_kmh":{"pgn":65265,"spn":84,"sa":11},"signal":{"id":"0x1F0","bits":"8|8@1+"}})", "", nullptr);
        QVERIFY(one);
        const auto two = filtersOf({*one, {}, {}});
        QCOMPARE(two.size(), std::size_t(2));
        const auto heard = [&](std::uint32_t id, bool extended) {
            return two[0].passes({.id = id, .extended = extended}) || two[1].passes({.id = id, .extended = extended});
        };
        QVERIFY(heard(0x18FEF10B, true) && heard(0x0CFEF10B, true) && heard(0x1F0, false));
        QVERIFY(!heard(0x18FEF100, true) && !heard(0x1F0, true) && !heard(0x1F1, false));
    }
    void theSameComesOutWhereverTheBytesWereSplit()
    {
        for (const Recording& recording : kRecordings) {
            const std::string_view all = recording.bytes;
            const Decoded whole = decode(recording, {all});
            QVERIFY2(whole.values.size() == recording.values, recording.source);
            QCOMPARE(whole.counts.garbled, recording.garbled);
            for (std::size_t i = 0; i <= all.size(); ++i)
                QVERIFY(decode(recording, {all.substr(0, i), all.substr(i)}).values == whole.values);
            std::vector<std::string_view> bytes;
            for (std::size_t i = 0; i < all.size(); ++i)
                bytes.push_back(all.substr(i, 1));
            const Decoded byByte = decode(recording, bytes);
            QVERIFY(byByte.values == whole.values);
            QCOMPARE(byByte.counts.heard, whole.counts.heard);
            QCOMPARE(byByte.counts.firstGarbled, whole.counts.firstGarbled);
        }
    }

    void ownTimesAreShiftedToTheReadersAndLiveOnesAreTheReaders()
    {
        const Decoded own = decode(kRecordings[0], {kRecordings[0].bytes});
        QCOMPARE(own.values[0].time.count(), 100.0);
        QCOMPARE(own.values[2].time.count(), 101.0);
        QCOMPARE(own.values[3].time.count(), 102.5);
        SourceDecoder live(SourceKind::lines, {}, SourceDecoder::Times::reader);
        std::vector<TimedValue> out;
        live.takeBytes("t_s,signal\n5,1\n500,2\n", Seconds(3), out);
        QCOMPARE(out[1].time.count(), 3.0);
    }

    // Whatever bytes: they are told once a line, the first kept, and what follows is read.
    void hostileBytesAreSaidAndDoNoHarm()
    {
        std::mt19937 random(17);
        std::string noise(100000, '\0');
        for (char& c : noise)
            c = static_cast<char>(random() % 256);
        for (const Recording& recording : kRecordings) {
            Recording noisy = recording;
            noisy.bytes = noise + "\n" + recording.bytes;
            const Decoded out = decode(noisy, {noisy.bytes});
            QVERIFY(out.values.size() >= recording.values);
            QVERIFY(out.counts.garbled > 100 && out.counts.garbled < 1500);
            QVERIFY(!out.counts.firstGarbled.empty() && out.counts.firstGarbled.size() <= 60);
            for (const char c : out.counts.firstGarbled)
                QVERIFY(c >= ' ' && c <= '~');
        }
    }

    void sourcesAreOneWord()
    {
        const auto spec = [](const char* text) { return parseSourceSpec(text).value(); };
        QCOMPARE(spec("can:can0,obd"), (SourceSpec{SourceKind::can, "can0", {}, FrameLanguage::obd, ""}));
        QCOMPARE(spec("slcan:/dev/ttyACM0@250,j1939"),
                 (SourceSpec{SourceKind::slcan, "/dev/ttyACM0", 250, FrameLanguage::j1939, ""}));
        QCOMPARE(spec("candump:-,dbc=my car.dbc"),
                 (SourceSpec{SourceKind::candump, "-", {}, FrameLanguage::dbc, "my car.dbc"}));
        QCOMPARE(spec("nmea:/dev/ttyUSB0@4800"), (SourceSpec{SourceKind::nmea, "/dev/ttyUSB0", 4800, {}, ""}));
        QCOMPARE(spec("asc:x@y"), (SourceSpec{SourceKind::asc, "x@y", {}, {}, ""}));
        QCOMPARE(spec("drive.csv"), (SourceSpec{SourceKind::lines, "drive.csv", {}, {}, ""}));
        QCOMPARE(spec("./a:b"), (SourceSpec{SourceKind::lines, "./a:b", {}, {}, ""}));
        for (const char* wrong : {"", "can:", "usb:x", "can:can0,elm", "candump:a,dbc=", "slcan:x@33", "nmea:x@0", "lines:@9600"})
            QCOMPARE(parseSourceSpec(wrong).error().code, ErrorCode::badInput);
    }

    void aMapSaysWhichSignalIsWhat()
    {
        const auto dbc = Dbc::parse("BO_ 496 A: 8 X\n SG_ Miles : 0|16@1+ (0.1,0) [0|0] \"mi\" X\n", "a.dbc").value();
        const auto rules = parseFrameMap(
            R"({"signal":{"id":"0x7F0","bits":"8|16@1+","factor":0.1,"offset":-5},
                "speed_kmh":{"pgn":65265,"spn":84,"sa":0},
                "distance_km":{"dbc":"A.Miles","factor":1.609344}})", "map.json", &dbc);
        QVERIFY2(rules, rules ? "" : describe(rules.error()).c_str());
        SourceDecoder decoder(SourceKind::candump, {*rules, {}, {}}, SourceDecoder::Times::own);
        std::vector<TimedValue> out;
        decoder.takeBytes("7F0#000A00\n18FEF100#FF3417FCFF6800CF\n18FEF101#FF3417FCFF6800CF\n1F0#6400\n", Seconds(0), out);
        QCOMPARE(out.size(), std::size_t(3));
        QVERIFY(out[0].channel == Channel::signal && out[0].value == 10 * 0.1 - 5);
        QVERIFY(out[1].channel == Channel::speed && out[1].value == 23.203125);
        QVERIFY(out[2].channel == Channel::distance && std::abs(out[2].value - 16.09344) < 1e-12);
    }

    void aWrongMapIsSaidWithItsPlace()
    {
        for (const char* wrong : {"", "[]", "{}", "{\"signal\":", R"({"level":{"id":1,"bits":"0|8@1+"}})", R"({"signal":5})",
                                  R"({"signal":{}})", R"({"signal":{"dbc":"A.B"}})", R"({"signal":{"id":1}})",
                                  R"({"signal":{"id":-1,"bits":"0|8@1+"}})", R"({"signal":{"id":"0x20000000","bits":"0|8@1+"}})",
                                  R"({"signal":{"id":1,"bits":"0|8"}})", R"({"signal":{"pgn":65265,"spn":1}})",
                                  R"({"signal":{"pgn":65265}})", R"({"signal":{"pgn":65265,"spn":84,"sa":256}})",
                                  R"({"signal":{"id":1,"bits":"0|8@1+","factor":"x"}})"}) {
            const auto rules = parseFrameMap(wrong, "map.json", nullptr);
            QVERIFY2(!rules, wrong);
            QCOMPARE(rules.error().code, ErrorCode::badInput);
            QCOMPARE(rules.error().where.file, std::string("map.json"));
        }
    }
};

UNDERMARK_TEST(SourceDecoderTest)
#include "source_decoder_test.moc"
