// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/live_sources.h"
#include "tests/support/pseudo_terminal.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <fstream>
#include <sys/stat.h>
#include <termios.h>

using namespace undermark;
using namespace undermark::test;

namespace {

std::string fileIn(const TestFolder& folder, const char* name, std::string_view text)
{
    const auto file = folder.path / name;
    std::ofstream(file, std::ios::binary) << text;
    return file.string();
}

std::vector<Sample> samplesUntil(LiveSources& sources, double until, double step = 0.1)
{
    std::vector<Sample> samples;
    for (double now = sources.now().count(); now <= until; now += step) {
        sources.take(Seconds(now));
        while (const auto sample = sources.next())
            samples.push_back(*sample);
    }
    return samples;
}

} // namespace

class LiveSourcesTest : public QObject {
    Q_OBJECT

private slots:
    void aRecordingIsPlayedByTheClockGivenAndThenHasEnded()
    {
        const TestFolder folder;
        const auto file = fileIn(folder, "a.log", "(100.0) can0 18FEFC31#FF77FFFFFFFFFFFF\n(101.0) can0 18FEFC31#FF76FFFFFFFFFFFF\n"
                                                  "(160.0) can0 18FEFC31#FF75FFFFFFFFFFFF\n");
        auto sources = LiveSources::open({{"candump:" + file + ",j1939"}, {}, {}});
        QVERIFY2(sources, sources ? "" : describe(sources.error()).c_str());
        QVERIFY(sources->recorded());
        const auto first = samplesUntil(*sources, 30);
        QVERIFY(!sources->ended());
        QCOMPARE(first.front().signal->value(), 47.6);
        QCOMPARE(sources->now().count() >= 29.9, true);
        samplesUntil(*sources, 61);
        QVERIFY(sources->ended());
        QCOMPARE(sources->told().front().counts.values, 3L);
    }

    void twoSourcesAreJoinedByTime()
    {
        const TestFolder folder;
        const auto level = fileIn(folder, "level.csv", "t_s,signal\n0,50\n5,40\n10,30\n");
        const auto speed = fileIn(folder, "speed.log", "(7.0) can0 7E8#03410D3C\n(12.0) can0 7E8#03410D46\n(17.0) can0 7E8#03410D50\n");
        auto sources = LiveSources::open({{level, "candump:" + speed}, {}, {}});
        QVERIFY(sources);
        const auto samples = samplesUntil(*sources, 20);
        for (const Sample& sample : samples) {
            if (sample.signal && sample.speed) // 60 km/h with 50, 70 with 40, 80 with 30
                QCOMPARE(sample.speed->kmPerHour(), 110.0 - sample.signal->value());
        }
        QVERIFY(samples.size() > 50);
    }

    // However fast they are played, and however unlike the parts in which they are read.
    void longRecordingsStayTogether()
    {
        const TestFolder folder;
        std::string longLines = "t_s,signal,speed_kmh,distance_km\n", shortLines = "t_s,signal\n";
        for (int t = 0; t < 4000; ++t) {
            longLines += std::to_string(t) + ",50.000000,90.000000," + std::to_string(t * 0.025) + '\n';
            shortLines += std::to_string(t) + ",7\n";
        }
        SourceOptions options;
        options.sources = {fileIn(folder, "own.csv", longLines)};
        options.tanks = {"aux"};
        options.ofTanks = {{"aux", fileIn(folder, "aux.csv", shortLines)}};
        auto sources = LiveSources::open(options);
        QVERIFY(sources);
        double before = -1;
        long both = 0;
        for (double now = 0; !sources->ended() && now < 1e6; now += 1000) {
            sources->take(Seconds(now));
            while (const auto sample = sources->next()) {
                QVERIFY(sample->time.count() > before);
                before = sample->time.count();
                both += sample->signal && sample->further[0];
                QVERIFY(!sample->further[0] || sample->further[0]->value() == 7);
                QVERIFY(!sample->signal || sample->signal->value() == 50);
            }
        }
        QVERIFY(both > 39900);
    }

    void whatAFurtherTanksSourceSaysOfALevelIsThatTanks()
    {
        const TestFolder folder;
        const auto file = fileIn(folder, "aux.csv", "t_s,signal,signal2,speed_kmh\n0,2,3,60\n1,2,3,60\n");
        LiveSource kept{file, {}, {}, "b"};
        SourceOptions options;
        options.kept = {kept};
        options.tanks = {"a", "b"};
        auto sources = LiveSources::open(options);
        QVERIFY(sources);
        const auto samples = samplesUntil(*sources, 2);
        QVERIFY(!samples.empty());
        const Sample& sample = samples.front();
        QVERIFY(!sample.signal && !sample.signal2 && !sample.further[0] && sample.speed);
        QCOMPARE(*sample.get(Channel::tank2Signal), 2.0);
        QCOMPARE(*sample.get(Channel::tank2Signal2), 3.0);
        options.tanks = {"a"};
        QVERIFY(!LiveSources::open(options)); // taken off since
    }

    void aPipeMayBeOpenedAndClosedByAnyNumberOfWriters()
    {
        const TestFolder folder;
        const std::string pipe = (folder.path / "pipe").string();
        QCOMPARE(mkfifo(pipe.c_str(), 0600), 0);
        auto sources = LiveSources::open({{"lines:" + pipe}, {}, {}});
        QVERIFY(sources);
        QVERIFY(!sources->recorded());
        for (const char* text : {"2.5\n", "2.", "4\n"})
            std::ofstream(pipe) << text;
        const auto samples = samplesUntil(*sources, 1);
        QCOMPARE(samples.back().signal->value(), 2.4);
        QVERIFY(!sources->ended());
    }

