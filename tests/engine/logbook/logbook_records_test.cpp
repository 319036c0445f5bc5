// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/logbook_samples.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>
#include <limits>

using namespace undermark;
using namespace undermark::test;

// What goes in comes out, what is impossible stays out.
class LogbookRecordsTest : public QObject {
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<Logbook> m_book;
    EntryId m_car;

    template <class T>
    std::vector<Entry<T>> listed()
    {
        return m_book->entries<T>(m_car).value();
    }

    template <class T>
    T stored(const T& value)
    {
        const auto id = m_book->add(m_car, value, kNow);
        if (!id)
            qFatal("%s", describe(id.error()).c_str());
        for (const Entry<T>& entry : listed<T>())
            if (entry.id == *id && entry.recorded == kNow)
                return entry.value;
        qFatal("not listed");
    }

    template <class T>
    void refuses(const T& value, const char* field)
    {
        const auto before = m_book->entries<T>(m_car)->size();
        const auto result = m_book->add(m_car, value, kNow);
        QVERIFY2(!result, field);
        QCOMPARE(result.error().code, ErrorCode::badInput);
        QCOMPARE(result.error().where.column, std::string(field));
        QCOMPARE(m_book->entries<T>(m_car)->size(), before);
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        auto book = Logbook::open(m_folder->filePath("a/b/log.sqlite").toStdString(),
                                  OpenMode::createIfMissing);
        QVERIFY2(book.has_value(), book ? "" : describe(book.error()).c_str());
        m_book = std::make_unique<Logbook>(std::move(*book));
        m_car = *m_book->addVehicle(fullVehicle(), kNow);
    }

    void everyFieldOfEveryRecordComesBackExactly()
    {
        const EntryId plain = *m_book->addVehicle(leastVehicle(), kNow);
        const auto vehicles = *m_book->vehicles();
        QCOMPARE(vehicles.size(), std::size_t(2));
        QVERIFY(vehicles[0].id == m_car && vehicles[0].value == fullVehicle());
        QVERIFY(vehicles[1].id == plain && vehicles[1].value == leastVehicle());
        QCOMPARE(plain.uuid.size(), std::size_t(36));
        QCOMPARE(plain.uuid[14], '4');

        QVERIFY(stored(fullCalibration()) == fullCalibration());
        QVERIFY(stored(Calibration{}) == Calibration{});
        QVERIFY(stored(fullFill()) == fullFill());
        QVERIFY(stored(leastFill()) == leastFill());
        QVERIFY(stored(fullTrip()) == fullTrip());
        QVERIFY(stored(leastTrip()) == leastTrip());
        QVERIFY(stored(fullProof()) == fullProof());
        QVERIFY(stored(leastProof()) == leastProof());
        const Mode snow{"deep snow",
                        Estimate<Consumption>{Consumption::fromLitresPer100Km(17.1),
                                              Consumption::fromLitresPer100Km(3.3)}};
        QVERIFY(stored(snow) == snow);
        QVERIFY(stored(Mode{"gravel", std::nullopt}) == (Mode{"gravel", std::nullopt}));
    }

    void everyFieldOfALevelComesBackExactlyAndHalfOfOneIsRefused()
    {
        QVERIFY(addSchema2(*m_book, m_car).has_value());
        QVERIFY(addSchema3(*m_book, m_car).has_value());
        QVERIFY(holdsSchema3(*m_book, m_car));
        const auto refused = [&](const LevelRecord& level, const char* field) {
            const auto id = m_book->add(m_car, level, kNow);
            return !id && id.error().code == ErrorCode::badInput && id.error().where.column == field;
        };
        LevelRecord level;
        level.time = at(9);
        QVERIFY(refused(level, "signal"));   // neither a reading nor litres
        level.usable = litres(20, 0.5);
        QVERIFY(stored(level) == level);
        level.signalSd = Signal::of(0.1);    // of no reading
        QVERIFY(refused(level, "signal"));
        level.signalSd.reset();
        level.usable = litres(-1, 0.5);
        QVERIFY(refused(level, "litres"));
        level.usable = litres(20, 0.5);
        level.tank = "no such tank";
        const auto other = m_book->add(m_car, level, kNow);
        QVERIFY(!other && other.error().code == ErrorCode::notFound);
        const auto again = m_book->add(m_car, fullLevel(), kNow); // by its journal id
        QVERIFY(!again && again.error().found == Part(std::string("2026-11-27/3/level")));
    }

