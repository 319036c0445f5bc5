// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/trip_writer.h"

namespace undermark {

TripWriter::TripWriter(Car& car, LiveFeed& feed, std::function<std::string()> mode, Levels levels)
    : m_car(car), m_feed(feed), m_mode(std::move(mode)), m_levels(std::move(levels))
{
    connect(&feed, &LiveFeed::opened, this, &TripWriter::end);
    connect(&feed, &LiveFeed::sampled, this, &TripWriter::take);
    connect(&feed, &LiveFeed::looked, this, &TripWriter::look);
}

TripWriter::~TripWriter()
{
    blockSignals(true); // who listens is going, too
    end();
}

bool TripWriter::ready()
{
    if (m_keeper)
        return true;
    // Until there is a car nothing is asked for, and what failed once is not tried again and again.
    if (m_problem || m_feed.sources().recorded() || m_car.shownCar().empty())
        return false;
    Result<DriveKeeper> started = DriveKeeper::start(m_car);
    if (!started) {
        heed(fail(started.error()));
        return false;
    }
    m_keeper.emplace(std::move(*started));
    return true;
}

void TripWriter::take(const Sample& sample)
{
    if (!ready())
        return;
    tellLevels();
    heed(m_keeper->take(sample, m_mode()));
}

// Those of the shown car, which is the one that is driven.
void TripWriter::tellLevels()
{
    if (m_levels && m_keeper->car() == m_car.shownCar())
        m_keeper->tell(m_levels());
}

void TripWriter::look()
{
    if (!m_keeper)
        return;
    tellLevels();
    heed(m_keeper->look(m_feed.now()));
}

void TripWriter::fuelWentIn()
{
    if (m_keeper)
        heed(m_keeper->fuelWentIn());
}

void TripWriter::end()
{
    if (m_keeper)
        heed(m_keeper->end());
}

void TripWriter::startOver()
{
    if (m_keeper && m_keeper->car() == m_car.shownCar())
        return;
    end();
    m_keeper.reset();
    m_problem.reset();
}

void TripWriter::heed(const Result<bool>& tripWritten)
{
    if (!tripWritten) {
        m_problem = tripWritten.error();
        m_keeper.reset();
        emit failed();
    } else if (*tripWritten) {
        emit recorded();
    }
}

} // namespace undermark
