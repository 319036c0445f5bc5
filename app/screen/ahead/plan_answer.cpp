// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_answer.h"

#include "app/car/plan_rows.h"
#include "app/screen/base/mode_name.h"

#include <algorithm>

namespace undermark {

QString planOutcome(const Route& route, const Plan& plan, const UnitFormat& format)
{
    if (!plan.feasible) {
        const Shortfall& shortfall = *plan.shortfall;
        const std::size_t towards = std::min(shortfall.towards, route.points.size() - 1);
        return PlanAnswer::tr("No plan: the fuel lasts to %1, %2 are missing to %3.")
            .arg(format.distanceWithUnit(shortfall.farthest), format.volume({shortfall.missing, {}}),
                 QString::fromStdString(route.points[towards].name));
    }
    QString text = PlanAnswer::tr("Stops: %1, %2 to buy.")
                       .arg(int(plan.stops.size()))
                       .arg(format.volume({plan.bought, {}}));
    if (plan.cost > 0.0)
        text += u' ' + PlanAnswer::tr("Cost %1.").arg(format.number(plan.cost, 2));
    return text + u' ' + PlanAnswer::tr("Risk of running dry: %1 %.").arg(format.number(plan.dryRisk * 100, 1));
}

void PlanAnswer::setFormat(const UnitFormat& format)
{
    m_format = format;
    emit changed();
}

void PlanAnswer::showRoute(Route route)
{
    m_route = std::move(route);
    m_planned.reset();
    m_error.reset();
    m_leg = 0;
    emit changed();
}

void PlanAnswer::show(Route route, Result<Planned> planned)
{
    m_route = std::move(route);
    m_planned.reset();
    m_error.reset();
    if (planned)
        m_planned = std::move(*planned);
    else
        m_error = planned.error();
    m_leg = std::clamp(m_leg, 0, std::max(0, int(legs().size()) - 1));
    emit changed();
}

void PlanAnswer::selectLeg(int leg)
{
    if (leg < 0 || leg >= legs().size())
        return;
    m_leg = leg;
    emit changed();
}

QString PlanAnswer::summary() const
{
    return feasible() ? planOutcome(m_route, m_planned->plan, m_format) : QString();
}

QList<NoticeText> PlanAnswer::notices() const
{
    std::vector<Notice> notices;
    if (m_error)
        notices.push_back(noticeOf(*m_error));
    if (m_planned && !m_planned->plan.feasible)
        notices.push_back(
            {Severity::error,
             Sentence::just(planOutcome(m_route, m_planned->plan, m_format).toStdString())});
    if (m_planned)
        for (const Sentence& note : m_planned->plan.notes)
            notices.push_back({Severity::info, note});
    return noticeTexts(notices, m_format);
}

RouteRow PlanAnswer::row(std::size_t index) const
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
        addPassage(row, m_planned->plan.passages[index]);
    row.spoken = QStringList{row.at + u' ' + m_format.distanceUnit(), row.name, row.detail,
                             row.arrive, row.buy}.join(QStringLiteral(", "));
    return row;
}

void PlanAnswer::addPassage(RouteRow& row, const Passage& passage) const
{
    const std::vector<PlannedStop>& stops = m_planned->plan.stops;
    const Volume sure = std::max(Volume{}, passage.sure);
    row.arrive = tr("%1 sure, %2 even").arg(m_format.volume(sure), m_format.volume(passage.arrive.mean));
    const auto stop = std::ranges::find(stops, passage.point, &PlannedStop::point);
    if (stop != stops.end())
        row.buy = stop->toFull ? tr("+ %1, full").arg(m_format.volume({stop->buy, {}}))
                               : tr("+ %1").arg(m_format.volume({stop->buy, {}}));
    row.risk = tr("risk %1 %").arg(m_format.number(passage.dry * 100, 1));
}

QList<RouteRow> PlanAnswer::rows() const
{
    QList<RouteRow> rows;
    for (std::size_t i = 0; i < m_route.points.size(); ++i)
        rows.append(row(i));
    return rows;
}

QList<RouteRow> PlanAnswer::stops() const
{
    QList<RouteRow> rows;
    if (!feasible())
        return rows;
    const std::vector<Gap>& gaps = m_planned->plan.gaps;
    for (const PlannedStop& stop : m_planned->plan.stops) {
        rows.append(row(stop.point));
        const auto gap = std::ranges::find(gaps, stop.point, &Gap::to);
        if (gap != gaps.end() && gap->noReturn)
            rows.last().risk = tr("turn back by %1").arg(m_format.distanceWithUnit(*gap->noReturn));
    }
    return rows;
}

QList<Fact> PlanAnswer::cures() const
{
    QList<Fact> facts;
    for (const Cure& cure : m_planned ? m_planned->cures : std::vector<Cure>()) {
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

QStringList PlanAnswer::legs() const
{
    QStringList names;
    if (!feasible())
        return names;
    for (const LegHorizon& leg : m_planned->legs)
        names.append(tr("from %1").arg(QString::fromStdString(m_route.points[leg.from].name)));
    return names;
}

HorizonPicture PlanAnswer::horizon() const
{
    if (!feasible() || m_planned->legs.empty())
        return {};
    return legPicture(m_planned->legs[std::size_t(m_leg)].strip, m_format);
}

} // namespace undermark