    void everyFieldOfWhatIsOfOneTankComesBackExactly()
    {
        const auto added = addSchema2(*m_book, m_car);
        QVERIFY2(added.has_value(), added ? "" : describe(added.error()).c_str());
        QVERIFY(holdsSchema2(*m_book, m_car));
        QVERIFY(stored(leastTank()) == leastTank());
        QVERIFY(stored(LiveSource{"nmea:/dev/ttyUSB0", {}, {}, {}}).dbc == std::nullopt);
        const OwnPump bare{"Hut", -90, 180, {}, {}, {}, {}};
        QVERIFY(stored(bare) == bare);
        Vehicle car = fullVehicle();
        car.currency = "EUR";
        QVERIFY(m_book->supersede(m_car, car, kNow).has_value());
        QVERIFY(m_book->vehicles()->front().value == car);
        const auto log = m_book->load(m_car);
        QCOMPARE(log->tanks.size(), std::size_t(2));
        QCOMPARE(log->calibrations.size(), std::size_t(1));
        QVERIFY(!log->calibration);   // that one is of the other tank
        QVERIFY(log->latestCalibration(kWingTank)->value == shapedCalibration());
        QCOMPARE(log->verifications.size(), std::size_t(1));
        QCOMPARE(log->photos.size(), std::size_t(1));
        QCOMPARE(log->sources.size(), std::size_t(2));
        QVERIFY(stored(VerificationRecord{}) == VerificationRecord{});
    }

    void aTankIsKnownByItsNameLikeAMode()
    {
        Fill fill = leastFill();
        fill.tank = kWingTank;
        QCOMPARE(m_book->add(m_car, fill, kNow).error().code, ErrorCode::notFound);
        const EntryId tank = *m_book->add(m_car, fullTank(), kNow);
        QCOMPARE(m_book->add(m_car, fullTank(), kNow).error().code, ErrorCode::badInput);
        QCOMPARE(m_book->supersede(tank, leastTank("another"), kNow).error().code, ErrorCode::badInput);
        const EntryId id = *m_book->add(m_car, fill, kNow);
        QCOMPARE(m_book->undo(tank, kNow).error().code, ErrorCode::badInput);
        QVERIFY(m_book->undo(id, kNow).has_value());
        QVERIFY(m_book->undo(tank, kNow).has_value());
        QVERIFY(listed<ExtraTank>().empty());
    }

    // A car that lost its power before it could tick the trip off writes it again.
    void aTripOfTheCarsJournalIsKeptOnceEvenIfItWasUndone()
    {
        const EntryId id = *m_book->add(m_car, writtenTrip("7"), kNow);
        QCOMPARE(m_book->add(m_car, writtenTrip("7"), kNow).error().code, ErrorCode::badInput);
        const std::vector<Trip> twice{writtenTrip("8"), writtenTrip("8")};
        QVERIFY(!m_book->addAll<Trip>(m_car, twice, kNow));
        Trip corrected = writtenTrip("7");
        corrected.mode = kMotorway;
        QVERIFY(m_book->supersede(id, corrected, kNow).has_value());
        QVERIFY(m_book->undo(id, kNow).has_value());
        QVERIFY(m_book->undo(id, kNow).has_value());
        QVERIFY(listed<Trip>().empty());
        QVERIFY(!m_book->add(m_car, writtenTrip("7"), kNow));
        const EntryId other = *m_book->addVehicle(leastVehicle(), kNow);
        QVERIFY(m_book->add(other, writtenTrip("7"), kNow).has_value());   // another car's journal
    }

    void impossibleTextsOfSchema2AreRefused()
    {
        Fill fill = leastFill();
        for (const char* currency : {"eur", "EURO", "E", "", "€"}) {
            fill.currency = currency;
            refuses(fill, "currency");
        }
        Photo photo;
        for (const std::string& hash : {std::string(63, 'a'), std::string(64, 'A'), std::string("../../x"),
                                        std::string(63, 'a') + "/"}) {
            photo.sha256 = hash;
            refuses(photo, "hash");
        }
        LiveSource source{"can:can0", {}, std::string(1'048'577, 'x'), {}};
        refuses(source, "DBC file");
        refuses(OwnPump{"x", 90.1, 0, {}, {}, {}, {}}, "latitude");
        refuses(OwnPump{"x", 0, 0, {}, {}, {}, -.01}, "price");
        refuses(OwnPump{"x", 0, -180.1, {}, {}, {}, {}}, "longitude");
    }

