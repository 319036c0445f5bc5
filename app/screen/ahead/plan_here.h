// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/screen/base/form_model.h"
#include "engine/planning/route.h"

#include <qqmlintegration.h>

namespace undermark {

// Where the car is on the route, as typed on the Ahead page; what is left of it is planned.
class PlanHere : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")

public:
    // `whole` is asked for the whole route.
    explicit PlanHere(std::function<Route()> whole, QObject* parent = nullptr);

    // What is left of a route, or all of it where nothing was said. Errors: those of routeFrom.
    Result<Route> left(const Route& whole) const;

    void setFormat(const UnitFormat& format);
    void startAnew(); // on another route

    Q_INVOKABLE void plan();
    Q_INVOKABLE void planWhole();

signals:
    void moved(); // something else is left

private:
    void showForm();

    std::function<Route()> m_whole;
    std::optional<Distance> m_at;
};

} // namespace undermark
