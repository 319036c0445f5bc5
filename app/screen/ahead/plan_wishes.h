// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/car/plan_request.h"

#include <QObject>
#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

// What is wanted of the plan on the Ahead page.
class PlanWishes : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(QList<QString> aims READ aims NOTIFY changed FINAL)
    Q_PROPERTY(int aim READ aim NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> confidences READ confidences NOTIFY changed FINAL)
    Q_PROPERTY(int confidence READ confidence NOTIFY changed FINAL)

public:
    using QObject::QObject;

    QStringList aims() const;
    int aim() const { return int(m_aim); }
    QStringList confidences() const; // of each arrival
    int confidence() const { return m_confidence; }

    void suit(const Route& route); // the usual aim for it
    void addTo(PlanRequest& request) const;
    void retranslate() { emit changed(); }

    // Outside the lists: nothing changes.
    Q_INVOKABLE void selectAim(int aim);
    Q_INVOKABLE void selectConfidence(int confidence);

signals:
    void changed();
    void chosen(); // something else is wanted

private:
    Aim m_aim = Aim::cost;
    int m_confidence = 1;
};

} // namespace undermark
