// SPDX-License-Identifier: GPL-3.0-or-later
//
// Generated DBC files and frames, read by us and by python3-canmatrix: the same numbers, and
// the same signals there and not there. Skipped where that package is missing.
#include "engine/base/format.h"
#include "engine/signals/dbc.h"
#include "tests/support/test_main.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <fstream>
#include <map>
#include <random>

using namespace undermark;

namespace {

constexpr int kMessages = 150, kFramesOfEach = 8;

// Prints "MESSAGE SIGNAL VALUE" for each frame of the second file, an empty line after it.
constexpr const char* kReader = R"(
import sys, canmatrix.formats
with open(sys.argv[1]) as f:
    matrix = list(canmatrix.formats.loads(f.read(), 'dbc').values())[0]
for line in open(sys.argv[2]):
    name, data = line.split()
    for key, value in matrix.frame_by_name(name).decode(bytes.fromhex(data)).items():
        print(name + '.' + key, '%.17g' % float(value.phys_value))
    print()
)";

struct Generated {
    std::mt19937 random{20261127};
    std::string dbc = "VERSION \"\"\n\nBU_: X\n\n", types, frames;
    std::vector<CanFrame> sent = {};

    unsigned upTo(unsigned most) { return std::uniform_int_distribution<unsigned>(0, most)(random); }

    void signal(int number, const std::string& multiplexed, unsigned id)
    {
        const bool isFloat = multiplexed.empty() && upTo(9) == 0;
        const unsigned length = isFloat ? 32 : 1 + upTo(multiplexed.empty() ? 63 : 31);
        // The place counted as the frame's bits are sent; the first byte is the selector's.
        const unsigned first = multiplexed.empty() ? 0 : 8, place = first + upTo(64 - length - first);
        const bool low = upTo(1) == 1;
        const unsigned start = low ? place : place / 8 * 8 + 7 - place % 8;
        const bool isSigned = isFloat || upTo(1) == 1;
        dbc += format(" SG_ S%d%s : %u|%u@%d%c (%g,%g) [0|0] \"x\" X\n", number, multiplexed.c_str(), start, length,
                      int(low), isSigned ? '-' : '+', isFloat ? 1.0 : 0.05 * (1 + upTo(40)),
                      isFloat ? 0.0 : 5.0 * upTo(20) - 50.0);
        if (isFloat)
            types += format("SIG_VALTYPE_ %u S%d : 1;\n", id, number);
    }

    void message(int number)
    {
        const bool extended = upTo(1) == 1, multiplexed = upTo(2) == 0;
        const unsigned id = extended ? 0x18000000u + unsigned(number) * 256 : 0x100u + unsigned(number);
        const unsigned written = extended ? id | 0x80000000u : id;
        const std::string name = format("M%d", number);
        dbc += format("BO_ %u %s: 8 X\n", written, name.c_str());
        if (multiplexed)
            dbc += " SG_ Which M : 0|2@1+ (1,0) [0|0] \"\" X\n";
        for (int i = 0; i < 4; ++i)
            signal(i, multiplexed ? format(" m%u", upTo(3)) : "", written);
        dbc += '\n';
        for (int i = 0; i < kFramesOfEach; ++i) {
            CanFrame frame{.id = id, .extended = extended, .length = 8};
            frames += name + ' ';
            for (std::uint8_t& byte : frame.data) {
                byte = std::uint8_t(upTo(255));
                frames += format("%02X", byte);
            }
            frames += '\n';
            sent.push_back(frame);
        }
    }
};

} // namespace

class DbcOracleTest : public QObject {
    Q_OBJECT

    static std::vector<std::map<std::string, double>> readByOther(const Generated& made)
    {
        const QTemporaryDir folder;
        const std::string dbc = folder.filePath("a.dbc").toStdString(), frames = folder.filePath("frames").toStdString();
        std::ofstream(dbc) << made.dbc << made.types;
        std::ofstream(frames) << made.frames;
        QProcess python;
        python.start("/usr/bin/python3", {"-c", kReader, QString::fromStdString(dbc), QString::fromStdString(frames)});
        if (!python.waitForFinished(120000) || python.exitCode() != 0)
            return {};
        std::vector<std::map<std::string, double>> read(1);
        for (const QByteArray& line : python.readAllStandardOutput().split('\n')) {
            if (line.isEmpty())
                read.emplace_back();
            else if (const auto parts = line.split(' '); parts.size() == 2)
                read.back()[parts[0].toStdString()] = parts[1].toDouble();
        }
        return read;
    }

private slots:
    void anIndependentReaderAgrees()
    {
        Generated made;
        for (int i = 0; i < kMessages; ++i)
            made.message(i);
        const auto other = readByOther(made);
        if (other.empty())
            QSKIP("python3 with canmatrix is not installed");
        const auto dbc = Dbc::parse(made.dbc + made.types, "a.dbc");
        QVERIFY2(dbc, dbc ? "" : describe(dbc.error()).c_str());
        std::size_t compared = 0;
        for (std::size_t i = 0; i < made.sent.size(); ++i) {
            std::map<std::string, double> ours;
            for (const Dbc::Entry& entry : dbc->entries()) {
                if (!entry.signal.match.matches(made.sent[i]))
                    continue;
                if (const auto value = entry.signal.valueIn(made.sent[i]))
                    ours[entry.name] = *value;
            }
            for (const auto& [name, value] : other[i]) {
                if (!std::isfinite(value)) { // a float that is no number: no value to us
                    QVERIFY(!ours.contains(name));
                    continue;
                }
                QVERIFY2(ours.contains(name), name.c_str());
                // 64 bits are more than a double holds exactly, also in the other's decimals.
                QVERIFY2(std::abs(ours[name] - value) <= 1e-12 * std::abs(value) + 1e-9, name.c_str());
                ours.erase(name);
                ++compared;
            }
            QVERIFY2(ours.empty(), ours.empty() ? "" : ours.begin()->first.c_str());
        }
        QVERIFY(compared > 3000);
    }
};

UNDERMARK_TEST(DbcOracleTest)
#include "dbc_oracle_test.moc"
