// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_answer.h"

#include "app/car/plan_request.h"
#include "app/car/plan_sentences.h"
#include "app/screen/base/mode_name.h"
#include "app/screen/base/sentence_text.h"
#include "engine/planning/left_of_plan.h"

#include <algorithm>

namespace undermark {

QString planOutcome(const PlanRequest& request, const Plan& plan, const UnitFormat& format)
{
    if (!plan.feasible)
        return sentenceText(shortfallSentence(request.route, *plan.shortfall), format);
    QStringList parts{sentenceText(stopsSentence(plan), format)};
    const double stopping = request.stopCost * double(plan.stops.size());
    if (stopping > 0.0)
        parts.append(PlanAnswer::tr("Cost %1, of which stopping counts as %2.")
                         .arg(format.money(plan.cost), format.money(stopping)));
    else if (plan.cost > 0.0)
        parts.append(PlanAnswer::tr("Cost %1.").arg(format.money(plan.cost)));
    parts.append(sentenceText(riskSentence(plan), format));
    return parts.join(u' ');
}

namespace {

// The same route, or what is left of it.
bool isLeftOf(const Route& before, const Route& now)
{
    return now.points.back().at == before.points.back().at &&
           now.points.front().at >= before.points.front().at;
}

} // namespace

void PlanAnswer::setFormat(const UnitFormat& format)
{
    m_format = format;
    emit changed();
}

void PlanAnswer::showRoute(Route route)
{
    m_route = std::move(route);
    m_planned.reset();
    m_changes.clear();
    m_error.reset();
    m_leg = 0;
    emit changed();
}

void PlanAnswer::show(Route route, Result<Planned> planned)
{
    const bool goesOn = m_planned && planned && isLeftOf(m_route, route);
    m_changes = goesOn ? planChanges(m_planned->request, m_planned->plan, planned->request, planned->plan)
                       : std::vector<Sentence>();
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
    return feasible() ? planOutcome(m_planned->request, m_planned->plan, m_format) : QString();
}

QString PlanAnswer::changes() const
{
    QStringList all;
    for (const Sentence& change : m_changes)
        all.append(sentenceText(change, m_format));
    return all.isEmpty() ? QString() : tr("Against the plan before: %1").arg(all.join(u' '));
}

QList<NoticeText> PlanAnswer::notices() const
{
    std::vector<Notice> notices;
    if (m_error)
        notices.push_back(noticeOf(*m_error));
    if (m_planned && !m_planned->plan.feasible)
        notices.push_back({Severity::error, shortfallSentence(m_route, *m_planned->plan.shortfall)});
    if (m_planned && m_planned->request.aim == Aim::stops && !pricesAreKnown(m_route))
        notices.push_back({Severity::info, Sentence::of("Some of the pumps have no price: planned "
                                                        "without looking at the cost.")});
    if (m_planned) {
        for (const Sentence& note : m_planned->request.startNotes)
            notices.push_back({Severity::warning, note});
        for (const Sentence& note : m_planned->plan.notes)
            notices.push_back({Severity::info, note});
    }
    return noticeTexts(notices, m_format);
}

QString PlanAnswer::way(std::size_t index, const PlanRow* planned, bool wholeWay) const
{
    const RoutePoint& point = m_route.points[index];
    const bool last = index + 1 == m_route.points.size();
    QStringList way;
    if (planned && index > 0)
        way.append(tr("leg %1").arg(m_format.exactDistance(planned->leg)));
    if (point.fuel == FuelSource::pump)
        way.append(tr("pump"));
    else if (point.fuel == FuelSource::zone)
        way.append(tr("refuel zone"));
    else if (point.fuel == FuelSource::can)
        way.append(tr("own can"));
    else if (point.fuel == FuelSource::crew)
        way.append(tr("crew with cans"));
    const QString mode = point.mode.empty() ? tr("Usual mix") : modeName(point.mode);
    if (planned && !last)
        way.append(wholeWay ? tr("to the next stop %1").arg(litres(planned->needs))
                            : tr("on: %1, needs %2").arg(mode, litres(planned->needs)));
    else if (!last)
        way.append(mode);
    return way.join(QStringLiteral(" · "));
}

QString PlanAnswer::detail(const PlanRow& planned) const
{
    QStringList notes;
    if (planned.stop)
        notes.append(tr("leaves with %1").arg(litres(planned.leave)));
    if (!planned.note.empty())
        notes.append(QString::fromStdString(planned.note));
    QStringList parts{tr("sure %1, even %2").arg(litres(planned.sure), litres(planned.even))};
    if (!notes.isEmpty())
        parts.append(notes.join(QStringLiteral("; ")));
    return parts.join(QStringLiteral(" · "));
}

RouteRow PlanAnswer::row(std::size_t index, const PlanRow* planned, bool wholeWay) const
{
    const RoutePoint& point = m_route.points[index];
    RouteRow row;
    row.at = m_format.number(m_format.inUnit(point.at), 1);
    row.unit = m_format.distanceUnit();
    row.name = QString::fromStdString(placeName(point));
    row.way = way(index, planned, wholeWay);
    if (planned)
        row.detail = detail(*planned);
    if (planned && planned->stop)
        row.buy = (planned->stop->toFull ? tr("fill up, %1") : tr("take on %1"))
                      .arg(litres(planned->stop->buy));
    QStringList spoken{row.at + u' ' + row.unit, row.name, row.buy, row.detail, row.way};
    spoken.removeAll(QString());
    row.spoken = spoken.join(QStringLiteral(", "));
    return row;
}

QList<RouteRow> PlanAnswer::planned(const std::vector<std::size_t>& points) const
{
    const auto write = [this](const Sentence& words) { return sentenceText(words, m_format).toStdString(); };
    QList<RouteRow> rows;
    for (const PlanRow& planned : planRows(m_planned->request, m_planned->plan, points, write))
        rows.append(row(planned.point, &planned, !points.empty()));
    return rows;
}

QList<RouteRow> PlanAnswer::rows() const
{
    if (feasible())
        return planned({});
    QList<RouteRow> rows;
    for (std::size_t i = 0; i < m_route.points.size(); ++i)
        rows.append(row(i));
    return rows;
}

QList<RouteRow> PlanAnswer::stops() const
{
    return feasible() ? planned(stopsAndEnds(m_planned->plan)) : QList<RouteRow>();
}

QList<Fact> PlanAnswer::cures() const
{
    QList<Fact> facts;
    for (const Cure& cure : m_planned ? m_planned->cures : std::vector<Cure>())
        facts.append({sentenceText(cureSentence(cure), m_format),
                      sentenceText(cureCaution(cure), m_format)});
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
