// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_here.h"

namespace undermark {

PlanHere::PlanHere(std::function<Route()> whole, QObject* parent)
    : FormModel(parent), m_whole(std::move(whole))
{
    showForm();
}

void PlanHere::showForm()
{
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries({{0, tr("the car is at"), m_format.distanceUnit(), {}, false, true}});
    forgetNotices();
}

void PlanHere::setFormat(const UnitFormat& format)
{
    m_format = format;
    showForm();
}

void PlanHere::startAnew()
{
    m_at.reset();
    showForm();
}

Result<Route> PlanHere::left(const Route& whole) const
{
    return m_at ? routeFrom(whole, *m_at) : whole;
}

void PlanHere::plan()
{
    const auto at = m_format.distanceFrom(m_form.text(0));
    m_notices.clear();
    if (!at)
        m_notices = {{Severity::error,
                      Sentence::of("Where the car is on the route comes first.")}};
    else if (const auto rest = routeFrom(m_whole(), *at); !rest)
        m_notices = {noticeOf(rest.error())};
    emit changed();
    if (!m_notices.empty())
        return;
    m_at = at;
    emit moved();
}

void PlanHere::planWhole()
{
    startAnew();
    emit moved();
}

} // namespace undermark
