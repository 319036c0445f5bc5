// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/tank_choice.h"

#include <algorithm>

namespace undermark {

void TankChoice::look(const VehicleLog& log)
{
    m_names.assign(1, std::string());
    for (const Entry<ExtraTank>& tank : log.tanks)
        m_names.push_back(tank.value.name);
    if (m_car != log.vehicle.id.uuid || std::ranges::find(m_names, m_tank) == m_names.end())
        m_tank.clear();
    m_car = log.vehicle.id.uuid;
}

QString TankChoice::wordOf(const std::string& tank)
{
    return tank.empty() ? tr("The car's own") : QString::fromStdString(tank);
}

QList<Choice> TankChoice::choices() const
{
    if (m_names.size() < 2)
        return {};
    QStringList words;
    for (const std::string& name : m_names)
        words.append(wordOf(name));
    return {{tr("Which tank?"), words, int(std::ranges::find(m_names, m_tank) - m_names.begin())}};
}

bool TankChoice::choose(int option)
{
    if (option < 0 || std::size_t(option) >= m_names.size() || m_names[std::size_t(option)] == m_tank)
        return false;
    m_tank = m_names[std::size_t(option)];
    return true;
}

QString TankChoice::word() const
{
    return m_names.size() < 2 ? QString() : wordOf(m_tank);
}

} // namespace undermark
