// SPDX-License-Identifier: GPL-3.0-or-later
//
// How quick the touch screen is, beside an empty Qt Quick Controls window of the
// same size (run by tests/bench/screen_frames.sh):
//
//   screen_frames make FOLDER             the demo's logbook, for the next
//   screen_frames empty|screen START_NS FOLDER   first frame, ms after START_NS; memory
//   screen_frames scroll FILLS            frame times while the log is slid
#include "app/car/car.h"
#include "app/car/demo_logbook.h"
#include "app/car/open_car.h"
#include "app/screen/base/main_window.h"
#include "app/screen/base/screen.h"
#include "app/screen/base/typeface.h"
#include "tests/support/test_car.h"

#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <algorithm>
#include <chrono>
#include <cstdio>

using namespace undermark;

namespace {

constexpr char kEmptyWindow[] = "import QtQuick\nimport QtQuick.Controls\n"
                                "ApplicationWindow { width: 800; height: 480; visible: true }";

double memoryMb()
{
    QFile file("/proc/self/smaps_rollup");
    if (!file.open(QIODevice::ReadOnly))
        return 0.0;
    for (const QByteArray& line : file.readAll().split('\n'))
        if (line.startsWith("Pss:"))
            return line.mid(4).simplified().split(' ').value(0).toDouble() / 1024.0;
    return 0.0;
}

void waitForFrame(QQuickWindow& window)
{
    bool drawn = false;
    const auto connection = QObject::connect(&window, &QQuickWindow::frameSwapped, &window,
                                             [&drawn] { drawn = true; }, Qt::DirectConnection);
    window.requestUpdate();
    while (!drawn)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    QObject::disconnect(connection);
}

int first(bool empty, const char* startNs, const char* folder)
{
    std::optional<Car> car;
    std::unique_ptr<Screen> screen;
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr;
    if (empty) {
        engine.loadData(kEmptyWindow);
        window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    } else {
        useTypeface();
        CarSource source;
        source.logbook = std::filesystem::path(folder) / "demo.sqlite";
        car.emplace(openCar(source));
        screen = std::make_unique<Screen>(*car);
        window = openMainWindow(engine, *screen, "now", {800, 480});
    }
    waitForFrame(*window);
    using namespace std::chrono;
    const auto now = duration_cast<nanoseconds>(system_clock::now().time_since_epoch()).count();
    std::printf("%.0f ms %.1f MB\n", double(now - std::atoll(startNs)) / 1e6, memoryMb());
    return 0;
}

// A log of so many fills, every ten days one.
Car longLog(const test::TestFolder& folder, int fills)
{
    using namespace std::chrono;
    auto logbook = Logbook::open(folder.path / "long.sqlite", OpenMode::createIfMissing);
    const Instant first = sys_days{year{1990} / 1 / 1};
    Vehicle vehicle;
    vehicle.name = "Long log";
    vehicle.capacity = Volume::fromLitres(60);
    const EntryId id = *logbook->addVehicle(vehicle, first);
    std::vector<Fill> all;
    for (int i = 0; i < fills; ++i) {
        Fill fill;
        fill.time = first + hours(24 * i);
        fill.volume = Volume::fromLitres(38.0 + i % 7);
        fill.odometer = Distance::fromKm(500.0 * i);
        fill.pricePerLitre = 1.7;
        all.push_back(fill);
    }
    if (!logbook->addAll<Fill>(id, all, first + hours(24 * fills)))
        qFatal("the log was not stored");
    return Car::open(folder.path / "long.sqlite", OpenMode::readWrite,
                     [first, fills] { return first + hours(24 * fills); })
        .value();
}

int scroll(int fills)
{
    const test::TestFolder folder;
    Car car = longLog(folder, fills);
    QElapsedTimer timer;
    timer.start();
    Screen screen(car);
    std::printf("view models over %d fills: %lld ms\n", fills, static_cast<long long>(timer.elapsed()));
    QQmlApplicationEngine engine;
    QQuickWindow* window = openMainWindow(engine, screen, "logbook", {800, 480});
    waitForFrame(*window);
    QQuickItem* list = window->property("pageItem").value<QQuickItem*>()->findChild<QQuickItem*>("history");
    std::vector<double> frames;
    for (int i = 0; i < 600; ++i) {
        timer.restart();
        list->setProperty("contentY", list->property("contentY").toDouble() + 37.0 * (1 + i % 20));
        waitForFrame(*window);
        frames.push_back(double(timer.nsecsElapsed()) / 1e6);
    }
    std::ranges::sort(frames);
    std::printf("frames while sliding: median %.2f ms, 99 %% %.2f ms, worst %.2f ms; %.1f MB\n",
                frames[frames.size() / 2], frames[frames.size() * 99 / 100], frames.back(), memoryMb());
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    if (argc < 3)
        return 2;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QByteArray what = argv[1];
    if (what != "empty")
        hideMonoLetters();
    QGuiApplication application(argc, argv);
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    if (what == "make") {
        test::demoCar(argv[2]);
        return 0;
    }
    return what == "scroll" ? scroll(std::atoi(argv[2]))
                            : first(what == "empty", argv[2], argc > 3 ? argv[3] : "");
}
