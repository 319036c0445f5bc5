// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which of a car's tanks is meant: its own until another one is chosen, and then that one.
#pragma once

#include "app/screen/base/screen_settings.h"
#include "engine/logbook/entry.h"

#include <QCoreApplication>
#include <QList>
#include <string>
#include <vector>

namespace undermark {

class TankChoice {
    Q_DECLARE_TR_FUNCTIONS(undermark::TankChoice)

public:
    // The tanks of this car. Another car's, or one without the tank that was meant: its own is.
    void look(const VehicleLog& log);
    // One row, "Which tank?"; none where there is but one tank.
    QList<Choice> choices() const;
    // Whether another one is meant now: an option of choices().
    bool choose(int option);
    void mean(const std::string& tank) { m_tank = tank; }
    // Its name; empty: the vehicle's own.
    const std::string& tank() const { return m_tank; }
    // In words, "aux"; empty where there is but one tank.
    QString word() const;

private:
    static QString wordOf(const std::string& tank);

    std::string m_car;
    std::vector<std::string> m_names; // of all tanks, the own one first
    std::string m_tank;
};

} // namespace undermark
