// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the Ahead page says.
#include "app/car/plan_rows.h"
#include "app/screen/ahead/plan_view_model.h"
#include "app/screen/base/mode_name.h"
#include "engine/base/normal_law.h"

#include <algorithm>
#include <cmath>

namespace undermark {

QStringList PlanViewModel::aims() const
{
    return {tr("Least cost"), tr("Fewest stops"), tr("Least time"), tr("Lightest")};
}

QStringList PlanViewModel::confidences() const
{
    return {tr("95 %"), tr("99 %"), tr("99.9 %")};
}

QString PlanViewModel::title() const
{
    if (!loaded())
        return tr("Which route?");
    const Distance length = m_route.points.back().at - m_route.points.front().at;
    return tr("%1, %2").arg(m_editor.routeName(), m_format.distanceWithUnit(length));
}

QString PlanViewModel::outcome(const Plan& plan) const
{
    if (!plan.feasible) {
        const Shortfall& shortfall = *plan.shortfall;
        const std::string& towards = m_route.points.size() > shortfall.towards
                                         ? m_route.points[shortfall.towards].name
                                         : m_route.points.back().name;
        return tr("No plan: the fuel lasts to %1, %2 are missing to %3.")
            .arg(m_format.distanceWithUnit(shortfall.farthest),
                 m_format.volume({shortfall.missing, {}}), QString::fromStdString(towards));
    }
    QString text = tr("Stops: %1, %2 to buy.")
                       .arg(int(plan.stops.size()))
                       .arg(m_format.volume({plan.bought, {}}));
    if (plan.cost > 0.0)
        text += u' ' + tr("Cost %1.").arg(m_format.number(plan.cost, 2));
    return text + u' ' + tr("Risk of running dry: %1 %.").arg(m_format.number(plan.dryRisk * 100, 1));
}

QString PlanViewModel::summary() const
{
    return feasible() ? outcome(*m_plan) : QString();
}

RouteRow PlanViewModel::row(std::size_t index) const
{
    const RoutePoint& point = m_route.points[index];
    const bool last = index + 1 == m_route.points.size();
    RouteRow row;
    row.at = m_format.number(m_format.inUnit(point.at), 1);
    row.name = QString::fromStdString(point.name);
    QStringList detail;
    if (!last && !point.mode.empty())
        detail.append(modeName(point.mode));
    if (point.fuel == FuelSource::pump)
        detail.append(tr("pump"));
    else if (point.fuel == FuelSource::zone)
        detail.append(tr("refuel zone"));
    else if (point.fuel == FuelSource::can)
        detail.append(tr("own can"));
    row.detail = detail.join(QStringLiteral(" · "));
    if (feasible())
        addPassage(row, m_plan->passages[index]);
    row.spoken = QStringList{row.at + u' ' + m_format.distanceUnit(), row.name, row.detail,
                             row.arrive, row.buy}.join(QStringLiteral(", "));
    return row;
}

void PlanViewModel::addPassage(RouteRow& row, const Passage& passage) const
{
    const Volume sure = std::max(Volume{}, passage.arrive.mean - passage.arrive.sd * kSureQuantile);
    row.arrive = tr("%1 sure, %2 even").arg(m_format.volume(sure), m_format.volume(passage.arrive.mean));
    const auto stop = std::ranges::find(m_plan->stops, passage.point, &PlannedStop::point);
    if (stop != m_plan->stops.end())
        row.buy = stop->toFull ? tr("+ %1, full").arg(m_format.volume({stop->buy, {}}))
                               : tr("+ %1").arg(m_format.volume({stop->buy, {}}));
    row.risk = tr("risk %1 %").arg(m_format.number(passage.dry * 100, 1));
}

QList<RouteRow> PlanViewModel::rows() const
{
    QList<RouteRow> rows;
    for (std::size_t i = 0; i < m_route.points.size(); ++i)
        rows.append(row(i));
    return rows;
}

QList<RouteRow> PlanViewModel::stops() const
{
    QList<RouteRow> rows;
    if (!feasible())
        return rows;
    for (const PlannedStop& stop : m_plan->stops) {
        rows.append(row(stop.point));
        const auto gap = std::ranges::find(m_plan->gaps, stop.point, &Gap::to);
        if (gap != m_plan->gaps.end() && gap->noReturn)
            rows.last().risk = tr("turn back by %1").arg(m_format.distanceWithUnit(*gap->noReturn));
    }
    return rows;
}

QList<Fact> PlanViewModel::cures() const
{
    QList<Fact> facts;
    for (const Cure& cure : m_cures) {
        switch (cure.kind) {
        case CureKind::startWithMore:
            facts.append({tr("start with more"), m_format.volume({cure.litres, {}})});
            break;
        case CureKind::carryInCans:
            facts.append({tr("carry in own cans"), m_format.volume({cure.litres, {}})});
            break;
        case CureKind::driveGentler:
            facts.append({tr("burn less"), tr("%1 %").arg(m_format.number(cure.gentler.percent(), 1))});
            break;
        }
    }
    return facts;
}

QStringList PlanViewModel::legs() const
{
    QStringList names;
    if (!feasible())
        return names;
    for (const Gap& gap : m_plan->gaps)
        if (m_route.points[gap.to].at > m_route.points[gap.from].at)
            names.append(tr("from %1").arg(QString::fromStdString(m_route.points[gap.from].name)));
    return names;
}

QStringList PlanViewModel::whatIfs() const
{
    QStringList questions;
    if (!feasible())
        return questions;
    for (const PlannedStop& stop : m_plan->stops)
        questions.append(tr("%1 is closed").arg(QString::fromStdString(m_route.points[stop.point].name)));
    questions.append(tr("It burns 10 % more"));
    questions.append(tr("Fills end %1 earlier").arg(m_format.volume({Volume::fromLitres(2), {}})));
    return questions;
}

} // namespace undermark
