// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_what_ifs.h"

#include "app/screen/base/sentence_text.h"
#include "engine/planning/any_closure.h"

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
    m_asked.clear();
    m_answer.reset();
    emit changed();
}

void PlanWhatIfs::followPlan()
{
    const QStringList asked = m_asked;
    const QStringList now = questions();
    startAnew();
    for (const QString& question : asked)
        if (now.contains(question))
            m_asked.append(question);
    askAll();
}

QStringList PlanWhatIfs::questions() const
{
    QStringList questions;
    if (!m_plan.feasible())
        return questions;
    for (const PlannedStop& stop : m_plan.planned()->plan.stops)
        questions.append(
            tr("%1 is closed").arg(QString::fromStdString(m_plan.route().points[stop.point].name)));
    if (!m_plan.planned()->plan.stops.empty())
        questions.append(tr("Any one stop is closed"));
    questions.append(tr("It burns 10 % more"));
    questions.append(tr("Fills end %1 earlier").arg(m_format.volume({kEarlier, {}})));
    return questions;
}

// In the order of questions().
WhatIfQuestion PlanWhatIfs::question(std::size_t index) const
{
    const std::vector<PlannedStop>& stops = m_plan.planned()->plan.stops;
    if (index < stops.size())
        return [name = m_plan.route().points[stops[index].point].name](const PlanRequest& request) {
            return whatIfClosed(request, name);
        };
    if (index == stops.size() && !stops.empty())
        return [](const PlanRequest& request) -> Result<WhatIf> {
            auto answer = planForAnyClosure(request);
            if (!answer)
                return fail(answer.error());
            return WhatIf{{}, request, std::move(answer->plan)};
        };
    if (int(index) + 2 == questions().size())
        return [](const PlanRequest& request) { return whatIfRateUp(request, kMoreBurnt); };
    return [](const PlanRequest& request) { return whatIfFillsLess(request, kEarlier); };
}

void PlanWhatIfs::ask(int index)
{
    if (index < 0 || index >= questions().size())
        return;
    const QString question = questions()[index];
    if (m_asked.removeAll(question) == 0)
        m_asked.append(question);
    askAll();
}

QList<int> PlanWhatIfs::asked() const
{
    QList<int> places;
    for (int i = 0; const QString& question : questions()) {
        if (m_asked.contains(question))
            places.append(i);
        ++i;
    }
    return places;
}

// Any one stop closed asks the plan itself, so it comes last.
void PlanWhatIfs::askAll()
{
    m_answer.reset();
    m_background.forget();
    const QString any = tr("Any one stop is closed");
    std::vector<WhatIfQuestion> all;
    const QStringList now = questions();
    for (const int place : asked())
        if (now[place] != any)
            all.push_back(question(std::size_t(place)));
    if (m_asked.contains(any))
        all.push_back(question(std::size_t(now.indexOf(any))));
    emit changed();
    if (all.empty())
        return;
    m_background.ask([this, all = std::move(all),
                      request = m_plan.planned()->request]() -> Background::Delivery {
        return [this, answer = whatIfTogether(request, all)] {
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
    QList<Fact> facts{{tr("now"), planOutcome(m_plan.planned()->request, m_plan.planned()->plan, m_format)},
                      {tr("then"), planOutcome(then.request, then.plan, m_format)}};
    for (const PlannedStop& stop : then.plan.stops)
        facts.append({QString::fromStdString(then.request.route.points[stop.point].name),
                      tr("take on %1").arg(m_format.volume({stop.buy, {}}))});
    return facts;
}

} // namespace undermark
