// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/screen.h"

#include "app/car/car_tanks.h"

#include <utility>

namespace undermark {

namespace {

// The car that was shown last, if the logbook still has it.
Car& remembered(Car& car, const ScreenSettings& settings)
{
    if (!settings.car().isEmpty())
        (void)car.showCar(settings.car().toStdString());
    return car;
}

} // namespace

Screen::Screen(Car& car, const QString& settingsFile, const FileRoots& roots)
    : settings(settingsFile), setup(remembered(car, settings), settings.format(), settingsFile),
      now(car, {}, settingsFile), pump(car), ahead(car, {}, roots), tank(car), logbook(car, {}, roots),
      m_car(car), m_trips(car, feed, [this] { return now.live()->mode(); }, [this] { return now.live()->followed(); })
{
    connect(&setup, &SetupViewModel::stored, this, &Screen::startOver);
    connect(&settings, &ScreenSettings::carChosen, this, &Screen::showCar);
    connect(&settings, &ScreenSettings::anotherCarWanted, &setup, &SetupViewModel::addAnother);
    ahead.askAs([this] { return now.question(); }, [this] { return now.basis(); });
    pump.askAs([this] { return now.question(); });
    connect(&now, &NowViewModel::asksOtherwise, &ahead, &PlanViewModel::refresh);
    connect(&now, &NowViewModel::asksOtherwise, &pump, &PumpViewModel::refresh);
    for (const PageKind& kind : pageKinds()) {
        PageModel& view = kind.view(*this);
        m_views.push_back(&view);
        connect(&view, &PageModel::stored, this, [this, &view] {
            readAnew(&view);
            listCars(); // one may have another name
        });
    }
    follow();
    const auto tellOpen = [this] { now.setCalibrating(tank.guide()->started()); };
    connect(tank.guide(), &CalibrationGuide::changed, this, tellOpen);
    tellOpen();
    connect(&settings, &ScreenSettings::formatChanged, this, [this] {
        emit languageChanged();
        setFormat();
    });
    connect(&m_watch, &QTimer::timeout, this, [this] {
        if (m_car.writtenElsewhere()) {
            readAnew(nullptr);
            listCars();
            followKept();
        }
    });
    m_watch.start(kWatch);
    setFormat();
}

void Screen::follow()
{
    NowLive& live = *now.live();
    live.follow(feed);
    tank.guide()->live().follow(feed);
    connect(&live, &NowLive::changed, &pump, [this, &live, seen = std::optional<Volume>()]() mutable {
        const auto refuel = live.refuel();
        const auto litres = refuel ? std::optional(refuel->mean) : std::nullopt;
        if (std::exchange(seen, litres) != litres)
            pump.proposeSeen(refuel);
    });
    connect(&live, &NowLive::refuelSeen, &m_trips, &TripWriter::fuelWentIn);
    connect(&m_trips, &TripWriter::recorded, this, [this] { readAnew(nullptr); });
    connect(&m_trips, &TripWriter::failed, &live, [this, &live] { live.setTripProblem(m_trips.problem()); });
    connect(&pump, &PumpViewModel::filled, &live, &NowLive::tellFill);
}

void Screen::hearKeptSources()
{
    m_kept.emplace();
    followKept();
}

void Screen::followKept()
{
    if (!m_kept)
        return;
    SourceOptions options;
    options.mayBeAway = true; // an adapter in the car wakes up later than the screen
    if (const auto log = m_car.log()) {
        options.fuel = log->vehicle.value.fuel;
        options.kept = valuesOf(log->sources);
        options.tanks = furtherNames(*log);
    }
    if (options.kept == *m_kept)
        return;
    m_kept = options.kept;
    const auto followed = m_kept->empty() ? Result<void>() : feed.follow(options);
    if (!followed || m_kept->empty())
        feed.leave();
    now.live()->setSourceProblem(followed ? std::optional<Error>() : followed.error());
}

void Screen::setFormat()
{
    const UnitFormat format = settings.format().in(m_currency);
    setup.setFormat(format);
    for (PageModel* view : m_views)
        view->setFormat(format);
    listCars(); // and its own words, too
    emit pagesChanged();
}

void Screen::listCars()
{
    QStringList names;
    int shown = -1;
    if (const auto cars = m_car.cars()) {
        for (const Entry<Vehicle>& each : *cars) {
            if (each.id.uuid == m_car.shownCar())
                shown = int(names.size());
            names.append(QString::fromStdString(each.value.name));
        }
    }
    settings.setCars(names, shown);
    const auto car = m_car.vehicle();
    const std::string currency = car ? car->value.currency.value_or(std::string()) : std::string();
    if (std::exchange(m_currency, currency) != currency)
        setFormat();
}

void Screen::showCar(int row)
{
    const auto cars = m_car.cars();
    if (cars && std::size_t(row) < cars->size() && m_car.showCar((*cars)[std::size_t(row)].id.uuid))
        startOver();
    else
        listCars();
}

void Screen::startOver()
{
    settings.keepCar(QString::fromStdString(m_car.shownCar()));
    listCars();
    m_trips.startOver();
    now.live()->setTripProblem({});
    for (PageModel* view : m_views)
        view->startOver();
    followKept();
}

void Screen::readAnew(const PageModel* writer)
{
    for (PageModel* view : m_views)
        if (view != writer)
            view->refresh();
}

} // namespace undermark
