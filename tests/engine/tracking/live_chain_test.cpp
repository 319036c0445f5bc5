// SPDX-License-Identifier: GPL-3.0-or-later
//
// From a source's bytes to the level, as both programs chain it: decoded, joined, followed.
#include "engine/signals/joiner.h"
#include "engine/signals/source_decoder.h"
#include "engine/tracking/gauge_tracker.h"
#include "tests/support/allocations.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

// The level of a tank of 50 L in %, in steps of 0.4, from 40 L at 90 km/h and 10 L/100 km; it swings.
int stepsAt(int tenths)
{
    const double litres = 40 - 0.0025 * tenths / 10;
    return int(std::lround((litres + std::sin(0.2 * tenths)) * 2 / 0.4));
}

std::string j1939At(int tenths, const char* format)
{
    char bytes[200];
    std::snprintf(bytes, sizeof bytes, format, tenths / 10, tenths % 10, unsigned(stepsAt(tenths)), tenths / 10, tenths % 10);
    return bytes;
}

// A tenth of a second of a drive in each language: what the bus says, other traffic among it.
std::string candumpAt(int tenths)
{
    return j1939At(tenths, "(%d.%d00000) can0 18FEFC31#FF%02XFFFFFFFFFFFF\n(%d.%d00000) can0 18FEF100#FF005AFFFFFFFFFF\n"
                           "(0.0) can0 18FF1234#1122334455667788\n");
}
std::string ascAt(int tenths)
{
    return j1939At(tenths, " %d.%d 1 18FEFC31x Rx d 8 FF %02X FF FF FF FF FF FF\n %d.%d 1 18FEF100x Rx d 8 FF 00 5A FF FF FF FF FF\n");
}
std::string slcanAt(int tenths)
{
    char bytes[100];
    std::snprintf(bytes, sizeof bytes, "T18FEFC318FF%02XFFFFFFFFFFFF\rT18FEF1008FF005AFFFFFFFFFF\rT18FF12348112233445566\r",
                  unsigned(stepsAt(tenths)));
    return bytes;
}
// Answers of a car that another one asks: level (PID 2F, 100/255 %) and speed (0D).
std::string obdAt(int tenths)
{
    char bytes[100];
    std::snprintf(bytes, sizeof bytes, "t7E8803412F%02XAAAAAAAA\rt7E8803410D5AAAAAAAAA\r",
                  unsigned(std::lround(stepsAt(tenths) * 0.4 * 2.55)));
    return bytes;
}
std::string tableAt(int tenths)
{
    char bytes[100];
    std::snprintf(bytes, sizeof bytes, "%s%.1f,90\n", tenths == 0 ? "signal,speed_kmh\n" : "", stepsAt(tenths) * 0.4);
    return bytes;
}

GaugeTracker trackerOfPercent()
{
    std::vector<CalibrationPoint> points;
    for (int litres = 0; litres <= 50; litres += 10) {
        CalibrationPoint point;
        point.added = Volume::fromLitres(litres);
        point.signal = Signal::of(2 * litres);
        points.push_back(point);
    }
    TrackerSettings settings;
    settings.highest = Volume::fromLitres(50);
    settings.rate = {Consumption::fromLitresPer100Km(10), Consumption::fromLitresPer100Km(1)};
    return {*Gauge::calibrate(points, Sender{}), settings};
}

} // namespace

class LiveChainTest : public QObject {
    Q_OBJECT
private slots:
    void noByteValueOrSampleAllocates_data()
    {
        QTest::addColumn<QString>("source");
        QTest::addColumn<int>("language");
        QTest::newRow("candump") << "candump:x,j1939" << 0;
        QTest::newRow("asc") << "asc:x,j1939" << 1;
        QTest::newRow("slcan") << "slcan:x,j1939" << 2;
        QTest::newRow("obd") << "slcan:x" << 3;
        QTest::newRow("lines") << "lines:x" << 4;
    }
    // After a minute in which buffers have grown to their size: twenty-one of driving.
    void noByteValueOrSampleAllocates()
    {
        QFETCH(QString, source);
        QFETCH(int, language);
        const auto said = std::array{candumpAt, ascAt, slcanAt, obdAt, tableAt}[std::size_t(language)];
        const SourceSpec spec = parseSourceSpec(source.toStdString()).value();
        SourceDecoder decoder(spec.kind, frameRulesOf(spec, FuelKind::diesel), SourceDecoder::Times::reader);
        Joiner joiner;
        GaugeTracker tracker = trackerOfPercent();
        std::vector<TimedValue> values;
        long samples = 0, allocated = 0;
        constexpr int kGrown = 600, kAll = 13'200; // tenths of a second
        if (language == 1)
            decoder.takeBytes("base hex timestamps absolute\n", Seconds(), values);
        for (int tenths = 0; tenths < kAll; ++tenths) {
            const std::string bytes = said(tenths); // is the test's own
            const long before = g_allocations;
            decoder.takeBytes(bytes, Seconds(0.1 * tenths), values);
            for (const TimedValue& value : values) {
                while (const auto sample = joiner.next(value.time)) {
                    tracker.add(*sample);
                    ++samples;
                }
                joiner.put(value);
            }
            values.clear();
            allocated += tenths < kGrown ? 0 : g_allocations - before;
        }
        QVERIFY2(samples > 13'000, qPrintable(QString::number(samples)));
        QCOMPARE(decoder.counts().garbled, language == 2 ? 13'200L : 0L); // (a frame cut short is told, too)
        QVERIFY(std::abs(tracker.level().state().level.mean.litres() - (40 - 3.3)) < 0.5);
        QCOMPARE(allocated, 0L);
    }
};

UNDERMARK_TEST(LiveChainTest)
#include "live_chain_test.moc"
