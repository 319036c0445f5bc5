// SPDX-License-Identifier: GPL-3.0-or-later
//
// The pumps of a map along the track that is planned, on the Ahead page: a map is chosen, read
// away from the screen, and what it has is left out or taken by a touch.
//
//   the track, its heights  --+
//   a map on disk --read------+--> the route, with the pumps that are taken
//
// Guarantees (each has a test in tests/app/screen/ahead/plan_map_test.cpp):
//  * the route is the one that `plan TRACK.gpx --pumps MAP` plans;
//  * a map that cannot be read, or that is left before it is read, changes nothing.
#pragma once

#include "app/screen/base/background.h"
#include "app/screen/base/file_list.h"
#include "app/screen/base/notice_text.h"
#include "engine/roads/height_profile.h"
#include "engine/roads/route_with_pumps.h"

#include <QTimer>
#include <atomic>
#include <memory>

namespace undermark {

// A pump that was found.
struct MapPumpRow {
    Q_GADGET
    QML_VALUE_TYPE(mapPumpRow)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString detail MEMBER detail FINAL)
    Q_PROPERTY(bool taken MEMBER taken FINAL)
public:
    QString name;   // "km 12.3 Harrow"
    QString detail; // "0.4 km off the way · open Mo-Fr 06:00-20:00"
    bool taken = true;
    friend bool operator==(const MapPumpRow&, const MapPumpRow&) = default;
};

class PlanMap : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(undermark::FileList* files READ files CONSTANT FINAL)
    Q_PROPERTY(bool possible READ possible NOTIFY changed FINAL)
    Q_PROPERTY(bool reading READ reading NOTIFY changed FINAL)
    Q_PROPERTY(bool found READ found NOTIFY changed FINAL)
    Q_PROPERTY(QString line READ line NOTIFY changed FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::MapPumpRow> pumps READ pumps NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)

public:
    // `ask` says what is asked of a map: the fuel, and the driver's own pumps.
    PlanMap(const FileRoots& roots, std::function<PumpsQuestion()> ask, QObject* parent = nullptr);
    ~PlanMap() override;

    FileList* files() { return &m_files; }
    bool possible() const { return m_track.line.size() > 1; } // there is a track
    bool reading() const { return m_background.busy(); }
    bool found() const { return m_found.has_value(); }
    QString line() const;     // "pumps from a map: 12 of Upper Valley, 2 left out"
    QString progress() const; // "40 % of the map is read"
    QList<MapPumpRow> pumps() const;
    QList<NoticeText> notices() const;

    // Another route: no map is chosen for it yet.
    void startAnew(RouteFile track);
    Route route() const;
    void setFormat(const UnitFormat& format);

    Q_INVOKABLE void pick(int row); // a folder, or a map
    Q_INVOKABLE void stop();
    Q_INVOKABLE void anotherMap();
    Q_INVOKABLE void toggle(int pump);

signals:
    void changed();
    void routed(); // the route is another one

private:
    struct Reading {
        std::atomic<int> percent{0};
        std::atomic<bool> stopped{false};
    };
    void take(const QString& name, Result<PumpsAlong> found);
    void forget();

    UnitFormat m_format;
    FileList m_files;
    std::function<PumpsQuestion()> m_ask;
    RouteFile m_track;
    HeightProfile m_heights;
    QString m_name; // of the map
    std::optional<PumpsAlong> m_found;
    std::vector<bool> m_taken;
    std::vector<Notice> m_notices;
    std::shared_ptr<Reading> m_reading;
    QTimer m_look; // at how far it is read
    Background m_background;
};

} // namespace undermark
