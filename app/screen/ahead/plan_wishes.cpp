// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_wishes.h"

#include <array>

namespace undermark {

namespace {

constexpr std::array kConfidences{0.95, 0.99, 0.999}; // by their choice

} // namespace

QList<Choice> PlanWishes::choices() const
{
    return {{tr("aim of the plan"),
             {tr("Least cost"), tr("Fewest stops"), tr("Least time"), tr("Lightest")},
             int(m_aim)},
            {tr("sure on each arrival"), {tr("95 %"), tr("99 %"), tr("99.9 %")}, m_confidence}};
}

QString PlanWishes::line() const
{
    QStringList parts;
    for (const Choice& choice : choices())
        parts.append(tr("%1: %2").arg(choice.name, choice.options[choice.current]));
    return parts.join(QStringLiteral(" · "));
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

void PlanWishes::choose(int choice, int option)
{
    if (choice == 0)
        selectAim(option);
    else if (choice == 1)
        selectConfidence(option);
}

void PlanWishes::selectAim(int aim)
{
    if (aim < 0 || aim >= choices()[0].options.size())
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
