// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Ahead page: a route, the fuel stops on it, and what would change them.
//
// Guarantees (each has a test in tests/app/screen/ahead/plan_view_model_test.cpp):
//  * the plan is the engine's for what is chosen here, planned anew at once;
//  * a route that cannot be read changes nothing and is said;
//  * an infeasible way says how far it goes, what is missing and what would do;
//  * a changed route that is not saved is left only when asked a second time.
// How its rows are changed: app/screen/ahead/route_edit_model.h.
#pragma once

#include "app/car/car.h"
#include "app/car/plan_request.h"
#include "app/screen/ahead/route_edit_model.h"
#include "app/screen/base/fact.h"
#include "app/screen/base/file_list.h"
#include "app/screen/base/horizon_picture.h"
#include "app/screen/base/notice_text.h"
#include "app/screen/base/number_form.h"

#include <QObject>
#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

// One line of the route table.
struct RouteRow {
    Q_GADGET
    QML_VALUE_TYPE(routeRow)
    Q_PROPERTY(QString at MEMBER at FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString detail MEMBER detail FINAL)
    Q_PROPERTY(QString arrive MEMBER arrive FINAL)
    Q_PROPERTY(QString buy MEMBER buy FINAL)
    Q_PROPERTY(QString risk MEMBER risk FINAL)
    Q_PROPERTY(QString spoken MEMBER spoken FINAL)
public:
    QString at;     // "118.6"
    QString name;
    QString detail; // how one drives on, and what fuel is there
    QString arrive; // "11.9 sure, 16.0 even"
    QString buy;    // "+ 17.9 L", empty where one does not stop
    QString risk;   // of being dry on arrival
    QString spoken;
    friend bool operator==(const RouteRow&, const RouteRow&) = default;
};

class PlanViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(undermark::FileList* files READ files CONSTANT FINAL)
    Q_PROPERTY(undermark::RouteEditModel* editor READ editor CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ loaded NOTIFY changed FINAL)
    Q_PROPERTY(bool feasible READ feasible NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> aims READ aims NOTIFY changed FINAL)
    Q_PROPERTY(int aim READ aim NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> confidences READ confidences NOTIFY changed FINAL)
    Q_PROPERTY(int confidence READ confidence NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::RouteRow> rows READ rows NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::RouteRow> stops READ stops NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> cures READ cures NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> legs READ legs NOTIFY changed FINAL)
    Q_PROPERTY(int leg READ leg NOTIFY changed FINAL)
    Q_PROPERTY(undermark::HorizonPicture horizon READ horizon NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> whatIfs READ whatIfs NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> whatIfAnswer READ whatIfAnswer NOTIFY changed FINAL)
    Q_PROPERTY(QString whatIfTitle READ whatIfTitle NOTIFY changed FINAL)
    Q_PROPERTY(undermark::NumberForm* here READ here CONSTANT FINAL)
    Q_PROPERTY(QString cardDone READ cardDone NOTIFY changed FINAL)

public:
    // `car` outlives the view model. Route files are looked for in `folder`, and
    // where saved ones are: in routes/ beside the logbook.
    PlanViewModel(Car& car, Units units, const QString& folder, QObject* parent = nullptr);

    FileList* files() { return &m_files; }
    RouteEditModel* editor() { return &m_editor; }
    bool loaded() const { return !m_route.points.empty(); }
    bool feasible() const { return m_plan && m_plan->feasible; }
    QString title() const;
    QString summary() const;
    QList<NoticeText> notices() const { return noticeTexts(m_notices, m_format); }
    QStringList aims() const;
    int aim() const { return int(m_aim); }
    QStringList confidences() const;
    int confidence() const { return m_confidence; }
    QList<RouteRow> rows() const;  // every point of the route
    QList<RouteRow> stops() const; // where fuel is bought
    QList<Fact> cures() const;    // what would make it feasible
    QStringList legs() const;     // the ways between two stops
    int leg() const { return m_leg; }
    HorizonPicture horizon() const;
    QStringList whatIfs() const;
    QList<Fact> whatIfAnswer() const { return m_whatIfAnswer; }
    QString whatIfTitle() const { return m_whatIfTitle; }
    NumberForm* here() { return &m_here; }
    QString cardDone() const { return m_cardDone; }

    Q_INVOKABLE void refresh();
    void setFormat(const UnitFormat& format);
    void setRoute(Route route, const QString& name);
    Q_INVOKABLE void pickFile(int row);
    Q_INVOKABLE void otherRoute(); // back to the list of files
    Q_INVOKABLE void editRow(int row);
    Q_INVOKABLE void selectAim(int aim);
    Q_INVOKABLE void selectConfidence(int confidence);
    Q_INVOKABLE void selectLeg(int leg);
    Q_INVOKABLE void askWhatIf(int index);
    // From where the car is, as typed in `here`, with the fuel it has now.
    Q_INVOKABLE void planFromHere();
    Q_INVOKABLE void planWholeRoute();
    Q_INVOKABLE void writeCard(); // fuel-card.pdf beside the logbook

signals:
    void changed();

private:
    struct Planned {
        PlanRequest request;
        Plan plan;
    };
    Result<Planned> planned(const Route& route);
    void show(Result<Planned> planned);
    void planAnew() { show(planned(m_route)); }
    Result<Route> fromHere(const Route& whole) const;
    Result<void> takeChanged(const Route& whole);
    RouteRow row(std::size_t point) const;
    void addPassage(RouteRow& row, const Passage& passage) const;
    QString outcome(const Plan& plan) const;
    void showHere();

    Car& m_car;
    UnitFormat m_format;
    FileList m_files;
    RouteEditModel m_editor;        // of all of the route
    Route m_route;                  // what is planned: all of it, or what is left
    std::optional<Distance> m_from; // where what is left starts
    bool m_leaving = false;         // was asked once
    Aim m_aim = Aim::cost;
    int m_confidence = 1;
    int m_leg = 0;
    std::optional<PlanRequest> m_request;
    std::optional<Plan> m_plan;
    std::vector<Cure> m_cures;
    std::vector<Notice> m_notices;
    QString m_whatIfTitle;
    QList<Fact> m_whatIfAnswer;
    NumberForm m_here;
    QString m_cardDone;
};

} // namespace undermark
