// SPDX-License-Identifier: GPL-3.0-or-later
//
// Runs the tst_*.qml files over the invented car. In QML: `import
// Undermark.Fixture`, then Fixture.reset("calm"), Fixture.now, Fixture.pump.
#include "app/car/demo_logbook.h"
#include "app/screen/base/screen.h"
#include "app/screen/base/translations.h"
#include "app/screen/base/typeface.h"
#include "tests/support/fake_car.h"

#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QtQuickTest>
#include <memory>

using namespace undermark;

class Fixture : public QObject {
    Q_OBJECT
    Q_PROPERTY(undermark::NowViewModel* now READ now NOTIFY changed FINAL)
    Q_PROPERTY(undermark::ScreenSettings* settings READ settings NOTIFY changed FINAL)
    Q_PROPERTY(undermark::DrivingLock* lock READ lock NOTIFY changed FINAL)
    Q_PROPERTY(undermark::SetupViewModel* setup READ setup NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PumpViewModel* pump READ pump NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PlanViewModel* ahead READ ahead NOTIFY changed FINAL)
    Q_PROPERTY(undermark::TankViewModel* tank READ tank NOTIFY changed FINAL)
    Q_PROPERTY(undermark::LogbookViewModel* logbook READ logbook NOTIFY changed FINAL)

public:
    Fixture() { reset("calm"); }
    NowViewModel* now() const { return &m_screen->now; }
    ScreenSettings* settings() const { return &m_screen->settings; }
    DrivingLock* lock() const { return &m_screen->lock; }
    SetupViewModel* setup() const { return &m_screen->setup; }
    Q_INVOKABLE void drive(double kmPerHour)
    {
        m_screen->lock.setSpeed(Speed::fromKmPerHour(kmPerHour));
    }
    PumpViewModel* pump() const { return &m_screen->pump; }
    PlanViewModel* ahead() const { return &m_screen->ahead; }
    TankViewModel* tank() const { return &m_screen->tank; }
    LogbookViewModel* logbook() const { return &m_screen->logbook; }
    Q_INVOKABLE int storedFills() const { return int(m_car->stored.size()); }

    // In German or French, too: names are longer there.
    Q_INVOKABLE void speak(const QString& language)
    {
        m_translations.use(language);
        m_screen->settings.override("language", language);
        m_screen->setFormat();
    }

    // The program is closed and started again over the same car.
    Q_INVOKABLE void restart()
    {
        auto screen = makeScreen(m_newCar ? *m_newCar : static_cast<CarService&>(*m_car));
        std::swap(m_screen, screen);
        emit changed();
        m_past.push_back({nullptr, std::move(screen)});
    }
    // A logbook without a car.
    Q_INVOKABLE void resetToNothing()
    {
        reset("calm");
        m_folder = std::make_unique<test::TestFolder>();
        m_newCar = test::emptyCar(m_folder->path);
        restart();
    }

    // "calm", "warned", "low" or "far". The view models before stay alive.
    Q_INVOKABLE void reset(const QString& state)
    {
        if (QCoreApplication::instance())
            m_translations.use("en");
        auto car = std::make_unique<test::FakeCar>();
        if (state == u"low")
            car->state = test::inventedState(0.9);
        if (state == u"far") {
            car->state = test::inventedState(108.0);
            car->state.vehicle = "Long-wheelbase expedition lorry with both tanks joined";
            for (const double km : {20.0, 460.0, 470.0, 480.0, 1290.0})
                car->state.places.push_back({"Harbour crossing", Distance::fromKm(km)});
        }
        if (state == u"warned" || state == u"low") {
            const Notice notice{Notice::Severity::warning,
                                "The last fill is 12 L more than the distance explains: a can "
                                "filled too, or a missed fill before it?"};
            car->state.notices = {notice, {Notice::Severity::info, "A second one."}};
            car->lesson.flags = {notice};
        }
        auto screen = makeScreen(*car);
        m_pastCars.push_back(std::move(m_newCar));
        m_pastFolders.push_back(std::move(m_folder));
        std::swap(m_car, car);
        std::swap(m_screen, screen);
        emit changed();
        m_past.push_back({std::move(car), std::move(screen)});
    }

signals:
    void changed();

private:
    static std::unique_ptr<Screen> makeScreen(CarService& car)
    {
        auto screen = std::make_unique<Screen>(car);
        screen->settings.override("language", "en");
        screen->setFormat();
        screen->ahead.setRoute(demoRoute(), "Seven Weirs Rally");
        return screen;
    }

    struct Past {
        std::unique_ptr<test::FakeCar> car;
        std::unique_ptr<Screen> screen;
    };
    std::unique_ptr<test::FakeCar> m_car;
    std::vector<std::unique_ptr<test::TestFolder>> m_pastFolders;
    std::vector<std::unique_ptr<CarService>> m_pastCars;
    std::unique_ptr<test::TestFolder> m_folder;
    std::unique_ptr<CarService> m_newCar;
    std::unique_ptr<Screen> m_screen;
    std::vector<Past> m_past;
    Translations m_translations;
};

class Setup : public QObject {
    Q_OBJECT
public slots:
    void applicationAvailable()
    {
        useTypeface();
        QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
    }
    void qmlEngineAvailable(QQmlEngine* engine)
    {
        engine->addImportPath("qrc:/qt/qml");
        qmlRegisterSingletonInstance("Undermark.Fixture", 1, 0, "Fixture", &m_fixture);
    }

private:
    Fixture m_fixture;
};

int main(int argc, char** argv)
{
    hideMonoLetters();
    Setup setup;
    return quick_test_main_with_setup(argc, argv, "qml", QUICK_TEST_SOURCE_DIR, &setup);
}

#include "qml_tests.moc"