    void everyWordOfEveryEnumerationComesBack()
    {
        for (const auto kind : {FuelKind::petrol, FuelKind::diesel, FuelKind::lpg, FuelKind::ethanol})
            for (const auto circuit : {CircuitKind::direct, CircuitKind::resistive,
                                       CircuitKind::ratiometric, CircuitKind::percent,
                                       CircuitKind::counts}) {
                Vehicle v = fullVehicle();
                v.fuel = kind;
                v.sender.circuit = circuit;
                QVERIFY(m_book->supersede(m_car, v, kNow).has_value());
                QVERIFY(m_book->vehicles()->front().value == v);
            }
        for (const auto extent : {FillExtent::full, FillExtent::partial, FillExtent::neck})
            for (const auto counted : {std::optional<bool>(), std::optional(true), std::optional(false)}) {
                Fill f = leastFill();
                f.extent = extent;
                f.counted = counted;
                QVERIFY(stored(f) == f);
            }
        for (const auto kind : {ProofKind::drained, ProofKind::base, ProofKind::stalled,
                                ProofKind::pastZero}) {
            Proof p = fullProof();
            p.kind = kind;
            QVERIFY(stored(p) == p);
        }
    }

    void aNewVehicleHasTheFourStandardModes()
    {
        std::vector<std::string> names;
        for (const auto& mode : listed<Mode>())
            names.push_back(mode.value.name);
        QCOMPARE(names, (std::vector<std::string>{kTown, kOpenRoad, kMotorway, kSpecialStage}));
    }

    void entriesAreListedByTimeThenByRecording()
    {
        const std::vector<Fill> fills{leastFill(at(300), 1), leastFill(at(100), 2),
                                      leastFill(at(300), 3), leastFill(at(-100), 4)};
        const auto ids = m_book->addAll<Fill>(m_car, fills, kNow);
        QVERIFY(ids.has_value());
        QVERIFY(m_book->supersede(ids->at(0), leastFill(at(300), 5), kNow).has_value());
        std::vector<double> order;
        for (const auto& fill : listed<Fill>())
            order.push_back(fill.value.volume.litres());
        QCOMPARE(order, (std::vector<double>{4, 2, 5, 3}));
    }

    void vehiclesKeepTheirEntriesApart()
    {
        const EntryId other = *m_book->addVehicle(leastVehicle(), kNow);
        QVERIFY(m_book->add(m_car, leastFill(), kNow).has_value());
        QVERIFY(m_book->entries<Fill>(other)->empty());
        const auto log = m_book->load(m_car);
        QVERIFY(log.has_value());
        QCOMPARE(log->fills.size(), std::size_t(1));
        QVERIFY(log->vehicle.value == fullVehicle());
        QCOMPARE(log->modes.size(), std::size_t(4));
        QVERIFY(!log->calibration);
    }

    void theLatestCalibrationIsTheOneByItsOwnTime()
    {
        QVERIFY(m_book->add(m_car, fullCalibration(at(2000)), kNow).has_value());
        QVERIFY(m_book->add(m_car, Calibration{at(1000), {}, {}}, kNow).has_value());
        QVERIFY(m_book->load(m_car)->calibration->value == fullCalibration(at(2000)));
    }

    void allOfABatchOrNothing()
    {
        const std::vector<Trip> trips{leastTrip(), fullTrip(), [] {
                                          Trip t = leastTrip();
                                          t.mode = "unheard-of";
                                          return t;
                                      }()};
        const auto result = m_book->addAll<Trip>(m_car, trips, kNow);
        QVERIFY(!result);
        QCOMPARE(result.error().code, ErrorCode::notFound);
        QCOMPARE(result.error().found, Part(std::string("unheard-of")));
        QVERIFY(m_book->entries<Trip>(m_car)->empty());
    }

