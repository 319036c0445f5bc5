// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/background.h"

namespace undermark {

Background::Background(QObject* parent) : QObject(parent) {}

Background::~Background() = default;

void Background::ask(Work work)
{
    m_busy = true;
    {
        const std::lock_guard lock(m_mutex);
        m_asked = Asked{++m_newest, std::move(work)};
    }
    if (!m_thread.joinable())
        m_thread = std::jthread([this](const std::stop_token& stop) { run(stop); });
    m_wake.notify_one();
}

void Background::forget()
{
    m_busy = false;
    const std::lock_guard lock(m_mutex);
    ++m_newest;
    m_asked.reset();
}

void Background::run(const std::stop_token& stop)
{
    std::unique_lock lock(m_mutex);
    while (m_wake.wait(lock, stop, [this] { return m_asked.has_value(); }) && !stop.stop_requested()) {
        const Asked asked = std::move(*m_asked);
        m_asked.reset();
        lock.unlock();
        Delivery delivery = asked.work();
        lock.lock();
        m_done = Done{asked.number, std::move(delivery)};
        // By name: the answer itself goes through the mutex, which the thread sanitizer
        // sees; what Qt's queue does, it does not.
        QMetaObject::invokeMethod(this, "deliver", Qt::QueuedConnection);
    }
}

void Background::deliver()
{
    std::optional<Done> done;
    {
        const std::lock_guard lock(m_mutex);
        done.swap(m_done);
    }
    if (!done || done->number != m_newest)
        return;
    m_busy = false;
    done->delivery();
    if (!m_busy)
        emit idle();
}

} // namespace undermark
