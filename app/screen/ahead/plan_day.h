// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/car/plan_request.h"
#include "app/screen/base/form_model.h"

#include <qqmlintegration.h>

namespace undermark {

// When one leaves, how fast one goes, and what is carried: of the whole way, told on the Ahead page.
class PlanDay : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(QString line READ line NOTIFY changed FINAL)

public:
    explicit PlanDay(QObject* parent = nullptr);

    QString line() const; // "leaves 08:30, 60 km/h · 2 cans of the crew"
    void setFormat(const UnitFormat& format);
    // The day of the departure is that of `now`.
    void addTo(PlanRequest& request, Instant now) const;

    // Takes what was typed: whether it can be.
    Q_INVOKABLE bool take();

signals:
    void told(); // something else than before

private:
    enum FieldId { Leaves, Pace, Cans, CrewCans, CanSize, Load };
    struct Told {
        std::optional<Minutes> leaves;
        std::optional<Speed> pace;
        int cans = 0, crewCans = 0;
        std::optional<Volume> canSize;
        Consumption load;
        friend bool operator==(const Told&, const Told&) = default;
    };

    QList<NumberEntry> entries() const;
    Result<Told> typed() const;

    Told m_told;
};

} // namespace undermark
