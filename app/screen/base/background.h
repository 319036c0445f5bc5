// SPDX-License-Identifier: GPL-3.0-or-later
//
// Work that is too long for the thread of the screen.
//
// Guarantees (each has a test in tests/app/screen/base/background_test.cpp):
//  * the newest wins: what was asked before, and is not done yet, is never delivered;
//  * answers are delivered on the thread that this lives in, from its event loop.
//
//     m_background.ask([this, request]() -> Background::Delivery {   // request: plain data
//         auto answer = planned(request);                            // away from the screen
//         return [this, answer] { show(answer); };                   // back on it
//     });
#pragma once

#include <QObject>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

namespace undermark {

class Background : public QObject {
    Q_OBJECT

public:
    using Delivery = std::function<void()>;
    // Runs on a thread of its own: touches nothing but what it holds by value.
    using Work = std::function<Delivery()>;

    explicit Background(QObject* parent = nullptr);
    ~Background() override; // waits for what runs; delivers nothing more

    void ask(Work work);
    void forget(); // nothing that was asked is delivered any more
    bool busy() const { return m_busy; }

signals:
    void idle(); // what was asked last has been delivered

private:
    struct Asked {
        int number;
        Work work;
    };
    struct Done {
        int number;
        Delivery delivery;
    };
    Q_INVOKABLE void deliver();
    void run(const std::stop_token& stop);

    int m_newest = 0; // both only on the screen's thread
    bool m_busy = false;
    std::mutex m_mutex; // guards the two below
    std::optional<Asked> m_asked;
    std::optional<Done> m_done;
    std::condition_variable_any m_wake;
    std::jthread m_thread; // started when something is asked first; the last member, so that it ends first
};

} // namespace undermark
