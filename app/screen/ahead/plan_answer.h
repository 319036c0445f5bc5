// SPDX-License-Identifier: GPL-3.0-or-later
//
// A route and its plan, as the Ahead page shows them. What is shown always belongs
// together: the plan is the shown route's, or there is none.
#pragma once

#include "app/car/plan_rows.h"
#include "app/car/planned.h"
#include "app/screen/base/fact.h"
#include "app/screen/base/horizon_picture.h"
#include "app/screen/base/notice_text.h"

#include <QObject>
#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

// One line of the route table: a row of planRows() in words, or of a route that has no plan.
struct RouteRow {
    Q_GADGET
    QML_VALUE_TYPE(routeRow)
    Q_PROPERTY(QString at MEMBER at FINAL)
    Q_PROPERTY(QString unit MEMBER unit FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString buy MEMBER buy FINAL)
    Q_PROPERTY(QString detail MEMBER detail FINAL)
    Q_PROPERTY(QString way MEMBER way FINAL)
    Q_PROPERTY(QString spoken MEMBER spoken FINAL)
public:
    QString at; // "118.6"
    QString unit;
    QString name;
    QString buy;    // "take on 23.7 L", empty where one does not stop
    QString detail; // "sure 8.9 L, even 15.9 L · leaves with 39.6 L; no return after 220.7 km"
    QString way;    // "leg 41.5 km · pump · on: Open road, needs 2.2 L"
    QString spoken;
    friend bool operator==(const RouteRow&, const RouteRow&) = default;
};

class PlanAnswer : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(bool feasible READ feasible NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(QString changes READ changes NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::RouteRow> rows READ rows NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::RouteRow> stops READ stops NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> cures READ cures NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> legs READ legs NOTIFY changed FINAL)
    Q_PROPERTY(int leg READ leg NOTIFY changed FINAL)
    Q_PROPERTY(undermark::HorizonPicture horizon READ horizon NOTIFY changed FINAL)

public:
    using QObject::QObject;

    bool feasible() const { return m_planned && m_planned->plan.feasible; }
    QString summary() const;
    QString changes() const; // against the plan shown before, of what is still ahead; or empty
    QList<NoticeText> notices() const;
    QList<RouteRow> rows() const;  // every point of the route
    QList<RouteRow> stops() const; // the start, where fuel is bought, and the finish
    QList<Fact> cures() const;     // what would make it feasible, each with what to mind
    QStringList legs() const;      // the ways between two stops
    int leg() const { return m_leg; }
    HorizonPicture horizon() const; // of the leg

    const Route& route() const { return m_route; }
    const std::optional<Planned>& planned() const { return m_planned; }
    void setFormat(const UnitFormat& format);
    void showRoute(Route route); // until its plan is known
    void show(Route route, Result<Planned> planned);

    Q_INVOKABLE void selectLeg(int leg);

signals:
    void changed();

private:
    // Of these points of the plan (none: all).
    QList<RouteRow> planned(const std::vector<std::size_t>& points) const;
    // The rows go to the next of all points, or of stops and ends alone (`wholeWay`).
    QString way(std::size_t point, const PlanRow* planned, bool wholeWay) const;
    QString detail(const PlanRow& planned) const;
    RouteRow row(std::size_t point, const PlanRow* planned = nullptr, bool wholeWay = false) const;
    QString litres(Volume volume) const { return m_format.volume({volume, {}}); }

    UnitFormat m_format;
    Route m_route;
    std::optional<Planned> m_planned;
    std::vector<Sentence> m_changes;
    std::optional<Error> m_error; // why there is none
    int m_leg = 0;
};

// "1 stop, 18.3 L to buy. …", or why there is no plan.
QString planOutcome(const PlanRequest& request, const Plan& plan, const UnitFormat& format);

} // namespace undermark
