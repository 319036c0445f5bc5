// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Ahead page: a route, its plan, and what would change it. What is chosen, typed and
// shown stands in a part of its own; here is how they hang together.
//
//   files, map, editor, here, wishes  ->  a request  ->  planned away from the screen  ->  answer
//                                                                whatIfs, card  <-
//
// Guarantees (each has a test in tests/app/screen/ahead/plan_view_model_test.cpp):
//  * the plan is the engine's for what is chosen here, planned anew at once, and never on
//    the thread of the screen: until it is there, the one before is shown;
//  * it starts from what Now says, told odometer and load included;
//  * where only some pumps have a price, the plan is for the fewest stops, and says so;
//  * a route that cannot be read changes nothing and is said;
//  * an infeasible way says how far it goes, what is missing and what would do;
//  * a changed route that is not saved is left only when asked a second time.
#pragma once

#include "app/car/car.h"
#include "app/screen/ahead/fuel_card.h"
#include "app/screen/ahead/plan_answer.h"
#include "app/screen/ahead/plan_here.h"
#include "app/screen/ahead/plan_map.h"
#include "app/screen/ahead/plan_what_ifs.h"
#include "app/screen/ahead/plan_day.h"
#include "app/screen/ahead/plan_wishes.h"
#include "app/screen/ahead/route_edit_model.h"
#include "app/screen/base/background.h"
#include "app/screen/base/file_list.h"
#include "app/screen/base/page_model.h"

namespace undermark {

class PlanViewModel : public PageModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(undermark::FileList* files READ files CONSTANT FINAL)
    Q_PROPERTY(undermark::RouteEditModel* editor READ editor CONSTANT FINAL)
    Q_PROPERTY(undermark::PlanMap* map READ map CONSTANT FINAL)
    Q_PROPERTY(undermark::PlanHere* here READ here CONSTANT FINAL)
    Q_PROPERTY(undermark::PlanWishes* wishes READ wishes CONSTANT FINAL)
    Q_PROPERTY(undermark::PlanDay* day READ day CONSTANT FINAL)
    Q_PROPERTY(undermark::PlanAnswer* answer READ answer CONSTANT FINAL)
    Q_PROPERTY(undermark::PlanWhatIfs* whatIfs READ whatIfs CONSTANT FINAL)
    Q_PROPERTY(undermark::FuelCard* card READ card CONSTANT FINAL)
    Q_PROPERTY(bool loaded READ loaded NOTIFY changed FINAL)
    Q_PROPERTY(bool planning READ planning NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString basis READ basis NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)

public:
    // Of the page, in their order.
    enum Tab { Stops, Rows, WhatIfs, FromHere };
    Q_ENUM(Tab)

    // `car` outlives the view model. Route files are looked for in `roots`, and
    // where saved ones are: in routes/ beside the logbook.
    PlanViewModel(Car& car, const UnitFormat& format, const FileRoots& roots,
                  QObject* parent = nullptr);

    FileList* files() { return &m_files; }
    RouteEditModel* editor() { return &m_editor; }
    PlanMap* map() { return &m_map; }
    PlanHere* here() { return &m_here; }
    PlanWishes* wishes() { return &m_wishes; }
    PlanDay* day() { return &m_day; }
    PlanAnswer* answer() { return &m_answer; }
    PlanWhatIfs* whatIfs() { return &m_whatIfs; }
    FuelCard* card() { return &m_card; }
    bool loaded() const { return !m_route.points.empty(); }
    bool planning() const { return m_background.busy(); }
    QString title() const;
    QString basis() const; // "Starts with the fuel that Now says: odometer, 5 min ago."
    QList<NoticeText> notices() const; // of what was touched last, else of the plan

    // What is asked of the car, and what that rests on in words: as the Now page asks.
    void askAs(std::function<Question()> question, std::function<QString()> basis);
    void refresh() override;
    void setFormat(const UnitFormat& format) override;
    void setRoute(Route route, const QString& name);
    void setRoute(RouteFile file, const QString& name); // with what is known of the ground
    Q_INVOKABLE void pickFile(int row);
    Q_INVOKABLE void newRoute();   // made from nothing, row by row
    Q_INVOKABLE void otherRoute(); // back to the list of files
    Q_INVOKABLE void editRow(int row); // of the answer's

signals:
    void changed();
    void settled(); // what was asked last is answered

private:
    std::vector<std::string> modes();
    CardWishes cardWishes();
    void start(const Route& route); // another one
    Result<PlanRequest> request(const Route& route);
    void plan(Route route);
    void planLeft();
    void planOnMap();
    PumpsQuestion askOfMap() const;
    void show(Route route, Result<Planned> planned);
    Result<void> takeChanged(const Route& whole);

    Car& m_car;
    UnitFormat m_format;
    std::function<Question()> m_question = [] { return Question{}; };
    std::function<QString()> m_basis;
    FileList m_files;
    RouteEditModel m_editor; // of all of the route
    PlanMap m_map;
    PlanAnswer m_answer;
    PlanHere m_here;
    PlanWishes m_wishes;
    PlanDay m_day;
    PlanWhatIfs m_whatIfs;
    FuelCard m_card;
    Route m_route;          // what is planned: all of it, or what is left
    bool m_leaving = false; // was asked once
    std::vector<Notice> m_notices;
    Background m_background;
};

} // namespace undermark
