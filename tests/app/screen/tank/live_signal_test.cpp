// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/live_signal.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <sys/stat.h>

using namespace undermark;

namespace {

SourceOptions linesOf(const QString& file)
{
    SourceOptions options;
    options.sources = {"lines:" + file.toStdString()};
    return options;
}

// A pipe with a writer's end to close and open.
struct Pipe {
    Pipe()
    {
        path = folder.filePath("pipe");
        made = mkfifo(QFile::encodeName(path).constData(), 0600) == 0;
    }
    void write(const QByteArray& text) const
    {
        QFile writer(path);
        QVERIFY(writer.open(QIODevice::WriteOnly | QIODevice::Unbuffered));
        QCOMPARE(writer.write(text), text.size());
    }
    QTemporaryDir folder;
    QString path;
    bool made = false;
};

// A signal with a clock that stands until it is moved.
struct Clocked {
    Clocked()
    {
        signal.setClock([this] { return now; });
    }
    void take(double value, double after)
    {
        now += LiveSignal::Seconds(after);
        signal.take(Signal::of(value));
    }
    LiveSignal::Seconds now{1000};
    LiveSignal signal;
};

} // namespace

class LiveSignalTest : public QObject {
    Q_OBJECT
private slots:
    // Until its own sender is heard, what hangs on the wire is taken for a further tank's.
    void ofAFurtherTankItsOwnSenderIsHeard()
    {
        QTemporaryDir folder;
        QFile table(folder.filePath("both.csv"));
        QVERIFY(table.open(QIODevice::WriteOnly));
        table.write("t_s,signal,tank1_signal\n0,1.5,\n1,1.5,\n2,1.5,2.5\n3,1.5,2.5\n9,1.5,2.5\n");
        table.close();
        for (const std::size_t tank : {0, 1}) {
            LiveFeed feed;
            double now = 0;
            feed.setClock([&now] { return Seconds(now); });
            LiveSignal signal;
            signal.follow(feed);
            signal.setTank(tank);
            QVERIFY(feed.follow(linesOf(table.fileName())));
            for (; now < 1.6; now += 0.1)
                feed.look();
            QVERIFY(!signal.first().empty() && signal.first().back().signal == Signal::of(1.5));
            for (; now < 3.6; now += 0.1)
                feed.look();
            QVERIFY(!signal.first().empty());
            for (const TimedSignal& reading : signal.first())
                QCOMPARE(reading.signal.value(), tank == 0 ? 1.5 : 2.5);
        }
    }

    void numbersComeThroughAPipeThatManyMayWriteTo()
    {
        const Pipe pipe;
        QVERIFY(pipe.made);
        LiveFeed feed;
        LiveSignal live;
        live.follow(feed);
        QCOMPARE(live.state(), LiveSignal::State::none);
        QVERIFY(feed.follow(linesOf(pipe.path)));
        QCOMPARE(live.state(), LiveSignal::State::waiting);
        pipe.write("2.84\n2.8");
        QTRY_COMPARE(live.first().size(), 1u);
        QTest::qWait(400); // repeated by the samples that follow, it is still one reading
        QCOMPARE(live.first().size(), 1u);
        pipe.write("5\r\n"); // the rest of the line, by another writer
        QTRY_COMPARE(live.first().size(), 2u);
        QCOMPARE(live.first()[0].signal, Signal::of(2.84));
        QCOMPARE(live.first()[1].signal, Signal::of(2.85));
        QCOMPARE(live.state(), LiveSignal::State::live);
        QCOMPARE(live.refused(), 0);
    }
    // (What is no number: tests/engine/signals/line_values_test.cpp.)
    void whatIsNoReadingIsCountedAndShown()
    {
        const Pipe pipe;
        LiveFeed feed;
        LiveSignal live;
        live.follow(feed);
        QVERIFY(feed.follow(linesOf(pipe.path)));
        pipe.write("2.84 V\n2.84\nERR 4\n");
        QTRY_COMPARE(live.first().size(), 1u);
        QTRY_COMPARE(live.refused(), 2);
        QCOMPARE(live.firstRefused(), "2.84 V");
    }
    void twoSignalsNeedTwoNumbers()
    {
        LiveSignal live;
        live.setCount(2);
        live.take(Signal::of(1.5), Signal::of(2.5));
        live.take(Signal::of(1.5));
        QCOMPARE(live.first().size(), 1u);
        QCOMPARE(live.second()[0].signal, Signal::of(2.5));
        QCOMPARE(live.refused(), 1);
        live.setCount(1); // another tank: nothing of it is left
        QCOMPARE(live.first().size(), 0u);
        QCOMPARE(live.refused(), 0);
        live.take(Signal::of(1.5), Signal::of(2.5));
        QCOMPARE(live.first().size(), 0u);
        QCOMPARE(live.firstRefused(), "1.5,2.5");
    }
    void onlyTheLastReadingsAreKept()
    {
        Clocked fast;
        for (int i = 0; i < 100'000; ++i)
            fast.take(1.5, 0.001);
        QCOMPARE(fast.signal.first().size(), LiveSignal::kMost);
        Clocked usual;
        for (int i = 0; i < 100; ++i)
            usual.take(1.5, 1.0);
        QCOMPARE(usual.signal.gathered(), LiveSignal::kWindow);
        Clocked slow; // five seconds apart: the window holds too few, so older ones stay
        for (int i = 0; i < 100; ++i)
            slow.take(1.5, 5.0);
        QCOMPARE(slow.signal.first().size(), LiveSignal::kFewest);
    }
    void silenceIsToldAndEndsWhatWasGathered()
    {
        Clocked source;
        source.take(1.5, 1.0);
        source.now += LiveSignal::kSilentAfter;
        source.signal.look();
        QCOMPARE(source.signal.state(), LiveSignal::State::live);
        source.now += LiveSignal::Seconds(0.5);
        source.signal.look();
        QCOMPARE(source.signal.state(), LiveSignal::State::silent);
        QCOMPARE(source.signal.quietFor(), LiveSignal::kSilentAfter + LiveSignal::Seconds(0.5));
        QVERIFY(source.signal.first().empty());
        source.take(1.6, 1.0);
        QCOMPARE(source.signal.state(), LiveSignal::State::live);
        QCOMPARE(source.signal.first().size(), 1u);
    }
    void readingsBeforeASilenceNobodySawAreForgotten()
    {
        Clocked source;
        source.take(1.5, 1.0);
        source.take(1.6, 60.0);
        QCOMPARE(source.signal.first().size(), 1u);
        QCOMPARE(source.signal.first()[0].signal, Signal::of(1.6));
    }
    void aFileIsPlayedToItsEndWhichIsTold()
    {
        QTemporaryDir folder;
        QFile file(folder.filePath("drive.txt"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("1.5\nabc\n1.25"); // the last line without its end
        file.close();
        LiveFeed feed;
        LiveSignal live;
        live.follow(feed);
        QSignalSpy changes(&live, &LiveSignal::changed);
        QVERIFY(feed.follow(linesOf(file.fileName())));
        std::vector<double> heard;
        connect(&feed, &LiveFeed::sampled, this, [&] {
            heard.clear();
            for (const TimedSignal& reading : live.first())
                heard.push_back(reading.signal.value());
        });
        QTRY_COMPARE(live.state(), LiveSignal::State::ended);
        QCOMPARE(heard, (std::vector{1.5, 1.25}));
        QVERIFY(live.first().empty());
        QCOMPARE(live.refused(), 1);
        QVERIFY(changes.count() > 0);
    }
};

UNDERMARK_TEST(LiveSignalTest)
#include "live_signal_test.moc"
