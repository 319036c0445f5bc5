// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_wishes.h"

#include <array>

namespace undermark {

namespace {

constexpr std::array kConfidences{0.95, 0.99, 0.999}; // by confidences()

} // namespace

QStringList PlanWishes::aims() const
{
    return {tr("Least cost"), tr("Fewest stops"), tr("Least time"), tr("Lightest")};
}

QStringList PlanWishes::confidences() const
{
    return {tr("95 %"), tr("99 %"), tr("99.9 %")};
}

void PlanWishes::suit(const Route& route)
{
    m_aim = usualAim(route);
    emit changed();
}

void PlanWishes::addTo(PlanRequest& request) const
{
    request.aim = m_aim;
    request.confidence = Probability::of(kConfidences[std::size_t(m_confidence)]);
}

void PlanWishes::selectAim(int aim)
{
    if (aim < 0 || aim >= aims().size())
        return;
    m_aim = Aim(aim);
    emit changed();
    emit chosen();
}

void PlanWishes::selectConfidence(int confidence)
{
    if (confidence < 0 || std::size_t(confidence) >= kConfidences.size())
        return;
    m_confidence = confidence;
    emit changed();
    emit chosen();
}

} // namespace undermark
