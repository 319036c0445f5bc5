// SPDX-License-Identifier: GPL-3.0-or-later
//
// What changes the logbook, but for fills at the pump.
#include "app/car/demo_logbook.h"
#include "app/car/logbook_car.h"
#include "app/car/logbook_place.h"

namespace undermark {

namespace {

Error noVehicle()
{
    return {ErrorCode::notFound, Sentence::of("the logbook has no vehicle yet")};
}

template <class T>
Result<std::vector<LogVersion>> versionsOf(const Logbook& logbook, const EntryId& id)
{
    const auto rows = logbook.versions<T>(id);
    if (!rows)
        return fail(rows.error());
    std::vector<LogVersion> versions;
    for (const Version<T>& row : *rows)
        versions.push_back({row.recorded, row.value, row.withdrawn.has_value()});
    return versions;
}

} // namespace

Result<void> LogbookCar::revise(const std::string& entryId, const LogValue& value)
{
    if (!m_logbook)
        return fail(noVehicle());
    m_known.reset();
    return std::visit(
        [&](const auto& entry) { return m_logbook->supersede(EntryId{entryId}, entry, m_clock()); },
        value);
}

Result<void> LogbookCar::takeBack(const std::string& entryId)
{
    if (!m_logbook)
        return fail(noVehicle());
    m_known.reset();
    return m_logbook->undo(EntryId{entryId}, m_clock());
}

Result<std::vector<LogVersion>> LogbookCar::history(const std::string& entryId,
                                                    const LogValue& kind)
{
    if (!m_logbook)
        return fail(noVehicle());
    return std::visit(
        [&]<class T>(const T&) { return versionsOf<T>(*m_logbook, EntryId{entryId}); }, kind);
}

Result<void> LogbookCar::saveCalibration(Calibration calibration)
{
    if (!m_logbook || !m_vehicle)
        return fail(noVehicle());
    calibration.time = m_clock();
    const auto added = m_logbook->add(*m_vehicle, calibration, calibration.time);
    if (!added)
        return fail(added.error());
    m_known.reset();
    return {};
}

void LogbookCar::show(const EntryId& vehicle)
{
    m_vehicle = vehicle;
    m_known.reset();
    m_lastMode.clear();
}

Result<std::vector<Entry<Vehicle>>> LogbookCar::cars()
{
    if (!m_logbook)
        return std::vector<Entry<Vehicle>>();
    return m_logbook->vehicles();
}

Result<void> LogbookCar::showCar(const std::string& id)
{
    const auto all = cars();
    if (!all)
        return fail(all.error());
    for (const Entry<Vehicle>& each : *all) {
        if (each.id.uuid != id)
            continue;
        show(each.id);
        return {};
    }
    return fail(ErrorCode::notFound, Sentence::of("the logbook has no such vehicle"));
}

Result<void> LogbookCar::setUp(const Vehicle& vehicle)
{
    if (!m_logbook) {
        auto made = Logbook::open(m_file, OpenMode::createIfMissing);
        if (!made)
            return fail(made.error());
        m_logbook.emplace(std::move(*made));
    }
    auto added = m_logbook->addVehicle(vehicle, m_clock());
    if (!added)
        return fail(added.error());
    show(*added);
    return {};
}

Result<void> LogbookCar::showDemo()
{
    auto demo = makeDemoLogbook(demoLogbook(), Existing::replace);
    if (!demo)
        return fail(demo.error());
    const auto vehicles = demo->vehicles();
    if (!vehicles)
        return fail(vehicles.error());
    m_logbook.emplace(std::move(*demo));
    m_file = demoLogbook();
    show(vehicles->front().id);
    return {};
}

Result<void> LogbookCar::withLogbook(const LogbookWork& work)
{
    if (!m_logbook)
        return fail(noVehicle());
    m_known.reset();
    return work(*m_logbook);
}

Result<void> LogbookCar::readLogbook(const LogbookQuestion& question)
{
    if (!m_logbook || !m_vehicle)
        return fail(noVehicle());
    return question(*m_logbook, *m_vehicle);
}

std::filesystem::path LogbookCar::folder() const
{
    return m_file.parent_path();
}

} // namespace undermark
