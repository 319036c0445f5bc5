// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which car of which logbook is shown.
#include "app/car/car.h"
#include "app/car/demo_logbook.h"
#include "app/car/logbook_place.h"

namespace undermark {

Clock demoTime()
{
    return [ahead = systemTime() - demoDay()] { return systemTime() - ahead; };
}

Result<void> Car::take(Logbook logbook)
{
    const auto vehicles = logbook.vehicles();
    if (!vehicles)
        return fail(vehicles.error());
    m_file = logbook.file();
    m_logbook.emplace(std::move(logbook));
    m_closed.reset();
    m_vehicle.reset();
    m_known.reset();
    if (!vehicles->empty())
        show(vehicles->front().id);
    writtenElsewhere(); // from here on
    return {};
}

void Car::show(const EntryId& vehicle)
{
    m_vehicle = vehicle;
    m_known.reset();
}

Result<std::vector<Entry<Vehicle>>> Car::cars() const
{
    if (m_logbook)
        return m_logbook->vehicles();
    if (m_closed)
        return fail(*m_closed);
    return std::vector<Entry<Vehicle>>();
}

Result<std::vector<VehicleLog>> Car::logs() const
{
    const auto all = cars();
    if (!all)
        return fail(all.error());
    std::vector<VehicleLog> logs;
    for (const Entry<Vehicle>& each : *all) {
        auto log = m_logbook->load(each.id);
        if (!log)
            return fail(log.error());
        logs.push_back(std::move(*log));
    }
    return logs;
}

Result<Entry<Vehicle>> Car::vehicle() const
{
    const auto all = cars();
    if (!all)
        return fail(all.error());
    for (const Entry<Vehicle>& each : *all)
        if (m_vehicle && each.id == *m_vehicle)
            return each;
    return fail(why());
}

Result<void> Car::showCar(const std::string& uuid)
{
    const auto all = cars();
    if (!all)
        return fail(all.error());
    for (const Entry<Vehicle>& each : *all) {
        if (each.id.uuid != uuid)
            continue;
        show(each.id);
        return {};
    }
    return fail(ErrorCode::notFound, Sentence::of("the logbook has no such vehicle"));
}

Result<EntryId> Car::setUp(const Vehicle& vehicle)
{
    if (!m_logbook) {
        if (m_closed)
            return fail(*m_closed);
        auto made = Logbook::open(m_file, OpenMode::createIfMissing);
        if (!made)
            return fail(made.error());
        if (const auto taken = take(std::move(*made)); !taken)
            return fail(taken.error());
    }
    auto added = m_logbook->addVehicle(vehicle, m_clock());
    if (added)
        show(*added);
    return added;
}

Result<void> Car::showDemo()
{
    if (const auto made = makeDemoLogbook(demoLogbook(), Existing::replace); !made)
        return made;
    auto demo = open(demoLogbook(), OpenMode::readWrite, demoTime());
    if (!demo)
        return fail(demo.error());
    *this = std::move(*demo);
    return {};
}

} // namespace undermark
