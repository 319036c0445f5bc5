// SPDX-License-Identifier: GPL-3.0-or-later
//
// The car's live sources in the event loop: looked at ten times a second, each sample passed
// on to all who listen.
//
// Guarantees (each has a test in tests/app/screen/base/live_feed_test.cpp):
//  * whoever listens hears every sample, in order;
//  * the end of recordings is told once;
//  * other devices in the place of those before go on in the same time: no clock jumps.
#pragma once

#include "app/car/live_sources.h"

#include <QObject>
#include <QTimer>
#include <functional>

namespace undermark {

class LiveFeed : public QObject {
    Q_OBJECT

public:
    explicit LiveFeed(QObject* parent = nullptr);

    // Instead of what was followed before. Errors: as LiveSources::open.
    Result<void> follow(const SourceOptions& options);
    // Nothing is followed any more.
    void leave();
    // The clock of live devices and of how fast recordings are played.
    void setClock(std::function<Seconds()> clock) { m_clock = std::move(clock); }
    void look(); // ten times a second by itself
    bool there() const { return m_sources.has_value(); }

    // Of the clock of all that follows: since devices were first opened, or what recordings
    // say. Only while there() is true, as is the quiet.
    Seconds now() const;
    // Since the newest value; nothing before the first.
    std::optional<Seconds> age(Channel channel) const;
    // Since any value, or the opening.
    Seconds quietFor() const;
    // Only while there() is true, too.
    const LiveSources& sources() const { return *m_sources; }

signals:
    void opened(); // others than before are followed, or none
    void sampled(const undermark::Sample& sample);
    void looked(); // after each look, sampled or not
    void ended();  // recordings only

private:
    std::function<Seconds()> m_clock;
    std::optional<LiveSources> m_sources;
    std::optional<Seconds> m_begin; // of now(), by the clock
    Seconds m_openedAt{};           // by now()
    Seconds m_newest{}; // time of the newest sample
    QTimer m_looks;
};

} // namespace undermark
