// SPDX-License-Identifier: GPL-3.0-or-later
//
// The distance of a drive from the frames of its bus, against the way that the wheels went.
// No open drive at hand has a wheel's own count, so the drives are made here, and harsher than
// a bus: a speed that is wrong by 1 % from frame to frame and told in 1/256 km/h, frames lost
// one by one and for seconds, a reader's clock that trembles, 0.1 s to 1 s from frame to frame.
// Asked of it: 1 % of the wheels' count, which is what a law for odometers allows several times
// over (UN Regulation 39: 4 %, from memory).
#include "engine/signals/joiner.h"
#include "engine/signals/source_decoder.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <algorithm>
#include <cmath>
#include <random>

using namespace undermark;

namespace {

struct WheelBus {
    double periodS = 0.1;
    double dash = 1.0;      // what its speed is of the true one
    double countKm = 0.0;   // steps of its count of the way, told once a second; 0: none
    double lost = 0.0;      // share of frames, one by one
    double jitterS = 0.0;   // of the reader's clock, one sd
    bool silences = false;  // for some seconds, now and then
};

std::string slcanLine(const char* id, double value, int bytes, int before)
{
    QByteArray data(8, char(0xFF));
    const auto raw = static_cast<std::uint32_t>(std::lround(value));
    for (int i = 0; i < bytes; ++i)
        data[before + i] = char(raw >> (8 * i) & 0xFF);
    return "T" + std::string(id) + "8" + data.toHex().toUpper().toStdString() + "\r";
}

// Town and motorway: a wish of speed for 20 s to 3 min, at most 1.5 m/s² towards it.
class WheeledDrive {
public:
    explicit WheeledDrive(unsigned seed) : m_random(seed) {}
    void step(double s)
    {
        if ((m_left -= s) < 0.0) {
            m_left = 20.0 + 160.0 * m_any(m_random);
            m_wish = m_any(m_random) < 0.25 ? 0.0 : 130.0 * m_any(m_random) / 3.6;
        }
        const double before = m_speed;
        m_speed += std::clamp(m_wish - m_speed, -1.5 * s, 1.5 * s);
        m_way += 0.5 * (before + m_speed) * s;
    }
    double kmh() const { return 3.6 * m_speed; }
    double km() const { return m_way / 1000.0; }

private:
    std::mt19937 m_random;
    std::uniform_real_distribution<double> m_any{0.0, 1.0};
    double m_left = 0.0, m_wish = 0.0, m_speed = 0.0, m_way = 0.0; // SI
};

// Of the distance that an hour's samples tell at the end, against the way: a ratio.
double toldOfTrue(const WheelBus& bus, unsigned seed)
{
    constexpr double kStepS = 0.01, kHourS = 3600.0;
    const SourceSpec spec = parseSourceSpec("slcan:a,j1939").value();
    SourceDecoder decoder(spec.kind, frameRulesOf(spec, std::nullopt), SourceDecoder::Times::reader);
    Joiner joiner;
    WheeledDrive drive(seed);
    std::mt19937 random(seed + 1000);
    std::normal_distribution<double> bell;
    std::uniform_real_distribution<double> any(0.0, 1.0);
    std::vector<TimedValue> values;
    double nextSpeedS = 0.0, nextCountS = 0.0, silentUntilS = 0.0, clockS = 0.0;
    std::optional<Distance> told;
    const auto hear = [&](const std::string& said, double nowS) {
        if (nowS < silentUntilS || any(random) < bus.lost)
            return;
        clockS = std::max(clockS, nowS + 0.05 + bus.jitterS * bell(random)); // (a reader's never goes back)
        values.clear();
        decoder.takeBytes(said, Seconds(clockS), values);
        for (const TimedValue& value : values) {
            while (const auto sample = joiner.next(value.time))
                told = sample->distance ? sample->distance : told;
            joiner.put(value);
        }
    };
    for (double nowS = 0.0; nowS < kHourS; nowS += kStepS) {
        drive.step(kStepS);
        if (bus.silences && nowS > silentUntilS + 300.0 * any(random) + 60.0)
            silentUntilS = nowS + 1.5;
        if (nowS >= nextSpeedS) {
            nextSpeedS += bus.periodS;
            hear(slcanLine("18FEF100", 256.0 * std::max(0.0, drive.kmh() * bus.dash * (1.0 + 0.01 * bell(random))), 2, 1), nowS);
        }
        if (bus.countKm > 0.0 && nowS >= nextCountS) {
            nextCountS += 1.0;
            const double steps = std::floor((123456.7 + drive.km()) / bus.countKm);
            hear(bus.countKm > 0.1 ? slcanLine("18FEE000", steps, 4, 4) : slcanLine("18FEC100", steps, 4, 0), nowS);
        }
    }
    return told->km() / drive.km();
}

} // namespace

class WheelDistanceTest : public QObject {
    Q_OBJECT

private slots:
    void theWayIsTheWheelsWithinOnePerCent_data()
    {
        QTest::addColumn<WheelBus>("bus");
        QTest::newRow("speed ten times a second") << WheelBus{.jitterS = 0.02};
        QTest::newRow("speed, frames lost") << WheelBus{.lost = 0.1, .jitterS = 0.03};
        QTest::newRow("speed, silences") << WheelBus{.lost = 0.05, .jitterS = 0.03, .silences = true};
        QTest::newRow("speed twice a second") << WheelBus{.periodS = 0.5, .lost = 0.05, .jitterS = 0.05};
        QTest::newRow("speed once a second") << WheelBus{.periodS = 1.0, .jitterS = 0.05};
        QTest::newRow("a dash 5 % ahead, its count in 125 m") << WheelBus{.dash = 1.05, .countKm = 0.125, .lost = 0.1, .jitterS = 0.03};
        QTest::newRow("a dash 5 % ahead, its count in 5 m")
            << WheelBus{.dash = 1.05, .countKm = 0.005, .lost = 0.1, .jitterS = 0.03, .silences = true};
        QTest::newRow("a dash 5 % behind, its count in 125 m")
            << WheelBus{.periodS = 1.0, .dash = 0.95, .countKm = 0.125, .lost = 0.2, .jitterS = 0.1, .silences = true};
    }
    void theWayIsTheWheelsWithinOnePerCent()
    {
        QFETCH(WheelBus, bus);
        double worst = 0.0;
        for (unsigned seed = 1; seed <= 5; ++seed)
            worst = std::max(worst, std::abs(toldOfTrue(bus, seed) - 1.0));
        qInfo("at most %.3f %% from the wheels'", 100.0 * worst);
        QVERIFY2(worst < 0.01, qPrintable(QString::number(worst)));
    }
};

UNDERMARK_TEST(WheelDistanceTest)
#include "wheel_distance_test.moc"
