// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/screen/ahead/plan_answer.h"
#include "app/screen/base/form_model.h"
#include "app/screen/base/reading_fields.h"

#include <qqmlintegration.h>

namespace undermark {

// The route as it is driven, told on the Ahead page: where the car is, what was taken on there and
// what is in the tank now. What is left of it is planned.
class PlanHere : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(QList<QString> places READ places NOTIFY changed FINAL)
    Q_PROPERTY(int place READ place NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> fuels READ fuels NOTIFY changed FINAL)
    Q_PROPERTY(int fuel READ fuel NOTIFY changed FINAL)

public:
    // Where the fuel comes from that one starts with here, in the order of fuels().
    enum Fuel { OfNow, OfPlan };
    Q_ENUM(Fuel)

    // `whole` is asked for the whole route; `shown`, the plan that is driven, outlives this.
    PlanHere(std::function<Route()> whole, const PlanAnswer& shown, QObject* parent = nullptr);

    QStringList places() const; // a few that are still ahead
    int place() const { return m_place; } // of these; -1: none was touched
    QStringList fuels() const;
    int fuel() const { return m_fuel; }

    // What is left of a route, or all of it where nothing was said. Errors: those of routeFrom.
    Result<Route> left(const Route& whole) const;
    // The question that Now asks, with the reading that was told here instead of what it says of
    // the level.
    Question asked(Question ofNow) const;
    // The fuel that was told here, if any.
    void addTo(PlanRequest& request) const;
    QString basis() const; // "as the plan expects it here"; empty: nothing was told of the fuel

    void setFormat(const UnitFormat& format);
    void look(const CarKnowledge& car); // whether a reading would be understood
    void startAnew(); // on another route

    Q_INVOKABLE void selectPlace(int place); // the car is there
    Q_INVOKABLE void selectFuel(int fuel);
    Q_INVOKABLE void plan();
    Q_INVOKABLE void fillUp(); // to the click, and plan
    Q_INVOKABLE void planWhole();

signals:
    void moved(); // something else is left

private:
    enum FieldId { At, Took, Level, Reading, SecondReading };
    // Of the fuel, as it was told last.
    struct Told {
        std::optional<Tank> planned; // what the plan expects here
        // When one comes by and what is left of the cans, by the plan that is driven; nothing: not known.
        std::optional<Minutes> departure;
        std::optional<std::chrono::sys_days> departureDay;
        std::optional<std::pair<int, int>> cans; // own, and the crew's
        std::optional<Volume> level;
        TypedReading reading;
        Volume took;
        bool full = false;
    };

    void showForm();
    const Route& shownRoute() const { return m_shown.route(); }
    std::vector<std::size_t> ahead() const; // points of the route shown, those of places()
    void take(bool full);
    Result<Told> told(Distance at, bool full) const;

    std::function<Route()> m_whole;
    const PlanAnswer& m_shown;
    std::optional<Distance> m_at;
    int m_place = -1;
    Fuel m_fuel = OfNow;
    ReadingFields m_fields;
    Told m_told;
};

} // namespace undermark
