// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/car/plan_request.h"
#include "app/screen/base/screen_settings.h"

#include <QObject>
#include <qqmlintegration.h>

namespace undermark {

// What is wanted of the plan on the Ahead page.
class PlanWishes : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(QList<undermark::Choice> choices READ choices NOTIFY changed FINAL)
    Q_PROPERTY(QString line READ line NOTIFY changed FINAL)

public:
    using QObject::QObject;

    // The aim, the confidence of each arrival, and what a stage and a stop are worth.
    QList<Choice> choices() const;
    QString line() const;          // "aim of the plan: Least cost · sure on each arrival: 99 %"

    void suit(const Route& route); // the usual aim for it
    void addTo(PlanRequest& request) const;
    void retranslate() { emit changed(); }

    // Outside the lists: nothing changes.
    Q_INVOKABLE void choose(int choice, int option);
    void selectAim(int aim);
    void selectConfidence(int confidence);

signals:
    void changed();
    void chosen(); // something else is wanted

private:
    Aim m_aim = Aim::cost;
    int m_confidence = 1;
    int m_stage = 1;
    int m_stop = 1;
};

} // namespace undermark
