// SPDX-License-Identifier: GPL-3.0-or-later
//
// The view models of all pages over one car, kept in step: what one of them
// writes, the others read anew.
#pragma once

#include "app/logbook_view_model.h"
#include "app/now_view_model.h"
#include "app/plan_view_model.h"
#include "app/pump_view_model.h"
#include "app/tank_view_model.h"

#include <QVariantMap>

namespace undermark {

class Screen : public QObject {
    Q_OBJECT

public:
    // `car` outlives the screen.
    explicit Screen(CarService& car, Units units = {});

    NowViewModel now;
    PumpViewModel pump;
    PlanViewModel ahead;
    TankViewModel tank;
    LogbookViewModel logbook;

    // What Main.qml requires.
    QVariantMap properties();

private:
    void readAnew(const QObject* writer);
};

} // namespace undermark