    void impossibleValuesAreRefusedByField()
    {
        const double nan = std::numeric_limits<double>::quiet_NaN();
        const double inf = std::numeric_limits<double>::infinity();
        for (const double bad : {0.0, -1.0, nan, inf, -inf, 2e9})
            refuses(leastFill(at(0), bad), "litres");
        for (const double bad : {-1e-9, nan, inf}) {
            Fill fill = leastFill();
            fill.odometer = Distance::fromKm(bad);
            refuses(fill, "odometer");
            Trip trip = leastTrip();
            trip.distance = Distance::fromKm(bad);
            refuses(trip, "km");
            Calibration calibration = fullCalibration();
            calibration.points[3].added = Volume::fromLitres(bad);
            refuses(calibration, "added");
            Proof proof = leastProof();
            proof.volume->sd = Volume::fromLitres(bad);
            refuses(proof, "litres sd");
            refuses(Mode{"x", Estimate<Consumption>{Consumption::fromLitresPerKm(bad), {}}}, "rate");
        }
        Fill cold = leastFill();
        cold.temperature = Temperature::fromCelsius(-274);
        refuses(cold, "temperature");
        refuses(leastFill(at(400'000'000'000)), "date");
        Trip idle = leastTrip();
        idle.distance = {};
        refuses(idle, "km");
        Trip starts = leastTrip();
        starts.starts = -1;
        refuses(starts, "starts");
        refuses(Proof{at(0), ProofKind::stalled, {}, {}, {}, {}, {}}, "km");
        refuses(Proof{at(0), ProofKind::drained, {}, {}, {}, {}, {}}, "litres");
        Vehicle none = leastVehicle("Another");
        none.capacity = {};
        QCOMPARE(m_book->addVehicle(none, kNow).error().where.column, std::string("capacity"));
    }

    void hostileTextIsStoredAsTextOrRefused()
    {
        for (const std::string text : {"'; DROP TABLE fills; --", "=1+1", "\"quoted\"", "%s%n",
                                       "../../etc", "æøå 車 🚗", "NULL", "?1", " "}) {
            Fill fill = leastFill();
            fill.blend = text;
            QVERIFY(stored(fill) == fill);
            const EntryId id = *m_book->addVehicle(leastVehicle(text), kNow);
            QCOMPARE(m_book->load(id)->vehicle.value.name, text);
            Trip trip = leastTrip();
            trip.mode = text;
            QCOMPARE(m_book->add(m_car, trip, kNow).error().code, ErrorCode::notFound);
            QVERIFY(m_book->add(m_car, Mode{text, std::nullopt}, kNow).has_value());
            QVERIFY(stored(trip) == trip);
        }
        for (const std::string& text : {std::string(), std::string("a\0b", 3), std::string("a\nb"),
                                        std::string("\x1b[2J"), std::string("\xff"),
                                        std::string("\xc3"), std::string("\xc0\xaf"),
                                        std::string("\xed\xa0\x80"), std::string("\xc2\x9b"),
                                        std::string(201, 'x')}) {
            Fill fill = leastFill();
            fill.blend = text;
            refuses(fill, "blend");
            QCOMPARE(m_book->addVehicle(leastVehicle(text), kNow).error().where.column,
                     std::string("name"));
        }
        QVERIFY(m_book->checkIntegrity().has_value());
    }

    void namesAreTakenOnce()
    {
        QCOMPARE(m_book->addVehicle(fullVehicle(), kNow).error().code, ErrorCode::badInput);
        QCOMPARE(m_book->add(m_car, Mode{kTown, {}}, kNow).error().code, ErrorCode::badInput);
        const EntryId other = *m_book->addVehicle(leastVehicle(), kNow);
        QCOMPARE(m_book->supersede(other, fullVehicle(), kNow).error().code, ErrorCode::badInput);
        QVERIFY(m_book->undo(m_car, kNow).has_value());
        QVERIFY(m_book->supersede(other, fullVehicle(), kNow).has_value());
    }

    void anUnknownVehicleIsNotFound()
    {
        for (const std::string uuid : {"", "nonsense", "00000000-0000-4000-8000-000000000000"}) {
            QCOMPARE(m_book->add(EntryId{uuid}, leastFill(), kNow).error().code, ErrorCode::notFound);
            QCOMPARE(m_book->load(EntryId{uuid}).error().code, ErrorCode::notFound);
            QCOMPARE(m_book->entries<Trip>(EntryId{uuid}).error().code, ErrorCode::notFound);
            QCOMPARE(m_book->undo(EntryId{uuid}, kNow).error().code, ErrorCode::notFound);
        }
    }
};

UNDERMARK_TEST(LogbookRecordsTest)
#include "logbook_records_test.moc"
