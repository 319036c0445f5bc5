// SPDX-License-Identifier: GPL-3.0-or-later
//
// A car that speaks through a pipe, at a clock that stands until it is moved: what a test
// says in a moment is a drive of hours to who listens.
#pragma once

#include "app/screen/base/live_feed.h"

#include <QTemporaryDir>
#include <fstream>
#include <sys/stat.h>

namespace undermark::test {

class SpeakingCar {
public:
    explicit SpeakingCar(LiveFeed& feed) : m_feed(feed)
    {
        ::mkfifo(place().c_str(), 0600);
        m_feed.setClock([this] { return m_now; });
        connect();
    }
    // The feed's source is opened anew, as another one.
    void connect()
    {
        SourceOptions options;
        options.sources = {"lines:" + place()};
        m_open = m_feed.follow(options).has_value();
        if (!m_pipe.is_open())
            m_pipe.open(place());
        write("signal,speed_kmh,distance_km");
        m_feed.look();
    }
    bool isOpen() const { return m_open; }
    std::string place() const { return m_folder.filePath("car").toStdString(); }

    // Twice a second; the signal goes on evenly to `until`.
    void drive(double kmh, double seconds, double until)
    {
        const double from = m_signal;
        const int steps = int(2 * seconds);
        for (int i = 1; i <= steps; ++i) {
            m_now += Seconds(0.5);
            m_km += kmh * 0.5 / 3600;
            m_signal = from + (until - from) * i / steps;
            write(std::to_string(m_signal) + ',' + std::to_string(kmh) + ',' + std::to_string(m_km)
                  + (m_beside ? ',' + std::to_string(*m_beside) : ""));
            m_feed.look();
        }
    }
    void startAt(double signal) { m_signal = signal; }
    // From now on of its first further tank, too.
    void sayBeside(double signal)
    {
        if (!m_beside)
            write("signal,speed_kmh,distance_km,tank1_signal");
        m_beside = signal;
    }
    void silence(double seconds)
    {
        for (int i = 0; i < int(2 * seconds); ++i) {
            m_now += Seconds(0.5);
            m_feed.look();
        }
    }
    void write(const std::string& line) { m_pipe << line << '\n' << std::flush; }
    double km() const { return m_km; }

private:
    LiveFeed& m_feed;
    QTemporaryDir m_folder;
    std::ofstream m_pipe;
    Seconds m_now{};
    double m_signal = 0.0, m_km = 0.0;
    std::optional<double> m_beside;
    bool m_open = false;
};

} // namespace undermark::test
