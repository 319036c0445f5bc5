// SPDX-License-Identifier: GPL-3.0-or-later
//
// Four open drives of one car (level in % from its own bus, no litre truth):
// read where they are present, skipped where not.
#include "engine/tables/samples_csv.h"
#include "engine/tracking/level_tracker.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTest>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

using namespace undermark;

namespace {

using Rows = std::vector<Sample>;

struct Outcome {
    std::vector<TrackerEvent> events;
    bool rose = false;
    TrackState state;
    std::optional<double> firstL;

    int count(TrackerEventKind kind) const
    {
        return int(std::ranges::count(events, kind, &TrackerEvent::kind));
    }
};

Rows read(const QString& name)
{
    Rows rows;
    auto samples = SamplesCsv::open(name.toStdString());
    Sample row;
    while (samples->next(row).value())
        rows.push_back(row);
    return rows;
}

// A straight curve, 0 to 100 % = 0 to 50 L, with a stop above `upperStop` %.
Outcome replayed(const Rows& rows, double upperStop = 90.5)
{
    Outcome out;
    TrackerSettings settings;
    settings.highest = Volume::fromLitres(50.0);
    LevelTracker tracker(settings);
    double shown = 1e9;
    const auto take = [&](std::span<const TrackerEvent> events) {
        out.events.insert(out.events.end(), events.begin(), events.end());
        if (tracker.state().mode == TrackerMode::waiting)
            return;
        const double now = tracker.state().level.mean.litres();
        if (!out.firstL)
            out.firstL = now;
        out.rose = out.rose || now > shown;
        shown = now;
    };
    for (const Sample& row : rows) {
        const double percent = row.signal->value();
        TrackerSample sample{.time = row.time, .level = {}, .speed = row.speed, .fuelRate = {},
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

// What a logger may do to the same drive.
Rows everyNth(const Rows& rows, std::size_t n)
{
    Rows out;
    for (std::size_t i = 0; i < rows.size(); i += n)
        out.push_back(rows[i]);
    return out;
}

Rows without(const Rows& rows, double fromS, double untilS)
{
    Rows out;
    std::ranges::copy_if(rows, std::back_inserter(out), [&](const Sample& row) {
        return row.time.count() < fromS || row.time.count() >= untilS;
    });
    return out;
}

template <typename Change>
Rows changed(Rows rows, Change change)
{
    for (std::size_t i = 0; i < rows.size(); ++i)
        change(rows[i], i);
    return rows;
}

void setSignal(Sample& row, double percent) { row.signal = Signal::of(percent); }

Rows perturbed(const Rows& rows, const QString& how)
{
    if (how == "every second row")
        return everyNth(rows, 2);
    if (how == "every tenth row")
        return everyNth(rows, 10);
    if (how == "two minutes missing")
        return without(rows, 300.0, 420.0);
    if (how == "a quarter of an hour missing")
        return changed(rows, [](Sample& row, std::size_t) {
            if (row.time.count() > 400.0)
                row.time += Seconds(900.0);   // engine off, nothing burnt
        });
    if (how == "a clock of today")
        return changed(rows, [](Sample& row, std::size_t) { row.time += Seconds(1.79e9); });
    if (how == "one reading in a hundred is 0")
        return changed(rows, [](Sample& row, std::size_t i) {
            if (i % 100 == 50)
                setSignal(row, 0.0);
        });
    if (how == "steps of two percent")
        return changed(rows, [](Sample& row, std::size_t) {
            if (row.signal->value() < 90.0)
                setSignal(row, 2.0 * std::round(row.signal->value() / 2.0));
        });
    if (how == "four percent more")
        return changed(rows, [](Sample& row, std::size_t) {
            if (row.signal->value() > 0.0 && row.signal->value() < 86.0)
                setSignal(row, row.signal->value() + 4.0);
        });
    if (how == "ten seconds of 0 at the start")   // the source wakes up after the logger
        return changed(rows, [](Sample& row, std::size_t) {
            if (row.time.count() < 10.0)
                setSignal(row, 0.0);
        });
    if (how == "no speed")
        return changed(rows, [](Sample& row, std::size_t) { row.speed.reset(); });
    return rows;
}

constexpr std::array kDrives{"drive13", "live30", "idle28", "idle34"};
constexpr std::array kPerturbations{
    "as it is", "every second row", "every tenth row", "two minutes missing",
    "a quarter of an hour missing", "a clock of today", "one reading in a hundred is 0",
    "ten seconds of 0 at the start", "steps of two percent", "four percent more", "no speed"};

} // namespace

class RealDrivesTest : public QObject {
    Q_OBJECT
private slots:
    void noDriveRaisesAFalseAlarmOrARefuel_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("how");
        for (const char* name : kDrives)
            for (const char* how : kPerturbations)
                QTest::newRow(qPrintable(QString("%1, %2").arg(name, how)))
                    << QString(name) << QString(how);
    }

    void noDriveRaisesAFalseAlarmOrARefuel()
    {
        QFETCH(QString, name);
        QFETCH(QString, how);
        const QString file = UNDERMARK_SHARED_DATA "/drives/" + name + ".csv";
        if (!QFile::exists(file))
            QSKIP("the open drives are not here");
        const Outcome out = replayed(perturbed(read(file), how));
        for (const TrackerEvent& event : out.events)
            QVERIFY2(event.kind == TrackerEventKind::onUpperStop
                         || (event.kind == TrackerEventKind::gap && how.contains("missing")),
                     qPrintable(QString("event %1 %2 at %3").arg(int(event.kind))
                                    .arg(faultWord(event.fault)).arg(event.time.count())));
        QVERIFY(!out.rose);
        QCOMPARE(out.count(TrackerEventKind::gap), how.contains("missing") ? 1 : 0);
        QCOMPARE(out.state.mode == TrackerMode::upperStop, name == "idle34");
        QVERIFY(std::isfinite(out.state.level.sd.litres()));
        qInfo("%.2f to %.2f L +- %.2f, scale %.2f +- %.2f, NIS %.2f of %ld", *out.firstL,
              out.state.level.mean.litres(), out.state.level.sd.litres(),
              out.state.scale.mean.ratio(), out.state.scale.sd.ratio(), out.state.nisMean,
              out.state.nisCount);
    }
};

UNDERMARK_TEST(RealDrivesTest)
#include "real_drives_test.moc"
