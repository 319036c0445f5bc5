// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the row opened on the Ahead page says.
#include "app/screen/ahead/route_edit_model.h"
#include "app/screen/base/mode_name.h"
#include "engine/tables/route_csv.h"

#include <algorithm>

namespace undermark {

// In the order of FieldId.
QList<NumberEntry> RouteEditModel::entries() const
{
    const RoutePoint& point = route().points[*m_row];
    const auto entry = [](FieldId id, const QString& name, const QString& unit, const QString& text, bool shown) {
        return NumberEntry{id, name, unit, text, false, shown, isClock(id) || isDay(id)}; // typed anew
    };
    const auto litres = [this](const auto& volume) { return volume ? m_format.typed(*volume) : QString(); };
    const auto far = [this](const auto& distance) { return distance ? m_format.typed(*distance) : QString(); };
    const auto minutes = [this](const auto& time) { return time ? m_format.typed(time->count(), 1) : QString(); };
    const auto clock = [](const auto& time) { return time ? QString::fromStdString(clockText(*time)) : QString(); };
    const auto day = [](const auto& date) { return date ? QString::fromStdString(dayText(*date)) : QString(); };
    const QString date = tr("yyyymmdd");
    const QString price = point.pricePerLitre ? m_format.typedPrice(*point.pricePerLitre) : QString();
    const QString km = m_format.distanceUnit(), litre = m_format.volumeUnit(), min = tr("min"), time = tr("hh:mm");
    const auto leg = m_editor.leg(*m_row);
    const bool fuel = m_part == Fuel, control = m_part == Control;
    return {entry(Leg, tr("leg to here"), km, far(leg), m_part == Road && leg.has_value()),
            entry(Price, tr("price"), m_format.priceUnit(), price, fuel),
            entry(Most, tr("at most"), litre, litres(point.mostPurchase), fuel),
            entry(Least, tr("at least"), litre, litres(point.leastPurchase), fuel),
            entry(StopTime, tr("a stop takes"), min, minutes(point.stopTime), fuel),
            entry(Detour, tr("detour, both ways"), km, far(point.detour), fuel),
            entry(Opens, tr("opens"), time, clock(point.opens), fuel),
            entry(Closes, tr("closes"), time, clock(point.closes), fuel),
            entry(FirstDay, tr("from the day"), date, day(point.firstDay), fuel),
            entry(LastDay, tr("until the day"), date, day(point.lastDay), fuel),
            entry(Due, tr("due here"), time, clock(point.due), control),
            entry(Rest, tr("rest, engine off"), min, minutes(point.rest), control),
            entry(Idle, tr("idling"), min, minutes(point.idle), control),
            entry(Floor, tr("arrive with at least"), litre, litres(point.floor), control)};
}

QString RouteEditModel::name() const
{
    return m_row ? QString::fromStdString(route().points[*m_row].name) : QString();
}

QString RouteEditModel::place() const
{
    if (!m_row)
        return {};
    const QString at = m_format.number(m_format.inUnit(route().points[*m_row].at), 1);
    return tr("row %1 of %2, at %3 %4")
        .arg(*m_row + 1)
        .arg(route().points.size())
        .arg(at, m_format.distanceUnit());
}

QStringList RouteEditModel::parts() const
{
    return {tr("Road"), tr("Fuel"), tr("Control"), tr("Row")};
}

QString RouteEditModel::behindWord() const
{
    return m_behind == Behind::moves ? tr("rows behind move along") : tr("rows behind stay");
}

QString RouteEditModel::timedWord() const
{
    if (!m_row || last())
        return {};
    return route().points[*m_row].timed ? tr("timed from here: yes") : tr("timed from here: no");
}

QStringList RouteEditModel::modes() const
{
    QStringList names;
    for (const std::string& mode : m_modes)
        names.append(mode.empty() ? tr("Usual mix") : modeName(mode));
    return names;
}

int RouteEditModel::mode() const
{
    if (!m_row)
        return -1;
    const auto found = std::ranges::find(m_modes, route().points[*m_row].mode);
    return found == m_modes.end() ? -1 : int(found - m_modes.begin());
}

QStringList RouteEditModel::fuels() const
{
    return {tr("No fuel"), tr("Pump"), tr("Refuel zone"), tr("Own can"), tr("Crew's cans")};
}

int RouteEditModel::fuel() const
{
    return m_row ? int(route().points[*m_row].fuel) : -1;
}

QStringList RouteEditModel::knownPumps() const
{
    QStringList names;
    for (const RoutePoint& pump : m_knownPumps)
        names.append(QString::fromStdString(pump.name));
    return names;
}

QString RouteEditModel::doneWord() const
{
    if (typed())
        return m_part == Row ? tr("Take the name") : tr("Take the numbers");
    return tr("Back to the plan");
}

QString RouteEditModel::undoWord() const
{
    if (typed())
        return m_part == Row ? tr("Drop the name") : tr("Drop the numbers");
    return m_editor.canUndo() ? tr("Undo the change") : QString();
}

// "New row 1": what-ifs name rows, so no two of these are alike.
QString RouteEditModel::freshName(const Route& route)
{
    for (int n = 1;; ++n) {
        const QString name = tr("New row %1").arg(n);
        if (std::ranges::find(route.points, name.toStdString(), &RoutePoint::name) ==
            route.points.end())
            return name;
    }
}

} // namespace undermark
