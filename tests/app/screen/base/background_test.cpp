// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/background.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>
#include <future>

using namespace undermark;

class BackgroundTest : public QObject {
    Q_OBJECT
private slots:
    void theAnswerIsDeliveredOnTheThreadThatAsked()
    {
        Background background;
        QSignalSpy idle(&background, &Background::idle);
        std::thread::id worked;
        std::thread::id delivered;
        background.ask([&] {
            const auto here = std::this_thread::get_id();
            return [&, here] {
                worked = here;
                delivered = std::this_thread::get_id();
            };
        });
        QVERIFY(background.busy());
        QVERIFY(idle.wait());
        QVERIFY(!background.busy());
        QCOMPARE(delivered, std::this_thread::get_id());
        QVERIFY(worked != delivered);
    }
    void theNewestWins()
    {
        Background background;
        QSignalSpy idle(&background, &Background::idle);
        std::promise<void> gate;
        std::promise<void> started;
        QList<int> delivered;
        background.ask([&] {
            started.set_value();
            gate.get_future().wait();
            return [&] { delivered.append(0); };
        });
        started.get_future().wait(); // that one runs already
        for (const int number : {1, 2, 3})
            background.ask([&, number] { return [&, number] { delivered.append(number); }; });
        gate.set_value();
        QVERIFY(idle.wait());
        QCOMPARE(delivered, QList<int>{3});
        QCOMPARE(idle.size(), 1);
    }
    void whatIsForgottenIsNeverDelivered()
    {
        Background background;
        QSignalSpy idle(&background, &Background::idle);
        bool delivered = false;
        background.ask([&] { return [&] { delivered = true; }; });
        background.forget();
        QVERIFY(!background.busy());
        int other = 0;
        background.ask([&] { return [&] { other = 1; }; });
        QVERIFY(idle.wait());
        QCOMPARE(other, 1);
        QVERIFY(!delivered);
    }
    void theEndWaitsForWhatRunsAndDeliversNothing()
    {
        bool ran = false;
        bool delivered = false;
        {
            Background background;
            std::promise<void> started;
            background.ask([&] {
                started.set_value();
                std::this_thread::sleep_for(std::chrono::milliseconds(50));
                ran = true;
                return [&] { delivered = true; };
            });
            started.get_future().wait();
        }
        QVERIFY(ran);
        QCoreApplication::processEvents();
        QVERIFY(!delivered);
    }
    void anAnswerMayAskForMore()
    {
        Background background;
        QSignalSpy idle(&background, &Background::idle);
        int steps = 0;
        const Background::Work second = [&] { return [&] { ++steps; }; };
        background.ask([&] {
            return [&] {
                ++steps;
                background.ask(second);
            };
        });
        QVERIFY(idle.wait());
        QCOMPARE(steps, 2);
        QCOMPARE(idle.size(), 1);
    }
};

UNDERMARK_TEST(BackgroundTest)
#include "background_test.moc"
