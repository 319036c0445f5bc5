// SPDX-License-Identifier: GPL-3.0-or-later
//
// Four open drives of one car (level in % from its own bus, no litre truth):
// read where they are present, skipped where not.
#include "engine/files/samples_csv.h"
#include "engine/tracking/level_tracker.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTest>
#include <vector>

using namespace undermark;

namespace {

struct Outcome {
    std::vector<TrackerEvent> events;
    bool rose = false;
    TrackState state;
    double firstL = -1.0;
};

// A straight curve, 0 to 100 % = 0 to 50 L, with a stop above `upperStop` %.
Outcome replayed(const QString& name, double upperStop)
{
    Outcome out;
    auto samples = SamplesCsv::open(name.toStdString());
    TrackerSettings settings;
    settings.highest = Volume::fromLitres(50.0);
    LevelTracker tracker(settings);
    double shown = 1e9;
    const auto take = [&](std::span<const TrackerEvent> events) {
        out.events.insert(out.events.end(), events.begin(), events.end());
        if (tracker.state().mode == TrackerMode::waiting)
            return;
        const double now = tracker.state().level.mean.litres();
        if (out.firstL < 0.0)
            out.firstL = now;
        out.rose = out.rose || now > shown;
        shown = now;
    };
    while (const auto row = samples->next().value()) {
        const double percent = row->signal->value();
        TrackerSample sample{.time = row->time, .level = {}, .speed = row->speed, .fuelRate = {},
                             .distance = {}};
        sample.level = LevelObservation{
            percent >= upperStop ? ReadingKind::atLeast
                                 : percent <= 0.0 ? ReadingKind::atMost : ReadingKind::exact,
            {Volume::fromLitres(std::min(percent, upperStop) / 2.0), Volume::fromLitres(0.5)}, {}};
        take(tracker.add(sample));
    }
    take(tracker.finish());
    out.state = tracker.state();
    return out;
}

} // namespace

class RealDrivesTest : public QObject {
    Q_OBJECT
private slots:
    void noDriveRaisesAFalseAlarm_data()
    {
        QTest::addColumn<QString>("name");
        for (const char* name : {"drive13", "live30", "idle28", "idle34"})
            QTest::newRow(name) << QString(name);
    }

    void noDriveRaisesAFalseAlarm()
    {
        QFETCH(QString, name);
        const QString file = UNDERMARK_SHARED_DATA "/drives/" + name + ".csv";
        if (!QFile::exists(file))
            QSKIP("the open drives are not here");
        const Outcome out = replayed(file, 90.5);
        for (const TrackerEvent& event : out.events)
            QVERIFY2(event.kind == TrackerEventKind::onUpperStop, faultWord(event.fault));
        QVERIFY(!out.rose);
        qInfo("%s: %.2f to %.2f L +- %.2f, scale %.2f +- %.2f, NIS %.2f of %ld", qPrintable(name),
              out.firstL, out.state.level.mean.litres(), out.state.level.sd.litres(),
              out.state.scale.mean.ratio(), out.state.scale.sd.ratio(), out.state.nisMean,
              out.state.nisCount);
        QCOMPARE(out.state.mode == TrackerMode::upperStop, name == "idle34");
    }
};

UNDERMARK_TEST(RealDrivesTest)
#include "real_drives_test.moc"
