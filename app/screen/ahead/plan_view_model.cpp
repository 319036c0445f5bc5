// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_view_model.h"

#include "app/paper/plan_card.h"
#include "app/screen/base/sentence_text.h"
#include "engine/planning/plan_horizon.h"
#include "engine/tables/route_file.h"

#include <QFileInfo>
#include <algorithm>
#include <array>
#include <utility>

namespace undermark {

namespace {

constexpr std::array kConfidences{0.95, 0.99, 0.999};

} // namespace

PlanViewModel::PlanViewModel(Car& car, Units units, const QString& folder, QObject* parent)
    : QObject(parent), m_car(car), m_format(units),
      m_files(folder, {QStringLiteral("*.csv"), QStringLiteral("*.gpx")},
              QString::fromStdString((car.folder() / "routes").string())),
      m_editor([this](const Route& whole) { return takeChanged(whole); }, car.folder() / "routes")
{
    connect(&m_editor, &RouteEditModel::stored, this, &PlanViewModel::changed);
    showHere();
}

void PlanViewModel::showHere()
{
    m_here.setDecimalMark(m_format.decimalMark());
    m_here.setEntries({{0, tr("the car is at"), m_format.distanceUnit(), {}, false, true}});
}

void PlanViewModel::refresh()
{
    if (loaded())
        planAnew();
    emit changed();
}

void PlanViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_editor.setFormat(format);
    showHere();
    refresh();
}

void PlanViewModel::setRoute(Route route, const QString& name)
{
    std::vector<std::string> modes;
    if (const auto known = m_car.knowledge())
        for (const Entry<Mode>& mode : (*known)->log.modes)
            modes.push_back(mode.value.name);
    m_editor.load(route, name, modes);
    m_route = std::move(route);
    m_from.reset();
    m_aim = usualAim(m_route);
    m_leg = 0;
    m_leaving = false;
    planAnew();
    emit changed();
}

void PlanViewModel::pickFile(int row)
{
    const QString path = m_files.pick(row);
    if (path.isEmpty())
        return;
    auto file = readRouteFile(path.toStdString());
    if (file)
        return setRoute(std::move(file->route), QFileInfo(path).completeBaseName());
    m_notices = {noticeOf(file.error())};
    emit changed();
}

void PlanViewModel::otherRoute()
{
    if (m_editor.unsaved() && !std::exchange(m_leaving, true)) {
        m_notices = {{Notice::Severity::warning,
                      Sentence::of("The changed route is not saved. Touch again to leave it.")}};
        emit changed();
        return;
    }
    m_route = {};
    m_plan.reset();
    m_request.reset();
    m_cures.clear();
    m_notices.clear();
    m_files.refresh();
    emit changed();
}

void PlanViewModel::selectAim(int aim)
{
    if (aim < 0 || aim >= aims().size())
        return;
    m_aim = Aim(aim);
    refresh();
}

void PlanViewModel::selectConfidence(int confidence)
{
    if (confidence < 0 || std::size_t(confidence) >= kConfidences.size())
        return;
    m_confidence = confidence;
    refresh();
}

void PlanViewModel::selectLeg(int leg)
{
    if (leg < 0 || leg >= legs().size())
        return;
    m_leg = leg;
    emit changed();
}

Result<PlanViewModel::Planned> PlanViewModel::planned(const Route& route)
{
    auto request = m_car.planRequest(route);
    if (!request)
        return fail(request.error());
    request->aim = m_aim;
    request->confidence = Probability::of(kConfidences[std::size_t(m_confidence)]);
    auto answer = plan(*request);
    if (!answer)
        return fail(answer.error());
    return Planned{std::move(*request), std::move(*answer)};
}

void PlanViewModel::show(Result<Planned> planned)
{
    m_request.reset();
    m_plan.reset();
    m_cures.clear();
    m_notices.clear();
    m_whatIfTitle.clear();
    m_whatIfAnswer.clear();
    m_cardDone.clear();
    if (!planned) {
        m_notices = {noticeOf(planned.error())};
        return;
    }
    m_plan = std::move(planned->plan);
    m_request = std::move(planned->request);
    if (!m_plan->feasible)
        if (auto cures = findCures(*m_request))
            m_cures = std::move(*cures);
    m_leg = std::clamp(m_leg, 0, std::max(0, int(legs().size()) - 1));
    if (!m_plan->feasible)
        m_notices.push_back(
            {Notice::Severity::error, Sentence::just(outcome(*m_plan).toStdString())});
    for (const Sentence& note : m_plan->notes)
        m_notices.push_back({Notice::Severity::info, note});
}

