// SPDX-License-Identifier: GPL-3.0-or-later
//
// What changes the entries of a car.
#include "app/car/car.h"

namespace undermark {

namespace {

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

template <class T> Result<EntryId> Car::record(const T& value)
{
    return m_logbook && m_vehicle ? m_logbook->add(*m_vehicle, value, m_clock()) : fail(why());
}

template <class T> Result<void> Car::revise(const EntryId& entry, const T& value)
{
    return m_logbook ? m_logbook->supersede(entry, value, m_clock()) : fail(why());
}

template Result<EntryId> Car::record(const Mode&);
template Result<EntryId> Car::record(const Calibration&);
template Result<EntryId> Car::record(const Fill&);
template Result<EntryId> Car::record(const Trip&);
template Result<EntryId> Car::record(const Proof&);
template Result<EntryId> Car::record(const VerificationRecord&);
template Result<EntryId> Car::record(const LiveSource&);
template Result<EntryId> Car::record(const Photo&);
template Result<EntryId> Car::record(const HandOverRecord&);
template Result<EntryId> Car::record(const ExtraTank&);
template Result<EntryId> Car::record(const OwnPump&);
template Result<EntryId> Car::record(const LevelRecord&);
template Result<void> Car::revise(const EntryId&, const ExtraTank&);
template Result<void> Car::revise(const EntryId&, const Vehicle&);
template Result<void> Car::revise(const EntryId&, const Mode&);
template Result<void> Car::revise(const EntryId&, const Calibration&);
template Result<void> Car::revise(const EntryId&, const Fill&);
template Result<void> Car::revise(const EntryId&, const Trip&);
template Result<void> Car::revise(const EntryId&, const Proof&);
template Result<void> Car::revise(const EntryId&, const LevelRecord&);

Result<FillLesson> Car::recordFill(const Fill& fill)
{
    const auto before = knowledge();
    if (!before)
        return fail(before.error());
    const Result<EntryId> id = record(fill);
    if (!id)
        return fail(id.error());
    const auto after = knowledge();
    if (after)
        return lessonOf(*id, **before, **after);
    FillLesson stored;   // all the same: say what keeps the answer back
    stored.entry = *id;
    stored.flags.push_back({Severity::warning, sentenceOf(after.error())});
    return stored;
}

Result<void> Car::revise(const EntryId& entry, const LogValue& value)
{
    return std::visit([&](const auto& kind) { return revise(entry, kind); }, value);
}

Result<void> Car::takeBack(const EntryId& entry)
{
    return m_logbook ? m_logbook->undo(entry, m_clock()) : fail(why());
}

Result<void> Car::takeBackAll(std::span<const EntryId> entries)
{
    return m_logbook ? m_logbook->undoAll(entries, m_clock()) : fail(why());
}

Result<std::vector<LogVersion>> Car::history(const EntryId& entry, const LogValue& kind) const
{
    if (!m_logbook)
        return fail(why());
    return std::visit([&]<class T>(const T&) { return versionsOf<T>(*m_logbook, entry); }, kind);
}

} // namespace undermark
