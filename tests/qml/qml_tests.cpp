// SPDX-License-Identifier: GPL-3.0-or-later
//
// Runs the tst_*.qml files over the demo car. In QML: `import
// Undermark.Fixture`, then Fixture.reset("calm"), Fixture.now, Fixture.pump.
#include "app/car/demo_logbook.h"
#include "app/screen/base/screen.h"
#include "app/screen/base/translations.h"
#include "app/screen/base/typeface.h"
#include "tests/support/test_car.h"

#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QtQuickTest>
#include <list>
#include <memory>

using namespace undermark;

class Fixture : public QObject {
    Q_OBJECT
    Q_PROPERTY(undermark::Screen* model READ model NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> pages READ pages CONSTANT FINAL)
    Q_PROPERTY(QList<QString> languages READ languages CONSTANT FINAL)
    Q_PROPERTY(undermark::NowViewModel* now READ now NOTIFY changed FINAL)
    Q_PROPERTY(undermark::ScreenSettings* settings READ settings NOTIFY changed FINAL)
    Q_PROPERTY(undermark::SetupViewModel* setup READ setup NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PumpViewModel* pump READ pump NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PlanViewModel* ahead READ ahead NOTIFY changed FINAL)
    Q_PROPERTY(undermark::TankViewModel* tank READ tank NOTIFY changed FINAL)
    Q_PROPERTY(undermark::LogbookViewModel* logbook READ logbook NOTIFY changed FINAL)

public:
    Fixture() { reset("calm"); }
    Screen* model() const { return m_shown->screen.get(); }
    QStringList pages() const // their keys
    {
        QStringList keys;
        for (const PageKind& kind : pageKinds())
            keys.append(kind.key);
        return keys;
    }
    QStringList languages() const // all but English
    {
        QStringList keys;
        for (const Language& language : undermark::languages())
            keys.append(language.key);
        return keys.mid(1);
    }
    NowViewModel* now() const { return &m_shown->screen->now; }
    ScreenSettings* settings() const { return &m_shown->screen->settings; }
    SetupViewModel* setup() const { return &m_shown->screen->setup; }
    Q_INVOKABLE void drive(double kmPerHour)
    {
        m_shown->screen->lock.setSpeed(Speed::fromKmPerHour(kmPerHour));
    }
    PumpViewModel* pump() const { return &m_shown->screen->pump; }
    PlanViewModel* ahead() const { return &m_shown->screen->ahead; }
    TankViewModel* tank() const { return &m_shown->screen->tank; }
    LogbookViewModel* logbook() const { return &m_shown->screen->logbook; }
    // Since reset().
    Q_INVOKABLE int storedFills() { return fillCount() - m_fillsBefore; }

    // In German or French, too: names are longer there.
    Q_INVOKABLE void speak(const QString& language)
    {
        m_translations.use(language);
        m_shown->screen->settings.override("language", language);
        m_shown->screen->setFormat();
    }

    // The program is closed and started again over the same car.
    Q_INVOKABLE void restart() { show(m_shown->bench); }
    // A logbook without a car.
    Q_INVOKABLE void resetToNothing()
    {
        useEnglish();
        auto folder = std::make_unique<test::TestFolder>();
        Car car = test::emptyCar(folder->path);
        show(std::make_shared<Bench>(std::move(folder), std::move(car)));
    }

    // In a state of carInState (tests/support/test_car.h).
    Q_INVOKABLE void reset(const QString& state)
    {
        useEnglish();
        auto folder = std::make_unique<test::TestFolder>();
        Car car = test::carInState(state.toStdString(), folder->path);
        show(std::make_shared<Bench>(std::move(folder), std::move(car)));
        m_fillsBefore = fillCount();
    }

signals:
    void changed();

private:
    struct Bench {
        std::unique_ptr<test::TestFolder> folder;
        Car car;
    };
    struct Shown {
        std::shared_ptr<Bench> bench;
        std::unique_ptr<Screen> screen;
    };

    int fillCount()
    {
        const auto known = m_shown->bench->car.knowledge();
        return known ? int((*known)->log.fills.size()) : 0;
    }
    void useEnglish()
    {
        if (QCoreApplication::instance())
            m_translations.use("en");
    }
    // What was shown before stays alive: windows still look at it.
    void show(std::shared_ptr<Bench> bench)
    {
        auto screen = std::make_unique<Screen>(bench->car);
        screen->settings.override("language", "en");
        screen->setFormat();
        screen->ahead.setRoute(demoRoute(), "Seven Weirs Rally");
        m_all.push_back({std::move(bench), std::move(screen)});
        m_shown = &m_all.back();
        emit changed();
    }

    std::list<Shown> m_all;
    Shown* m_shown = nullptr;
    int m_fillsBefore = 0;
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