    void anAdapterIsOpenedReadAndAskedThrough()
    {
        const PseudoTerminal line;
        if (line.name().empty())
            QSKIP("there are no pseudo-terminals here");
        auto sources = LiveSources::open({{"slcan:" + line.name() + "@250,obd"}, {}, {}});
        QVERIFY(sources);
        sources->take(Seconds(0));
        std::string said = line.read(1000);
        said += line.read(50);
        QVERIFY2(said.starts_with("C\rS5\rO\r"), said.c_str());
        QVERIFY2(said.find("t7DF80201000000000000\r") != std::string::npos, said.c_str());
        QVERIFY(line.write("t7E880641000000000100000000\r")); // too long: garbled, and said
        QVERIFY(line.write("t7E8403410D4A\r"));
        sources->take(Seconds(0.5));
        const auto samples = samplesUntil(*sources, 1);
        QCOMPARE(samples.back().speed->kmPerHour(), 74.0);
        QCOMPARE(sources->told().front().counts.garbled, 1L);
    }

    void whatIsUnpluggedIsTriedAgainEverMoreSeldom()
    {
        PseudoTerminal line;
        if (line.name().empty())
            QSKIP("there are no pseudo-terminals here");
        const TestFolder folder;
        const auto link = folder.path / "tty";
        std::filesystem::create_symlink(line.name(), link);
        auto sources = LiveSources::open({{"lines:" + link.string() + "@9600"}, {}, {}});
        QVERIFY2(sources, sources ? "" : describe(sources.error()).c_str());
        QVERIFY(line.write("2.5\n"));
        QCOMPARE(samplesUntil(*sources, 1).back().signal->value(), 2.5);
        line.unplug();
        std::filesystem::remove(link);
        samplesUntil(*sources, 3);
        QVERIFY(!sources->told().front().there);
        QCOMPARE(sources->told().front().lost, 1);
        QVERIFY(!sources->ended());
        const PseudoTerminal again; // plugged in 3 s after it was lost, seen 8 s after (1 + 2 + 5)
        std::filesystem::create_symlink(again.name(), link);
        samplesUntil(*sources, 4);
        QVERIFY(!sources->told().front().there);
        samplesUntil(*sources, 10);
        QVERIFY(sources->told().front().there);
        QVERIFY(again.write("2.4\n"));
        QCOMPARE(samplesUntil(*sources, 11).back().signal->value(), 2.4);
    }

    void aLineIsPutBackAsItWas()
    {
        const PseudoTerminal line;
        if (line.name().empty())
            QSKIP("there are no pseudo-terminals here");
        const int other = ::open(line.name().c_str(), O_RDWR | O_NOCTTY);
        termios before{}, during{}, after{};
        QCOMPARE(tcgetattr(other, &before), 0);
        {
            auto sources = LiveSources::open({{"lines:" + line.name() + "@9600"}, {}, {}});
            QVERIFY(sources);
            QCOMPARE(tcgetattr(other, &during), 0);
        }
        QCOMPARE(tcgetattr(other, &after), 0);
        ::close(other);
        QVERIFY((during.c_lflag & ICANON) == 0 && cfgetispeed(&during) == B9600);
        QVERIFY(before.c_lflag == after.c_lflag && before.c_iflag == after.c_iflag && before.c_cflag == after.c_cflag);
    }

    void whatCannotBeOpenedOrUnderstoodIsSaid()
    {
        const TestFolder folder;
        const auto log = fileIn(folder, "a.log", "");
        const auto dbc = fileIn(folder, "a.dbc", "BO_ 1 A: 8 X\n SG_ L : 0|8@1+ (1,0) [0|0] \"\" X\n");
        const auto broken = fileIn(folder, "b.dbc", "BO_ one A: 8 X\n");
        const auto map = fileIn(folder, "m.json", R"({"signal":{"dbc":"A.L"}})");
        const auto errorOf = [](const SourceOptions& options) {
            const auto sources = LiveSources::open(options);
            return sources ? ErrorCode::internal : sources.error().code;
        };
        QCOMPARE(errorOf({{"lines:" + (folder.path / "none").string()}, {}, {}}), ErrorCode::fileAccess);
        QCOMPARE(errorOf({{"lines:" + folder.path.string()}, {}, {}}), ErrorCode::fileAccess);
        QCOMPARE(errorOf({{"can:nosuchbus"}, {}, {}}), ErrorCode::fileAccess);
        QCOMPARE(errorOf({{"candump:" + log + ",dbc=" + dbc}, {}, {}}), ErrorCode::badInput); // no map
        QCOMPARE(errorOf({{"candump:" + log + ",dbc=" + broken}, map, {}}), ErrorCode::badInput);
        QCOMPARE(errorOf({{"candump:" + log + ",j1939"}, map, {}}), ErrorCode::badInput); // no DBC file
        QCOMPARE(errorOf({{"candump:" + log + ",dbc=" + dbc}, map, {}}), ErrorCode::internal); // is fine
    }
};

UNDERMARK_TEST(LiveSourcesTest)
#include "live_sources_test.moc"
