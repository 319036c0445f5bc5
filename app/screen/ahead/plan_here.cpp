// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_here.h"

#include "app/car/plan_sentences.h"
#include "engine/planning/left_of_plan.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace undermark {

namespace {

constexpr std::size_t kMostPlaces = 6; // what a thumb finds

} // namespace

PlanHere::PlanHere(std::function<Route()> whole, const PlanAnswer& shown, QObject* parent)
    : FormModel(parent), m_whole(std::move(whole)), m_shown(shown)
{
    showForm();
    connect(&m_form, &NumberForm::edited, this, [this] {
        if (m_place >= 0 && m_form.text(At) != m_format.typed(shownRoute().points[ahead()[std::size_t(m_place)]].at))
            m_place = -1; // typed over
        emit changed();
    });
    connect(&shown, &PlanAnswer::changed, this, [this] {
        m_place = -1;
        emit changed();
    });
}

void PlanHere::showForm()
{
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries(QList<NumberEntry>{{At, tr("the car is at"), m_format.distanceUnit(), {}, false, true},
                                         {Took, tr("taken on there"), m_format.volumeUnit(), {}, false, true},
                                         {Level, tr("usable in the tank now"), m_format.volumeUnit(), {}, false, true}}
                      + m_fields.entries(Reading, SecondReading));
    m_place = -1;
    forgetNotices();
}

void PlanHere::setFormat(const UnitFormat& format)
{
    m_format = format;
    showForm();
}

void PlanHere::look(const CarKnowledge& car)
{
    if (std::exchange(m_fields, ReadingFields::of(car)) != m_fields)
        showForm();
}

void PlanHere::startAnew()
{
    m_at.reset();
    m_told = {};
    showForm();
}

std::vector<std::size_t> PlanHere::ahead() const
{
    std::vector<std::size_t> points;
    const auto& all = shownRoute().points;
    for (std::size_t i = 1; i + 1 < all.size() && points.size() < kMostPlaces; ++i)
        points.push_back(i);
    return points;
}

QStringList PlanHere::places() const
{
    QStringList names;
    for (const std::size_t point : ahead())
        names.append(QString::fromStdString(placeName(shownRoute().points[point])));
    return names;
}

void PlanHere::selectPlace(int place)
{
    if (place < 0 || place >= places().size())
        return;
    m_form.setText(At, m_format.typed(shownRoute().points[ahead()[std::size_t(place)]].at));
    m_place = place;
    forgetNotices();
}

QStringList PlanHere::fuels() const
{
    return {tr("Fuel as Now says"), tr("Fuel as planned")};
}

void PlanHere::selectFuel(int fuel)
{
    if (fuel != OfNow && fuel != OfPlan)
        return;
    m_fuel = Fuel(fuel);
    emit changed();
}

Result<Route> PlanHere::left(const Route& whole) const
{
    return m_at ? routeFrom(whole, *m_at) : whole;
}

Question PlanHere::asked(Question ofNow) const
{
    if (!m_told.reading.any())
        return ofNow;
    Question here;
    here.mode = std::move(ofNow.mode);
    here.now = ofNow.now;
    here.signal = m_told.reading.first;
    here.signal2 = m_told.reading.second;
    return here;
}

void PlanHere::addTo(PlanRequest& request) const
{
    Tank& tank = request.tank;
    const auto knownAnew = [&](Volume litres) {
        tank.start = {litres, tank.fullSd};
        tank.driven.clear();
        request.startNotes.clear();
    };
    if (m_at) {
        request.departure = m_told.departure;
        request.departureDay = m_told.departureDay;
        if (m_told.cans)
            std::tie(request.cans, request.crewCans) = *m_told.cans;
    }
    if (m_told.planned) {
        tank.start = m_told.planned->start;
        tank.driven = m_told.planned->driven;
        request.startNotes.clear();
    }
    if (m_told.level)
        knownAnew(*m_told.level);
    if (m_told.full)
        knownAnew(tank.capacity);
    else if (m_told.took > Volume())
        tank.start.mean = std::min(tank.start.mean + m_told.took, tank.capacity);
}

QString PlanHere::basis() const
{
    if (m_told.full)
        return tr("Starts with a tank that was filled up here.");
    if (m_told.level)
        return tr("Starts with the fuel that was typed here.");
    if (m_told.reading.any())
        return tr("Starts with the reading that was typed here.");
    if (m_told.planned)
        return m_told.took > Volume()
                   ? tr("Starts with what the plan expects here, and what was taken on.")
                   : tr("Starts with what the plan expects here.");
    return m_told.took > Volume() ? tr("Starts with the fuel that Now says, and what was taken on.") : QString();
}

Result<PlanHere::Told> PlanHere::told(Distance at, bool full) const
{
    Told told;
    told.full = full;
    told.level = m_format.volumeFrom(m_form.text(Level));
    told.took = m_format.volumeFrom(m_form.text(Took)).value_or(Volume());
    told.reading = typedReading(m_form, m_format, Reading, SecondReading);
    if (told.level && told.reading.any())
        return fail(ErrorCode::badInput, Sentence::of("The fuel is told in one way: as litres or as a reading."));
    if (told.reading.second && !told.reading.first)
        return fail(ErrorCode::badInput, Sentence::of("The reading of the lobe with the pump is missing."));
    const bool byPlan = m_fuel == OfPlan && !full && !told.level && !told.reading.any();
    if (!m_shown.feasible()) {
        if (byPlan)
            return fail(ErrorCode::badInput, Sentence::of("There is no plan to go by: the fuel has to be typed."));
        return told;
    }
    const Planned& planned = *m_shown.planned();
    auto rest = leftOfPlan(planned.request, planned.plan, at);
    if (!rest)
        return byPlan ? Result<Told>(fail(rest.error())) : told;
    told.departure = rest->departure;
    told.departureDay = rest->departureDay;
    told.cans = {rest->cans, rest->crewCans};
    if (byPlan)
        told.planned = std::move(rest->tank);
    return told;
}

void PlanHere::take(bool full)
{
    auto at = m_format.distanceFrom(m_form.text(At));
    if (m_place >= 0) // exactly
        at = shownRoute().points[ahead()[std::size_t(m_place)]].at;
    m_notices.clear();
    std::optional<Told> heard;
    if (!at)
        m_notices = {{Severity::error,
                      Sentence::of("Where the car is on the route comes first.")}};
    else if (const auto rest = routeFrom(m_whole(), *at); !rest)
        m_notices = {noticeOf(rest.error())};
    else if (auto fuel = told(*at, full); !fuel)
        m_notices = {noticeOf(fuel.error())};
    else
        heard = std::move(*fuel);
    emit changed();
    if (!heard)
        return;
    m_at = at;
    m_told = std::move(*heard);
    showForm();
    emit moved();
}

void PlanHere::plan()
{
    take(false);
}

void PlanHere::fillUp()
{
    take(true);
}

void PlanHere::planWhole()
{
    startAnew();
    emit moved();
}

} // namespace undermark
