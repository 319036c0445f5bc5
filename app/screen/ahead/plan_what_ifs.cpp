// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_what_ifs.h"

#include "app/screen/base/sentence_text.h"

namespace undermark {

namespace {

constexpr Fraction kMoreBurnt = Fraction::fromPercent(10);
constexpr Volume kEarlier = Volume::fromLitres(2);

} // namespace

PlanWhatIfs::PlanWhatIfs(const PlanAnswer& plan, QObject* parent) : QObject(parent), m_plan(plan) {}

void PlanWhatIfs::setFormat(const UnitFormat& format)
{
    m_format = format;
    emit changed();
}

void PlanWhatIfs::startAnew()
{
    m_background.forget();
    m_asked = -1;
    m_askedText.clear();
    m_answer.reset();
    emit changed();
}

void PlanWhatIfs::followPlan()
{
    const QString asked = m_askedText; // its place among the questions may be another one
    startAnew();
    ask(int(questions().indexOf(asked)));
}

QStringList PlanWhatIfs::questions() const
{
    QStringList questions;
    if (!m_plan.feasible())
        return questions;
    for (const PlannedStop& stop : m_plan.planned()->plan.stops)
        questions.append(
            tr("%1 is closed").arg(QString::fromStdString(m_plan.route().points[stop.point].name)));
    questions.append(tr("It burns 10 % more"));
    questions.append(tr("Fills end %1 earlier").arg(m_format.volume({kEarlier, {}})));
    return questions;
}

// In the order of questions().
PlanWhatIfs::Question PlanWhatIfs::question(std::size_t index) const
{
    const std::vector<PlannedStop>& stops = m_plan.planned()->plan.stops;
    if (index < stops.size())
        return [name = m_plan.route().points[stops[index].point].name](const PlanRequest& request) {
            return whatIfClosed(request, name);
        };
    if (index == stops.size())
        return [](const PlanRequest& request) { return whatIfRateUp(request, kMoreBurnt); };
    return [](const PlanRequest& request) { return whatIfFillsLess(request, kEarlier); };
}

void PlanWhatIfs::ask(int index)
{
    if (index < 0 || index >= questions().size())
        return;
    m_asked = index;
    m_askedText = questions()[index];
    m_answer.reset();
    m_background.ask([this, ask = question(std::size_t(index)),
                      request = m_plan.planned()->request]() -> Background::Delivery {
        return [this, answer = ask(request)] {
            m_answer = answer;
            emit changed();
            emit answered();
        };
    });
    emit changed();
}

QList<Fact> PlanWhatIfs::answer() const
{
    if (!m_answer)
        return {};
    if (!*m_answer)
        return {{tr("no answer"), sentenceText(sentenceOf(m_answer->error()), m_format)}};
    const WhatIf& then = **m_answer;
    QList<Fact> facts{{tr("now"), planOutcome(m_plan.route(), m_plan.planned()->plan, m_format)},
                      {tr("then"), planOutcome(then.request.route, then.plan, m_format)}};
    for (const PlannedStop& stop : then.plan.stops)
        facts.append({QString::fromStdString(then.request.route.points[stop.point].name),
                      tr("take on %1").arg(m_format.volume({stop.buy, {}}))});
    return facts;
}

} // namespace undermark
