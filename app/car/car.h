// SPDX-License-Identifier: GPL-3.0-or-later
//
// One car of a logbook: opened, recorded, learnt from and asked. Both programs stand on it;
// without Qt.
//
//  * A Car is always there. Where there is no car to ask (the logbook is not made yet, holds
//    none, or cannot be opened) every question answers with that one reason, and setUp() or
//    showDemo() are the ways on.
//  * What is recorded is durable before the call returns; the time is the clock's.
//  * Whatever anybody writes, this program or another, is in the next answer: the log is
//    learnt from again once it has changed, and only then.
//
// Every call may fail as Logbook's do (engine/logbook/logbook.h); only further errors are
// listed. Not for use by two threads at once; what is known and a PlanRequest are plain data
// and may be carried to another.
#pragma once

#include "app/car/car_answers.h"
#include "app/car/logbook_transfer.h"
#include "engine/logbook/logbook.h"
#include "engine/planning/route.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace undermark {

struct PlanRequest;

using Clock = std::function<Instant()>;
Instant systemTime(); // of the machine, to the second
Clock demoTime();     // goes like the machine's, beginning now with the demo's day

class Car {
public:
    // The first car of the logbook in `file`, or none of it while it has none.
    // Errors: as Logbook::open.
    static Result<Car> open(const std::filesystem::path& file, OpenMode mode,
                            Clock clock = systemTime);
    // No car, because of `why`; without it there is no logbook yet, and setUp() makes `file`.
    static Car none(std::filesystem::path file, std::optional<Error> why = {},
                    Clock clock = systemTime);

    // --- which car (cars.cpp)

    // Those of the logbook, in the order they were set up.
    Result<std::vector<Entry<Vehicle>>> cars() const;
    // Everything recorded of each of them, in that order.
    Result<std::vector<VehicleLog>> logs() const;
    // The one that everything else is about. notFound: there is none yet.
    Result<Entry<Vehicle>> vehicle() const;
    // Its UUID; empty: none.
    std::string shownCar() const { return m_vehicle ? m_vehicle->uuid : std::string(); }
    // Errors: notFound.
    Result<void> showCar(const std::string& uuid);
    // A first car, or another one; it is shown from then on. Errors: as Logbook::addVehicle.
    Result<EntryId> setUp(const Vehicle& vehicle);
    // Shows the demo car instead, in a logbook of its own and at its own time.
    Result<void> showDemo();

    // --- learnt from, and asked (car.cpp, car_answers.h)

    // What was recorded of it. Errors of this and the next: notFound where there is no car yet.
    Result<VehicleLog> log() const;
    // Errors: as learn().
    Result<Knowledge> knowledge();
    // The same with corrections of the litres (fuel_corrections.h); not kept.
    Result<CarKnowledge> learnWith(const CorrectionOptions& corrections) const;
    // By the log; in one driving mode, empty: the usual mix. Errors: as outlook().
    Result<NowState> now(const std::string& mode = {});
    Result<Fill> likelyFill(const Question& question = {}, const std::string& tank = {});
    // With the level and rates of now, or as the question tells them; the usual aim and
    // confidence. Errors: as tankFromCar.
    Result<PlanRequest> planRequest(Route route, const Question& question = {});

    // --- recorded (car_records.cpp)

    // A new entry. T: Mode, Calibration, Fill, Trip, Proof, ExtraTank, VerificationRecord,
    // LiveSource, Photo, HandOverRecord, OwnPump or LevelRecord. Errors: as Logbook::add.
    template <class T> Result<EntryId> record(const T& value);
    // A fill, and what it taught. Errors: as Logbook::add; once it is stored, none: what
    // keeps the answer back is among the lesson's flags.
    Result<FillLesson> recordFill(const Fill& fill);
    // Replaces an entry, also one that was taken back. T: Vehicle, Mode, ExtraTank,
    // Calibration, Fill, Trip, Proof or LevelRecord.
    // Errors: as Logbook::supersede.
    template <class T> Result<void> revise(const EntryId& entry, const T& value);
    Result<void> revise(const EntryId& entry, const LogValue& value);
    // The last step on an entry; of all of them or none. Errors: as Logbook::undo.
    Result<void> takeBack(const EntryId& entry);
    Result<void> takeBackAll(std::span<const EntryId> entries);
    // Every row of an entry of this kind, the first one first.
    Result<std::vector<LogVersion>> history(const EntryId& entry, const LogValue& kind) const;

    // --- the log as a list, and in and out (car_log.cpp)

    // As the Logbook's own, of the shown car; nothing is learnt.
    Result<LogPage> logPage(const LogPageWish& wish) const;
    Result<LogCount> logCount(std::optional<LogKind> kind) const;
    Result<std::int64_t> logRow(std::optional<LogKind> kind, const LogRow& entry) const;
    // As in logbook_transfer.h. T is Fill, Trip or LevelRecord.
    template <class T>
    Result<ImportPreview<T>> previewImport(const std::filesystem::path& table,
                                           const ImportOptions& options) const;
    template <class T> Result<ImportDone> takeIn(const ImportPreview<T>& preview);
    Result<MergeDone> merge(const std::filesystem::path& otherLogbook);
    Result<std::filesystem::path> exportEverything(const std::filesystem::path& into) const;

    // Whether another program wrote to the logbook since this was asked last. Cheap
    // enough to be asked every second.
    bool writtenElsewhere();
    // The schema of a newer Undermark that wrote the logbook, which then is only read.
    Result<std::optional<std::int64_t>> newerSchema() const;

    // Beside the logbook: where drafts are kept that must outlive a power cut.
    std::filesystem::path folder() const { return m_file.parent_path(); }
    std::filesystem::path logbookFile() const { return m_file; }
    Instant time() const { return m_clock(); }

private:
    Car(std::filesystem::path file, Clock clock);
    Result<void> take(Logbook logbook); // and shows its first car
    void show(const EntryId& vehicle);
    Error why() const; // there is no car to ask

    std::filesystem::path m_file;
    Clock m_clock;
    std::optional<Logbook> m_logbook;
    std::optional<Error> m_closed; // why the logbook cannot be had
    std::optional<EntryId> m_vehicle;
    Knowledge m_known;
    std::int64_t m_asked = 0; // the version when writtenElsewhere() was asked last
};

} // namespace undermark
