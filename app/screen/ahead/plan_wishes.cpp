// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_wishes.h"

#include <array>

namespace undermark {

namespace {

// By their choices.
constexpr std::array kConfidences{0.95, 0.99, 0.999};
constexpr std::array kStopLitres{0.0, 1.0, 5.0};
constexpr int kUsualStage = 1;
constexpr int kUsualStop = 1;

} // namespace

QList<Choice> PlanWishes::choices() const
{
    return {{tr("aim of the plan"),
             {tr("Least cost"), tr("Fewest stops"), tr("Least time"), tr("Lightest")},
             int(m_aim)},
            {tr("sure on each arrival"), {tr("95 %"), tr("99 %"), tr("99.9 %")}, m_confidence},
            {tr("dry on a timed section"), {tr("as elsewhere"), tr("ten times rarer")}, m_stage},
            {tr("a stop counts as"),
             {tr("nothing"), tr("the price of 1 litre"), tr("the price of 5 litres")},
             m_stop}};
}

QString PlanWishes::line() const
{
    QStringList parts;
    const QList<Choice> all = choices();
    const std::array shown{true, true, m_stage != kUsualStage, m_stop != kUsualStop};
    for (std::size_t i = 0; i < shown.size(); ++i)
        if (const Choice& choice = all[qsizetype(i)]; shown[i])
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
    setConfidence(request, Probability::of(kConfidences[std::size_t(m_confidence)]));
    if (m_stage == 0)
        request.stageConfidence.reset();
    request.stopCost = kStopLitres[std::size_t(m_stop)] * usualStopCost(request.route);
}

void PlanWishes::choose(int choice, int option)
{
    if (choice == 0)
        return selectAim(option);
    if (choice == 1)
        return selectConfidence(option);
    if (choice < 0 || choice > 3 || option < 0 || option >= choices()[choice].options.size())
        return;
    (choice == 2 ? m_stage : m_stop) = option;
    emit changed();
    emit chosen();
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
