// SPDX-License-Identifier: GPL-3.0-or-later
//
// One row of the route opened to be changed, on the Ahead page.
//
// Guarantees (each has a test in tests/app/screen/ahead/route_edit_model_test.cpp):
//  * every edit is shown to the planner before it counts; one that the route or the
//    planner refuses is said in one sentence and changes nothing;
//  * what was typed is taken with whatever is touched next, never dropped unasked;
//  * a route may be made from nothing, and takes up the pumps of the routes saved before;
//  * save() makes a new file in the program's own folder: nothing is written over.
#pragma once

#include "app/screen/ahead/known_pumps.h"
#include "app/screen/ahead/route_editor.h"
#include "app/screen/base/form_model.h"

#include <QStringList>
#include <filesystem>
#include <functional>
#include <qqmlintegration.h>

namespace undermark {

class RouteEditModel : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(bool opened READ opened NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString typedName READ typedName NOTIFY changed FINAL)
    Q_PROPERTY(QString place READ place NOTIFY changed FINAL)
    Q_PROPERTY(bool first READ first NOTIFY changed FINAL)
    Q_PROPERTY(bool last READ last NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> parts READ parts NOTIFY changed FINAL)
    Q_PROPERTY(undermark::RouteEditModel::Tab part READ part NOTIFY changed FINAL)
    Q_PROPERTY(QString behindWord READ behindWord NOTIFY changed FINAL)
    Q_PROPERTY(QString timedWord READ timedWord NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> modes READ modes NOTIFY changed FINAL)
    Q_PROPERTY(int mode READ mode NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> fuels READ fuels NOTIFY changed FINAL)
    Q_PROPERTY(int fuel READ fuel NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> knownPumps READ knownPumps NOTIFY changed FINAL)
    Q_PROPERTY(QString routeName READ routeName NOTIFY changed FINAL)
    Q_PROPERTY(QString doneWord READ doneWord NOTIFY changed FINAL)
    Q_PROPERTY(QString undoWord READ undoWord NOTIFY changed FINAL)
    Q_PROPERTY(QString saved READ saved NOTIFY changed FINAL)
    Q_PROPERTY(bool unsaved READ unsaved NOTIFY changed FINAL)

public:
    // What of the row is on view, in the order of parts().
    enum Tab { Road, Fuel, Control, Row };
    Q_ENUM(Tab)

    // Plans the changed route; an error refuses the edit.
    using Planner = std::function<Result<void>(const Route&)>;

    RouteEditModel(Planner planner, std::filesystem::path folder, QObject* parent = nullptr);

    // Another route, and the modes that the car knows.
    void load(Route route, const QString& name, const std::vector<std::string>& modes);
    // A route of its own: a start and a row, which is opened to be told how far it is.
    void begin(const std::vector<std::string>& modes);
    const Route& route() const { return m_editor.route(); }
    const QString& routeName() const { return m_routeName; }
    void setFormat(const UnitFormat& format);

    bool opened() const { return m_row.has_value(); }
    QString name() const;
    QString typedName() const { return m_typedName.value_or(name()); }
    QString place() const; // "row 3 of 10, at 77.1 km"
    bool first() const { return m_row && *m_row == 0; }
    bool last() const { return m_row && *m_row + 1 == route().points.size(); }
    QStringList parts() const;
    Tab part() const { return m_part; }
    QString behindWord() const;
    QString timedWord() const; // of the section from here on; empty: there is none
    QStringList modes() const;
    int mode() const;
    QStringList fuels() const;
    int fuel() const;
    QString doneWord() const; // what done() would do
    QString undoWord() const; // empty: nothing to undo
    QString saved() const { return m_saved; } // where to, once it is
    bool unsaved() const { return route() != m_kept || m_routeName != m_keptName; }
    QStringList knownPumps() const; // of the routes saved before

    Q_INVOKABLE void open(int row);
    Q_INVOKABLE void step(int rows); // to another row, -1 or 1
    Q_INVOKABLE void selectPart(int part);
    Q_INVOKABLE void typeName(const QString& name);
    Q_INVOKABLE void takeName(); // if one is typed
    Q_INVOKABLE void nameRoute(const QString& name); // for the next save
    Q_INVOKABLE void takeKnownPump(int pump); // its name and price, for this row
    Q_INVOKABLE void switchBehind();
    Q_INVOKABLE void switchTimed();
    Q_INVOKABLE void selectMode(int mode);
    Q_INVOKABLE void selectFuel(int fuel);
    // Takes what is typed; with nothing typed, closes.
    Q_INVOKABLE void done();
    Q_INVOKABLE void close(); // drops what is typed
    Q_INVOKABLE void addRow(); // after this one; it is opened
    Q_INVOKABLE void removeRow();
    Q_INVOKABLE void undo(); // drops what is typed first
    Q_INVOKABLE void save();

signals:
    void stored(); // as a file: the route has another name now
    void renamed();

private:
    enum FieldId { Leg, Price, Most, Least, StopTime, Detour, Opens, Closes, FirstDay, LastDay, Due, Rest, Idle, Floor };

    void show(std::size_t row, Behind behind = Behind::moves);
    static bool isDay(int field) { return field == FirstDay || field == LastDay; }
    static bool isClock(int field) { return field == Opens || field == Closes || field == Due; }
    QList<NumberEntry> entries() const;
    bool typed() const;
    Result<RowEdit> edit() const;
    // Runs an edit, and takes it back where the planner refuses it.
    bool apply(const std::function<Result<void>(RouteEditor&)>& edit);
    bool change(const std::function<void(RowEdit&)>& alter = {});
    void askLeg(std::size_t row, Behind behind); // what stands there is but a guess
    static QString freshName(const Route& route);

    Planner m_planner;
    std::filesystem::path m_folder;
    RouteEditor m_editor;
    Route m_kept; // as it was loaded or saved
    QString m_routeName;
    QString m_keptName;
    std::vector<RoutePoint> m_knownPumps;
    std::vector<std::string> m_modes;
    std::optional<std::size_t> m_row;
    Tab m_part = Road;
    Behind m_behind = Behind::moves;
    std::optional<QString> m_typedName; // until it is taken or dropped
    QString m_saved;
};

} // namespace undermark