Result<Route> PlanViewModel::fromHere(const Route& whole) const
{
    return m_from ? routeFrom(whole, *m_from) : whole;
}

// What could be planned before is not to be lost by an edit.
Result<void> PlanViewModel::takeChanged(const Route& whole)
{
    auto route = fromHere(whole);
    if (!route)
        return fail(route.error());
    auto answer = planned(*route);
    if (!answer && m_plan)
        return fail(answer.error());
    m_route = std::move(*route);
    m_leaving = false;
    show(std::move(answer));
    emit changed();
    return {};
}

// Rows are counted from the finish: what is left of the route starts with a row of
// its own, which stands for the one behind the car.
void PlanViewModel::editRow(int row)
{
    m_editor.open(int(m_editor.route().points.size()) - int(m_route.points.size()) + row);
}

HorizonPicture PlanViewModel::horizon() const
{
    if (!feasible())
        return {};
    const auto strips = planHorizons(*m_request, *m_plan);
    if (strips.empty())
        return {};
    const LegHorizon& leg = strips[std::min(std::size_t(m_leg), strips.size() - 1)];
    return legPicture(leg.strip, m_format);
}

void PlanViewModel::askWhatIf(int index)
{
    if (!feasible() || index < 0 || index >= whatIfs().size())
        return;
    const std::size_t stops = m_plan->stops.size();
    const auto at = std::size_t(index);
    const auto name = [&](std::size_t stop) { return m_route.points[m_plan->stops[stop].point].name; };
    const Result<WhatIf> answer = at < stops      ? whatIfClosed(*m_request, name(at))
                                  : at == stops   ? whatIfRateUp(*m_request, Fraction::fromPercent(10))
                                                  : whatIfFillsLess(*m_request, Volume::fromLitres(2));
    m_whatIfTitle = whatIfs()[index];
    m_whatIfAnswer.clear();
    if (!answer) {
        m_whatIfAnswer.append(
            {tr("no answer"), sentenceText(sentenceOf(answer.error()), m_format)});
    } else {
        m_whatIfAnswer.append({tr("now"), outcome(*m_plan)});
        m_whatIfAnswer.append({tr("then"), outcome(answer->plan)});
        for (const PlannedStop& stop : answer->plan.stops)
            m_whatIfAnswer.append(
                {QString::fromStdString(answer->request.route.points[stop.point].name),
                 tr("take on %1").arg(m_format.volume({stop.buy, {}}))});
    }
    emit changed();
}

void PlanViewModel::planFromHere()
{
    const auto at = m_format.distanceFrom(m_here.text(0));
    if (!at || !loaded()) {
        m_notices = {
            {Notice::Severity::error, Sentence::of("Where the car is on the route comes first.")}};
        emit changed();
        return;
    }
    auto rest = routeFrom(m_editor.route(), *at);
    if (!rest) {
        m_notices = {noticeOf(rest.error())};
        emit changed();
        return;
    }
    m_from = at;
    m_route = std::move(*rest);
    planAnew();
    emit changed();
}

void PlanViewModel::planWholeRoute()
{
    m_route = m_editor.route();
    m_from.reset();
    showHere();
    planAnew();
    emit changed();
}

void PlanViewModel::writeCard()
{
    if (!feasible())
        return;
    const std::filesystem::path file = m_car.folder() / "fuel-card.pdf";
    const auto written = writePlanCard(
        *m_request, *m_plan, Paper::a5, file, std::nullopt,
        [this](const Sentence& words) { return sentenceText(words, m_format).toStdString(); });
    m_cardDone = written ? tr("Written to %1").arg(QString::fromStdString(file.string()))
                         : sentenceText(sentenceOf(written.error()), m_format);
    emit changed();
}

} // namespace undermark
