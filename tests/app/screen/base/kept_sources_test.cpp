// SPDX-License-Identifier: GPL-3.0-or-later
//
// The screen over the sources kept with a car: heard from the start on, the other car's once
// that one is shown, and those that the command line keeps meanwhile.
#include "app/screen/base/screen.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <fstream>
#include <sys/stat.h>

using namespace undermark;

namespace {

struct Kept {
    test::DemoCar car;
    std::filesystem::path pipe(const char* name) const { return car.folder() / name; }

    void keep(const std::string& spec) { QVERIFY(car.record(LiveSource{spec, {}, {}, {}})); }
    void keepPipe(const char* name)
    {
        ::mkfifo(pipe(name).c_str(), 0600);
        keep("lines:" + pipe(name).string());
    }
    void say(const char* name, const char* line) const { std::ofstream(pipe(name)) << line << '\n'; }
    static bool hears(Screen& screen, double signal)
    {
        bool heard = false;
        const auto listening = QObject::connect(&screen.feed, &LiveFeed::sampled, [&](const Sample& sample) {
            heard = heard || (sample.signal && sample.signal->value() == signal);
        });
        const bool came = QTest::qWaitFor([&] { return heard; }, 3000);
        QObject::disconnect(listening);
        return came;
    }
    static bool says(const Screen& screen, const QString& part)
    {
        for (const NoticeText& notice : screen.now.notices())
            if (notice.text.contains(part))
                return true;
        return false;
    }
};

} // namespace

class KeptSourcesTest : public QObject {
    Q_OBJECT

private slots:
    void theShownCarsAreHeardAndThoseKeptMeanwhile()
    {
        Kept at;
        at.keepPipe("first");
        Screen screen(at.car);
        QVERIFY(!screen.feed.there());
        screen.hearKeptSources();
        QVERIFY(screen.feed.there());
        at.say("first", "1.5");
        QVERIFY(at.hears(screen, 1.5));

        Vehicle other;
        other.name = "Ibis";
        other.capacity = Volume::fromLitres(40);
        const std::string shown = at.car.shownCar();
        QVERIFY(at.car.setUp(other));
        screen.listCars();
        screen.settings.chooseCar(1);
        QVERIFY(!screen.feed.there());
        screen.settings.chooseCar(0);
        QVERIFY(screen.feed.there());
        at.say("first", "1.25");
        QVERIFY(at.hears(screen, 1.25));

        auto elsewhere = Car::open(at.car.logbookFile(), OpenMode::readWrite);
        QVERIFY(elsewhere);
        ::mkfifo(at.pipe("second").c_str(), 0600);
        QVERIFY(elsewhere->record(LiveSource{"lines:" + at.pipe("second").string(), {}, {}, {}}));
        QTRY_COMPARE(screen.feed.sources().told().size(), std::size_t(2));
    }
    // As cars are: the adapter has no power yet. Another logbook may also hold what this
    // program does not know.
    void oneThatIsNotThereIsWaitedForAndOneNotUnderstoodIsSaid()
    {
        Kept at;
        at.keep("lines:" + at.pipe("later").string());
        Screen screen(at.car);
        screen.hearKeptSources();
        QVERIFY(screen.feed.there());
        QVERIFY(at.says(screen, "not there yet"));
        ::mkfifo(at.pipe("later").c_str(), 0600);
        QTRY_VERIFY_WITH_TIMEOUT(screen.feed.sources().told()[0].there, 5000);
        QVERIFY(!at.says(screen, "not there yet"));

        Kept odd;
        odd.keep("warp:9");
        Screen other(odd.car);
        other.hearKeptSources();
        QVERIFY(!other.feed.there());
        QVERIFY(odd.says(other, "The sources kept with the car are not heard"));
    }
};

UNDERMARK_TEST(KeptSourcesTest)
#include "kept_sources_test.moc"
