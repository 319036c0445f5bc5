// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/live_feed.h"
#include "tests/support/speaking_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

class LiveFeedTest : public QObject {
    Q_OBJECT
private slots:
    void whoeverListensHearsEverySampleAndTheEndOnce()
    {
        QTemporaryDir folder;
        QFile file(folder.filePath("drive.csv"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("t_s,signal,speed_kmh\n0,2.5,60\n1,2.4,61\n2,2.3,62\n");
        file.close();
        LiveFeed feed;
        Seconds now{};
        feed.setClock([&] { return now; });
        std::vector<double> first, second;
        connect(&feed, &LiveFeed::sampled, [&](const Sample& sample) { first.push_back(sample.signal->value()); });
        connect(&feed, &LiveFeed::sampled, [&](const Sample& sample) { second.push_back(sample.signal->value()); });
        QSignalSpy ended(&feed, &LiveFeed::ended);
        QVERIFY(!feed.there());
        SourceOptions options;
        options.sources = {file.fileName().toStdString()};
        QVERIFY(feed.follow(options));
        QVERIFY(feed.there());
        QVERIFY(!feed.age(Channel::signal));
        for (int i = 0; i < 50; ++i) {
            now += Seconds(0.1);
            feed.look();
        }
        QVERIFY(first.size() >= 20 && first == second);
        QVERIFY(std::ranges::is_sorted(first, std::greater<>()));
        QVERIFY(ended.count() >= 1);
        QVERIFY(feed.age(Channel::signal) && !feed.age(Channel::distance));
    }
    void howLongItIsQuietIsKnown()
    {
        LiveFeed feed;
        test::SpeakingCar car(feed);
        car.silence(5);
        QCOMPARE(feed.quietFor(), Seconds(5)); // since the opening
        car.drive(50, 10, 2.5);
        QCOMPARE(feed.quietFor(), Seconds(0));
        car.silence(28);
        QCOMPARE(feed.quietFor(), Seconds(28));
        QCOMPARE(*feed.age(Channel::signal), Seconds(28));
    }
    void otherDevicesGoOnInTheSameTime()
    {
        LiveFeed feed;
        test::SpeakingCar car(feed);
        std::vector<Seconds> times;
        connect(&feed, &LiveFeed::sampled, [&](const Sample& sample) { times.push_back(sample.time); });
        car.drive(50, 10, 2.5);
        car.connect();
        QCOMPARE(feed.quietFor(), Seconds(0)); // since the opening
        QVERIFY(!feed.age(Channel::signal));
        car.silence(3);
        QCOMPARE(feed.quietFor(), Seconds(3));
        feed.leave();
        car.connect();
        car.drive(50, 10, 2.4);
        QVERIFY(times.size() > 150 && std::ranges::is_sorted(times));
        QCOMPARE(feed.now(), Seconds(23));
    }
    void whatCannotBeOpenedIsRefused()
    {
        LiveFeed feed;
        SourceOptions options;
        options.sources = {"lines:/nonexistent/device"};
        const auto refused = feed.follow(options);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::fileAccess);
        options.mayBeAway = true; // it is waited for
        QVERIFY(feed.follow(options));
        QVERIFY(!feed.sources().told().front().there);
    }
};

UNDERMARK_TEST(LiveFeedTest)
#include "live_feed_test.moc"
