// SPDX-License-Identifier: GPL-3.0-or-later
//
// contact_sheet FOLDER [STATE [LANGUAGE]]: draws every page of the screen over the demo
// car, in the states that matter, by day and night, in all sizes and in large letters,
// as FOLDER/STATE_SIZE_LIGHT.png, and all of them on one FOLDER/contact_sheet.png.
// A person looks at it: it asserts nothing, so tests/run leaves it out. Made by
// `ninja -C build/release contact_sheet`.
#include "app/car/demo_logbook.h"
#include "app/screen/base/main_window.h"
#include "app/screen/base/screen.h"
#include "app/screen/base/translations.h"
#include "app/screen/base/typeface.h"
#include "tests/support/test_car.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QPainter>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <algorithm>
#include <cmath>
#include <cstdio>

using namespace undermark;

namespace {

struct State {
    QString name;
    QString page;
    std::function<void(Screen&)> arrange;
    std::optional<int> tab = {}; // of the page
    const char* opened = nullptr; // a property of the page that opens something on it
};

struct Look {
    QString name;
    QSize size;
    bool night = false;
    double textScale = 1.0;
};

const QList<Look> kLooks{{"800x480-day", {800, 480}, false, 1},
                         {"800x480-night", {800, 480}, true, 1},
                         {"480x800-day", {480, 800}, false, 1},
                         {"480x800-night-200", {480, 800}, true, 2},
                         {"800x480-day-200", {800, 480}, false, 2},
                         {"1920x1080-night", {1920, 1080}, true, 1}};

void type(NumberForm& form, int field, const QString& text)
{
    form.select(field);
    for (const QChar key : text)
        form.press(key);
}

// A can went in as well.
void fillTooMuch(Screen& screen)
{
    type(*screen.pump.form(), 0, "44");
    screen.pump.save();
}

// A level with one reading.
void take(CalibrationGuide& guide, const QString& litres, const QString& reading)
{
    type(*guide.form(), 0, litres);
    type(*guide.form(), 1, reading);
    guide.go();
}

// As far as the first pour; with a float that stands still or not.
void calibrate(CalibrationGuide& guide, bool stuck)
{
    for (int i = 0; i < 5; ++i)
        guide.acknowledge(i);
    guide.go();
    for (const char* reading : {"3.021", "3.019", "3.02"}) {
        type(*guide.form(), 0, reading);
        guide.go();
    }
    guide.go();
    take(guide, "5", stuck ? "3.02" : "2.84");
    guide.go();
    take(guide, "10", stuck ? "3.021" : "2.36");
    if (!stuck)
        guide.go();
}

// A table of three fills beside the logbook, as far as its units.
void importTable(Screen& screen)
{
    TransferViewModel& transfer = *screen.logbook.transfer();
    transfer.chooseTable();
    FileList& files = *transfer.files();
    for (int own = 0; own < 2; ++own) // the program's own folder, then the file in it
        for (int row = 0; row < files.rowCount(); ++row) {
            const QString name = files.data(files.index(row), FileList::Name).toString();
            if (name == (own == 0 ? "Undermark's own folder" : "van.csv")) {
                transfer.pick(row);
                break;
            }
        }
}

// The sender's readings over some seconds, with a little slosh.
void read(LiveSignal& live, double seconds, double slope)
{
    static LiveSignal::Seconds now{100};
    live.setClock([] { return now; });
    for (int i = 0; i < seconds * 5; ++i) {
        now += LiveSignal::Seconds(0.2);
        live.take(Signal::of(2.1 + 0.002 * std::sin(i) + slope * i));
    }
}

// Both lobes of a saddle tank, as far as so many pours.
void calibrateSaddle(CalibrationGuide& guide, int pours)
{
    guide.chooseWiring(int(TankWiring::twoSignals));
    for (int i = 0; i < 5; ++i)
        guide.acknowledge(i);
    guide.go();
    const double first[] = {3.02, 2.31, 1.22, 1.21, 0.55}, second[] = {2.91, 2.9, 2.88, 1.6, 0.7};
    for (int i = 0; i <= pours; ++i) {
        const int field = i == 0 ? 0 : 1;
        if (i == 4)
            guide.other(); // the last one fills it up
        if (i > 0)
            type(*guide.form(), 0, "12");
        type(*guide.form(), field, QString::number(first[i]));
        type(*guide.form(), field + 1, QString::number(second[i]));
        guide.go();
        guide.go();
    }
}

QList<State> states()
{
    const auto nothing = [](Screen&) {};
    return {
        {"now", "now", nothing},
        {"first-run", "now", nothing},
        {"moving", "pump", [](Screen& screen) { screen.lock.setSpeed(Speed::fromKmPerHour(60)); }},
        {"pump", "pump", nothing},
        {"pump-saved", "pump", [](Screen& screen) {
             type(*screen.pump.form(), 0, "21");
             screen.pump.save();
         }},
        {"pump-asked", "pump", [](Screen& screen) { screen.pump.save(); }},
        {"pump-more", "pump", [](Screen& screen) { screen.pump.turn(0); }},
        {"pump-questioned", "pump", [](Screen& screen) { fillTooMuch(screen); }},
        {"ahead", "ahead", nothing},
        {"ahead-route", "ahead", nothing, PlanViewModel::Rows},
        {"ahead-notes", "ahead",
         [](Screen& screen) {
             Route route = demoRoute();
             for (RoutePoint& point : route.points)
                 if (point.fuel != FuelSource::none)
                     point.opens = Minutes(480);
             screen.ahead.setRoute(route, "Seven Weirs Rally");
         }},
        {"ahead-what-if", "ahead",
         [](Screen& screen) {
             screen.ahead.whatIfs()->ask(0);
             screen.ahead.whatIfs()->ask(2);
         },
         PlanViewModel::WhatIfs},
        {"ahead-here", "ahead",
         [](Screen& screen) {
             screen.ahead.here()->selectFuel(PlanHere::OfPlan);
             screen.ahead.here()->selectPlace(3);
         },
         PlanViewModel::FromHere},
        {"ahead-leg", "ahead",
         [](Screen& screen) {
             screen.ahead.editRow(3);
             screen.ahead.editor()->selectMode(0);
         }},
        {"ahead-leg-refused", "ahead",
         [](Screen& screen) {
             screen.ahead.editRow(5);
             screen.ahead.editor()->selectPart(RouteEditModel::Fuel);
             type(*screen.ahead.editor()->form(), 1, "0"); // at most nothing
             screen.ahead.editor()->done();
         }},
        {"ahead-leg-control", "ahead",
         [](Screen& screen) {
             screen.ahead.editRow(3);
             screen.ahead.editor()->selectPart(RouteEditModel::Control);
         }},
        {"ahead-leg-row", "ahead",
         [](Screen& screen) {
             screen.ahead.editRow(5);
             screen.ahead.editor()->addRow();
             screen.ahead.editor()->selectPart(RouteEditModel::Row);
         }},
        {"ahead-changed", "ahead",
         [](Screen& screen) {
             screen.ahead.editRow(3);
             screen.ahead.editor()->selectMode(0);
             screen.ahead.editor()->done();
         },
         PlanViewModel::Rows},
        {"ahead-no-plan", "ahead",
         [](Screen& screen) {
             Route far = demoRoute();
             for (RoutePoint& point : far.points) {
                 point.at = 1.4 * point.at;
                 point.fuel = FuelSource::none;
             }
             screen.ahead.setRoute(far, "Without a pump");
         }},
        {"ahead-new", "ahead", [](Screen& screen) { screen.ahead.newRoute(); }},
        {"ahead-choice", "ahead", nothing, PlanViewModel::Stops, "choosing"},
        {"ahead-name", "ahead", nothing, PlanViewModel::Rows, "naming"},
        {"now-towing", "now", [](Screen& screen) { screen.now.load()->takeStep(2); }},
        {"now-load", "now", nothing, NowViewModel::Loaded},
        {"ahead-files", "ahead", [](Screen& screen) { screen.ahead.otherRoute(); }},
        {"now-calibrating", "now", [](Screen& screen) { calibrate(*screen.tank.guide(), false); }},
        {"tank", "tank", nothing},
        {"tank-table", "tank", nothing, TankViewModel::Table},
        {"tank-reserve", "tank", nothing, TankViewModel::Reserve},
        {"tank-prepare", "tank", nothing, TankViewModel::Calibrate},
        {"tank-pour", "tank", [](Screen& screen) { calibrate(*screen.tank.guide(), false); }},
        {"tank-no-movement", "tank", [](Screen& screen) { calibrate(*screen.tank.guide(), true); }},
        {"tank-doubt", "tank",
         [](Screen& screen) {
             calibrate(*screen.tank.guide(), false);
             take(*screen.tank.guide(), "350", "1.88");
         }},
        {"tank-correct", "tank",
         [](Screen& screen) {
             calibrate(*screen.tank.guide(), false);
             screen.tank.guide()->correct(1);
         }},
        {"tank-sheet", "tank",
         [](Screen& screen) { type(*screen.tank.sheet()->form(), 0, "45"); }, TankViewModel::Sheet},
        {"tank-proof", "tank", [](Screen& screen) { screen.tank.tellNextProof(); }, TankViewModel::Reserve},
        {"tank-live", "tank",
         [](Screen& screen) {
             calibrate(*screen.tank.guide(), false);
             type(*screen.tank.guide()->form(), 0, "10");
             read(screen.tank.guide()->live(), 30, 0);
         }},
        {"tank-live-moving", "tank",
         [](Screen& screen) {
             calibrate(*screen.tank.guide(), false);
             read(screen.tank.guide()->live(), 20, -0.004);
             screen.tank.guide()->live().take(Signal::of(2.1), Signal::of(2.2));
             screen.tank.guide()->takeLive();
         }},
        {"tank-saddle-pour", "tank", [](Screen& screen) { calibrateSaddle(*screen.tank.guide(), 2); }},
        {"tank-saddle-review", "tank",
         [](Screen& screen) {
             calibrateSaddle(*screen.tank.guide(), 4);
         }},
        {"tank-saddle", "tank",
         [](Screen& screen) {
             calibrateSaddle(*screen.tank.guide(), 4);
             screen.tank.guide()->go();
         }},
        {"tank-review", "tank",
         [](Screen& screen) {
             calibrate(*screen.tank.guide(), false);
             for (int i = 0; i < 3; ++i) {
                 take(*screen.tank.guide(), "10", QString::number(1.9 - i * 0.4));
                 screen.tank.guide()->go();
             }
             screen.tank.guide()->other();
             take(*screen.tank.guide(), "6", "0.62");
             screen.tank.guide()->go();
             screen.tank.guide()->other();
         }},
        {"logbook", "logbook", nothing},
        {"logbook-unread", "logbook", [](Screen& screen) { screen.logbook.refresh(); }}, // its file is gone
        {"logbook-entry", "logbook", [](Screen& screen) { screen.logbook.open(2); }},
        {"logbook-questioned", "logbook",
         [](Screen& screen) {
             fillTooMuch(screen);
             screen.logbook.open(0);
         }},
        {"logbook-correct", "logbook",
         [](Screen& screen) {
             screen.logbook.open(2);
             screen.logbook.correct();
         }},
        {"logbook-forgotten", "logbook", [](Screen& screen) { screen.logbook.add(0); }},
        {"logbook-trip", "logbook", [](Screen& screen) { screen.logbook.add(1); }},
        {"logbook-proof", "logbook", [](Screen& screen) { screen.logbook.add(2); }},
        {"logbook-rates", "logbook", nothing, LogbookViewModel::Rates},
        {"logbook-transfer", "logbook", nothing, LogbookViewModel::Transfer},
        {"logbook-files", "logbook", [](Screen& screen) { screen.logbook.transfer()->chooseTable(); }, LogbookViewModel::Transfer},
        {"logbook-units", "logbook", [](Screen& screen) { importTable(screen); }, LogbookViewModel::Transfer},
        {"logbook-preview", "logbook",
         [](Screen& screen) {
             importTable(screen);
             screen.logbook.transfer()->confirm();
         },
         LogbookViewModel::Transfer},
        {"logbook-exported", "logbook", [](Screen& screen) { screen.logbook.transfer()->exportAll(); }, LogbookViewModel::Transfer},
        {"logbook-settings", "logbook", nothing, LogbookViewModel::Settings},
        {"several-cars", "logbook",
         [](Screen& screen) {
             for (const char* name : {"Ibis", "The rally car with the long-range tank"}) {
                 screen.setup.setName(name);
                 type(*screen.setup.form(), 0, "60");
                 screen.setup.save();
             }
         },
         LogbookViewModel::Settings},
        {"many-cars", "logbook",
         [](Screen& screen) {
             for (int number = 2; number <= 30; ++number) {
                 screen.setup.setName(QString("Rally car %1").arg(number));
                 type(*screen.setup.form(), 0, "60");
                 screen.setup.save();
             }
         },
         LogbookViewModel::Settings, "choosingCar"},
        {"tank-of-two", "tank",
         [](Screen& screen) {
             screen.tank.sheet()->addTank();
             screen.tank.sheet()->choose(0, int(TankFeed::pumpedOver));
             type(*screen.tank.sheet()->form(), 0, "40");
             screen.tank.sheet()->save();
         },
         TankViewModel::Sheet},
        {"add-tank", "tank", [](Screen& screen) { screen.tank.sheet()->addTank(); }, TankViewModel::Sheet},
        {"another-car", "logbook", [](Screen& screen) { screen.settings.chooseCar(1); }},
    };
}

QImage picture(QQuickWindow& window)
{
    for (int i = 0; i < 3; ++i) { // until the layouts have come to rest
        QGuiApplication::processEvents();
        window.grabWindow();
    }
    return window.grabWindow();
}

// Until all that was asked is answered.
void settle(Screen& screen)
{
    while (screen.ahead.planning() || screen.ahead.whatIfs()->busy())
        QGuiApplication::processEvents(QEventLoop::WaitForMoreEvents);
}

// One state in all looks, over a car of its own.
QList<QImage> draw(const State& state, const QDir& folder, const QString& language)
{
    test::TestFolder data;
    QFile table(QString::fromStdString((data.path / "van.csv").string()));
    if (table.open(QIODevice::WriteOnly))
        table.write("date,litres,odometer_km,note\n2026-09-02,41.5,200100,\n"
                    "2026-09-09,38.2,200570,\n2026-09-20,44.0,201120,\n");
    table.close();
    Car car = state.name == "first-run" ? test::emptyCar(data.path) : test::demoCar(data.path);
    Translations translations;
    translations.use(language);
    Screen screen(car);
    screen.settings.override("language", language);
    screen.setFormat();
    screen.ahead.setRoute(demoRoute(), "Seven Weirs Rally");
    settle(screen);
    if (state.name == "logbook-unread")
        std::filesystem::remove(data.path / "demo.sqlite");
    state.arrange(screen);
    settle(screen);
    QQmlApplicationEngine engine;
    QQuickWindow* window = openMainWindow(engine, screen, state.page, kLooks.front().size);
    QList<QImage> pictures;
    for (const Look& look : kLooks) {
        window->resize(look.size);
        screen.settings.override("night", look.night);
        screen.settings.override("text", int(look.textScale * 100));
        QGuiApplication::processEvents();
        if (state.tab)
            window->property("pageItem").value<QQuickItem*>()->setProperty("tab", *state.tab);
        if (state.opened)
            window->property("pageItem").value<QQuickItem*>()->setProperty(state.opened, true);
        pictures.append(picture(*window));
        pictures.last().save(folder.filePath(state.name + '_' + look.name + ".png"));
    }
    return pictures;
}

QImage sheetOf(const QList<State>& drawn, const QList<QList<QImage>>& rows)
{
    constexpr int kHeight = 270, kGap = 12, kTitle = 28, kNarrowest = 300;
    int width = kGap;
    for (const Look& look : kLooks)
        width += std::max(look.size.width() * kHeight / look.size.height(), kNarrowest) + kGap;
    QImage sheet(width, int(rows.size()) * (kHeight + kTitle + kGap), QImage::Format_RGB32);
    sheet.fill(Qt::gray);
    QPainter painter(&sheet);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    for (int row = 0; row < rows.size(); ++row) {
        int x = kGap;
        const int y = row * (kHeight + kTitle + kGap) + kTitle;
        for (int column = 0; column < kLooks.size(); ++column) {
            painter.drawText(x, y - 8, drawn[row].name + ", " + kLooks[column].name);
            const QImage small =
                rows[row][column].scaledToHeight(kHeight, Qt::SmoothTransformation);
            painter.drawImage(x, y, small);
            x += std::max(small.width(), kNarrowest) + kGap;
        }
    }
    return sheet;
}

} // namespace

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::fputs("contact_sheet FOLDER [STATE]\n", stderr);
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    hideMonoLetters();
    QGuiApplication application(argc, argv);
    useTypeface();
    QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    const QDir folder(argv[1]);
    folder.mkpath(".");
    QList<State> drawn;
    QList<QList<QImage>> rows;
    for (const State& state : states()) {
        if (argc > 2 && !state.name.startsWith(argv[2]))
            continue;
        drawn.append(state);
        rows.append(draw(state, folder, argc > 3 ? argv[3] : "en"));
    }
    const QImage sheet = sheetOf(drawn, rows);
    return !sheet.isNull() && sheet.save(folder.filePath("contact_sheet.png")) ? 0 : 1;
}
