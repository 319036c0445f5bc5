// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_day.h"

#include "app/screen/base/typed_clock.h"
#include "engine/tables/route_csv.h"

#include <cmath>

namespace undermark {

namespace {

constexpr int kMostCans = 20; // each is a choice that the planner weighs

} // namespace

PlanDay::PlanDay(QObject* parent) : FormModel(parent)
{
    connect(&m_form, &NumberForm::edited, this, [this] { forgetNotices(); });
    m_form.setEntries(entries());
}

QList<NumberEntry> PlanDay::entries() const
{
    const QString far = m_format.distanceUnit(), litre = m_format.volumeUnit();
    const auto entry = [](FieldId id, const QString& name, const QString& unit, const QString& text) {
        return NumberEntry{id, name, unit, text, false, true, true}; // typed anew
    };
    const auto count = [](int cans) { return cans > 0 ? QString::number(cans) : QString(); };
    const double per100 = (m_told.load * (m_format.oneUnit() * 100.0)).litres();
    return {entry(Leaves, tr("leaves at"), tr("hh:mm"), m_told.leaves ? QString::fromStdString(clockText(*m_told.leaves)) : QString()),
            entry(Pace, tr("goes on average"), tr("%1/h").arg(far),
                  m_told.pace ? m_format.typed(m_told.pace->kmPerHour() / m_format.oneUnit().km(), 1) : QString()),
            entry(Cans, tr("own cans, full"), {}, count(m_told.cans)),
            entry(CrewCans, tr("cans of the crew, full"), {}, count(m_told.crewCans)),
            entry(CanSize, tr("in each can"), litre, m_told.canSize ? m_format.typed(*m_told.canSize) : QString()),
            entry(Load, tr("the load adds"), tr("%1 per 100 %2").arg(litre, far),
                  per100 > 0 ? m_format.typed(Volume::fromLitres(per100)) : QString())};
}

void PlanDay::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_form.setDecimalMark(format.decimalMark());
    m_form.setEntries(entries());
    emit changed();
}

QString PlanDay::line() const
{
    QStringList parts;
    if (m_told.leaves && m_told.pace)
        parts << tr("leaves %1, %2 %3/h").arg(QString::fromStdString(clockText(*m_told.leaves)),
                                              m_format.number(m_told.pace->kmPerHour() / m_format.oneUnit().km(), 0),
                                              m_format.distanceUnit());
    if (m_told.cans > 0)
        parts << tr("own cans: %1").arg(m_told.cans);
    if (m_told.crewCans > 0)
        parts << tr("cans of the crew: %1").arg(m_told.crewCans);
    if (m_told.load > Consumption())
        parts << tr("with a load");
    return parts.isEmpty() ? tr("no time of departure, no cans, no load") : parts.join(QStringLiteral(" · "));
}

void PlanDay::addTo(PlanRequest& request, Instant now) const
{
    if (m_told.leaves) {
        request.departure = m_told.leaves;
        request.speed = m_told.pace;
        request.departureDay = std::chrono::floor<std::chrono::days>(now);
    }
    request.cans = m_told.cans;
    request.crewCans = m_told.crewCans;
    request.canVolume = m_told.canSize.value_or(Volume());
    request.rates = withRatesPlus(std::move(request.rates), m_told.load);
}

Result<PlanDay::Told> PlanDay::typed() const
{
    const auto cansFrom = [this](const QString& text) -> std::optional<int> {
        const auto number = m_format.numberFrom(text);
        return number && *number <= kMostCans && *number == std::floor(*number) ? std::optional(int(*number)) : std::nullopt;
    };
    const auto speedFrom = [this](const QString& text) -> std::optional<Speed> {
        const auto number = m_format.numberFrom(text);
        return number && *number > 0 ? std::optional(Speed::fromKmPerHour(*number * m_format.oneUnit().km())) : std::nullopt;
    };
    const auto litres = [this](const QString& text) { return m_format.volumeFrom(text); };
    // What is not typed anew stays as it was, and not as it is rounded.
    Told told = m_told;
    std::optional<Error> failed;
    const auto take = [&](FieldId id, auto from, auto&& keep) {
        if (m_form.known(id))
            return;
        if (const auto read = m_form.read(id, from))
            keep(*read);
        else
            failed = read.error();
    };
    take(Pace, speedFrom, [&](const auto& pace) { told.pace = pace; });
    take(Cans, cansFrom, [&](const auto& cans) { told.cans = cans.value_or(0); });
    take(CrewCans, cansFrom, [&](const auto& cans) { told.crewCans = cans.value_or(0); });
    take(CanSize, litres, [&](const auto& size) { told.canSize = size; });
    take(Load, litres, [&](const auto& load) {
        told.load = Consumption::fromLitresPerKm(load.value_or(Volume()).litres() / (100 * m_format.oneUnit().km()));
    });
    if (failed)
        return fail(*failed);
    told.leaves = clockFrom(m_form.text(Leaves));
    if (!told.leaves && !m_form.text(Leaves).isEmpty())
        return failInput(Sentence::of("this is no time of day"), Sentence::of("0830 or 8.30, say"), m_form.text(Leaves).toStdString());
    if (told.leaves.has_value() != told.pace.has_value())
        return failInput(Sentence::of("The time of departure and the speed go together."));
    if (told.cans + told.crewCans > 0 && !(told.canSize && *told.canSize > Volume()))
        return failInput(Sentence::of("How much is in each can is missing."));
    return told;
}

bool PlanDay::take()
{
    const Result<Told> now = typed();
    m_notices.clear();
    if (!now)
        m_notices = {noticeOf(now.error())};
    const bool other = now && *now != m_told;
    if (other)
        m_told = *now;
    emit changed();
    if (other)
        emit told();
    return now.has_value();
}

} // namespace undermark
