// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/application.h"

#include "app/car/demo_logbook.h"
#include "app/screen/base/main_window.h"
#include "app/screen/base/screen.h"
#include "app/screen/base/screen_options.h"
#include "app/screen/base/translations.h"
#include "app/screen/base/typeface.h"

#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QSurfaceFormat>
#include <QTimer>
#include <QtPlugin>
#include <atomic>
#include <csignal>
#include <cstdio>

namespace undermark {

namespace {

std::atomic<int> g_warnings = 0; // Qt's message handler takes no context
QtMessageHandler g_defaultHandler = nullptr;

volatile std::sig_atomic_t g_leaveAsked = 0;
constexpr std::chrono::milliseconds kLookWhetherAsked{200};

void askToLeave(int) { g_leaveAsked = 1; }

void countWarnings(QtMsgType type, const QMessageLogContext& context, const QString& text)
{
    if (type == QtWarningMsg || type == QtCriticalMsg)
        ++g_warnings;
    g_defaultHandler(type, context, text);
}

int refuse(const Error& error)
{
    std::fprintf(stderr, "undermark: %s\n", describe(error).c_str());
    return 2;
}

// A picture or a test needs no display; nor does --help.
void useOffscreenIfHeadless(int argc, char** argv)
{
    bool draws = true;
    for (int i = 1; i < argc; ++i) {
        const QByteArray argument(argv[i]);
        if (argument.startsWith("--grab") || argument == "--self-test" || argument == "--help" ||
            argument == "--version")
            draws = false;
    }
    const bool display =
        qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY");
    if (!draws && !display && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
}

// Without a graphics device OpenGL itself is drawn by the processor, at 100 MiB of memory more
// and later than Qt Quick's own software renderer. Whoever names a renderer has it, as has a
// screen that is driven by OpenGL alone.
bool drawsByProcessor()
{
    const QString platform = QGuiApplication::platformName();
    if (platform == u"offscreen")
        return true;
    for (const char* chosen : {"QT_QUICK_BACKEND", "QSG_RHI_BACKEND", "QMLSCENE_DEVICE"})
        if (qEnvironmentVariableIsSet(chosen))
            return false;
    if (platform.startsWith(u"eglfs"))
        return false;
    // The kernel's render nodes, and what drivers of their own make instead.
    const QStringList devices = QDir(u"/dev"_qs).entryList({u"nvidia[0-9]*"_qs, u"mali[0-9]*"_qs}, QDir::System);
    return devices.isEmpty() && QDir(u"/dev/dri"_qs).entryList({u"renderD*"_qs}, QDir::System).isEmpty();
}

void prepareDrawing()
{
    if (drawsByProcessor()) {
        QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
        return;
    }
    QSurfaceFormat format = QSurfaceFormat::defaultFormat();
    format.setSamples(4); // Shapes have no antialiasing of their own on a GPU
    QSurfaceFormat::setDefaultFormat(format);
}

// The picture of the window once its layouts have come to rest.
QImage picture(QQuickWindow& window)
{
    QGuiApplication::processEvents();
    window.grabWindow();
    QGuiApplication::processEvents();
    return window.grabWindow();
}

int grab(QQuickWindow& window, const QString& file)
{
    const QImage image = picture(window);
    if (!image.isNull() && image.save(file))
        return 0;
    std::fprintf(stderr, "undermark: the picture could not be saved: %s\n", qPrintable(file));
    return 1;
}

// Draws every page by day and, in large letters, by night; upright and wide.
int selfTest(QQuickWindow& window, Screen& screen)
{
    const QSize sizes[] = {{800, 480}, {480, 800}, {1920, 1080}};
    for (const QSize size : sizes) {
        for (const bool night : {false, true}) {
            screen.settings.override(u"text"_qs, night ? 200 : 100);
            screen.settings.override(u"night"_qs, night);
            for (const Page& page : screen.pages()) {
                window.resize(size);
                window.setProperty("page", page.key);
                if (picture(window).isNull())
                    return 1;
            }
        }
    }
    return g_warnings == 0 ? 0 : 1;
}

// The speeds told apart, else the car's own, lock what is typed.
Result<void> follow(const LaunchOptions& options, const Car& car, Screen& screen)
{
    if (options.speeds.isEmpty())
        screen.lock.follow(screen.feed);
    else if (const auto followed = screen.lock.follow(options.speeds); !followed)
        return followed;
    SourceOptions live = options.live;
    if (live.sources.empty()) {
        screen.hearKeptSources();
        return {};
    }
    if (const auto vehicle = car.vehicle())
        live.fuel = vehicle->value.fuel;
    return screen.feed.follow(live);
}

int show(QGuiApplication& application, const LaunchOptions& options, Car& car)
{
    Translations translations;
    Screen screen(car, options.settingsFile());
    options.applyTo(screen.settings);
    translations.use(screen.settings.language());
    screen.setFormat();
    if (const auto followed = follow(options, car, screen); !followed)
        return refuse(followed.error());
    if (options.source.demo)
        screen.ahead.setRoute(demoRoute(), QCoreApplication::translate("Screen", "Seven Weirs Rally"));
    QQmlApplicationEngine engine;
    QObject::connect(&screen, &Screen::languageChanged, &engine, [&] {
        translations.use(screen.settings.language());
        engine.retranslate();
    });
    QQuickWindow* window = openMainWindow(engine, screen, options.page, options.size);
    if (!window)
        return 1;
    while (screen.ahead.planning() && (options.selfTest || !options.grab.isEmpty()))
        QGuiApplication::processEvents(QEventLoop::WaitForMoreEvents);
    if (options.selfTest)
        return selfTest(*window, screen);
    if (!options.grab.isEmpty())
        return grab(*window, options.grab);
    // A session that ends asks by SIGTERM: what is being driven is written before.
    std::signal(SIGTERM, askToLeave);
    std::signal(SIGINT, askToLeave);
    QTimer asked;
    QObject::connect(&asked, &QTimer::timeout, &application, [] {
        if (g_leaveAsked != 0)
            QCoreApplication::quit();
    });
    asked.start(kLookWhetherAsked);
    return application.exec();
}

} // namespace

int runScreen(int argc, char** argv, const CarOpener& open)
{
    useOffscreenIfHeadless(argc, argv);
    hideMonoLetters();
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(u"undermark"_qs);
    QGuiApplication::setApplicationDisplayName(u"Undermark"_qs);
    QGuiApplication::setDesktopFileName(u"org.undermark.undermark"_qs);

    const Result<LaunchOptions> options = parseLaunchOptions(QGuiApplication::arguments());
    if (!options)
        return refuse(options.error());
    if (!options->answer.isEmpty()) {
        std::fputs(qPrintable(options->answer), stdout);
        return 0;
    }
    useTypeface();
    prepareDrawing();
    // From here on, so that what Qt says about the machine is not held against us.
    g_defaultHandler = qInstallMessageHandler(countWarnings);
    Car car = open(options->source);
    return show(application, *options, car);
}

} // namespace undermark
