// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the touch screen needs from a car, without Qt. The view models take a
// reference to a CarService; the program gives them one over the logbook
// (app/car/open_car.h), the tests a fake (tests/support/fake_car.h).
#pragma once

#include "engine/base/error.h"
#include "engine/base/quantity.h"
#include "engine/base/records.h"
#include "engine/base/sentence.h"
#include "engine/logbook/logbook.h"
#include "engine/outlook/car_knowledge.h"
#include "engine/range/horizon.h"
#include "engine/range/range_law.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace undermark {

// Something the driver must read before the number.
struct Notice {
    enum class Severity { info, warning, error };
    Severity severity = Severity::info;
    Sentence text;
};

// How far one car goes, now, in one driving mode. Made whole, by designated
// initializers: there is no state without its two laws.
struct NowState {
    std::string vehicle;
    std::string mode;               // one of `modes`
    std::vector<std::string> modes; // all that can be asked for
    std::optional<Distance> sinceFill;
    Estimate<Volume> aboveZero;       // usable litres above the zero mark; may be negative
    Estimate<Volume> reserve;         // usable litres below it
    Estimate<Consumption> rate;       // of `mode`, with its predictive spread
    RangeLaw toZero;                  // down to the zero mark
    RangeLaw toDry;                   // the same road, down to dry
    std::vector<HorizonPlace> places; // where fuel can be had ahead, in no particular order
    std::vector<Notice> notices;      // in no particular order
    Sentence why;                     // one line: what the answer rests on
};

// A fill as it is typed at the pump. Exactly one of odometer and sinceLast is
// normally given; both may be absent (then only the litres count).
struct FillDraft {
    Volume litres;
    std::optional<Distance> odometer;
    std::optional<Distance> sinceLast; // trip meter, from the fill before
    FillExtent extent = FillExtent::full;
    std::optional<double> pricePerLitre; // in the user's currency
};

// Absent where there was, or is, nothing to estimate it from.
template <class Q> struct Change {
    std::optional<Estimate<Q>> before;
    std::optional<Estimate<Q>> after;
};

// What one fill taught.
struct FillLesson {
    std::string entryId; // for undoFill
    Change<Consumption> rate;
    Change<Volume> reserve;
    std::vector<Notice> flags; // what is implausible, with its likely cause
    std::optional<Fill> proposed; // the fill as it would be plausible, for revise()
};

// What the log is made of.
using LogValue = std::variant<Fill, Trip, Proof>;

// One row of an entry's history, the first one first.
struct LogVersion {
    Instant recorded{};
    LogValue value;
    bool withdrawn = false;
};

// What is done to the logbook as a whole.
using LogbookWork = std::function<Result<void>(Logbook&)>;
// What is asked of the logbook about one car.
using LogbookQuestion = std::function<Result<void>(const Logbook&, const EntryId& vehicle)>;

class CarService {
public:
    virtual ~CarService() = default;

    // The state in one driving mode; an empty name means the mode last used.
    // Errors: notFound for an unknown mode, and whatever keeps the logbook
    // from being read.
    virtual Result<NowState> now(const std::string& mode) = 0;

    // What the next fill will most likely be: litres to full, odometer, price.
    virtual Result<FillDraft> guessFill() = 0;

    // Stores the fill, durably, before it returns. Errors: badInput (nothing
    // is stored); the implausible is stored and flagged.
    virtual Result<FillLesson> addFill(const FillDraft& fill) = 0;

    // Takes back a fill that addFill stored. Errors: notFound.
    virtual Result<void> undoFill(const std::string& entryId) = 0;

    // Everything the logbook teaches about the car, as of now; it stays what it is.
    virtual Result<std::shared_ptr<const CarKnowledge>> knowledge() = 0;

    // The same for any entry of the log: replaces its value (and brings back one
    // that was taken back); takes its last row back; tells its history. Errors:
    // badInput (nothing is stored), notFound.
    virtual Result<void> revise(const std::string& entryId, const LogValue& value) = 0;
    virtual Result<void> takeBack(const std::string& entryId) = 0;
    virtual Result<std::vector<LogVersion>> history(const std::string& entryId,
                                                    const LogValue& kind) = 0;

    // Stores a new calibration, durably. The car's time is put in.
    virtual Result<void> saveCalibration(Calibration calibration) = 0;

    // The cars of the logbook, in the order they were set up, and which one is shown
    // (empty: none).
    virtual Result<std::vector<Entry<Vehicle>>> cars() = 0;
    virtual std::string shownCar() const = 0;
    // Everything else answers for this car from then on. Errors: notFound.
    virtual Result<void> showCar(const std::string& id) = 0;

    // A first car, or another one; the screen shows it from then on. Errors:
    // badInput, and whatever keeps the logbook from being made.
    virtual Result<void> setUp(const Vehicle& vehicle) = 0;
    // Shows the demo car, in a logbook of its own.
    virtual Result<void> showDemo() = 0;

    // Does `work` on the logbook (import, export, merge: app/car/logbook_transfer.h); what is
    // known is learnt anew afterwards. Errors: notFound where there is no logbook yet;
    // those of `work`.
    virtual Result<void> withLogbook(const LogbookWork& work) = 0;

    // Asks the logbook about the shown car, without learning anything (its list in pages).
    // Errors: notFound where there is none; those of `question`.
    virtual Result<void> readLogbook(const LogbookQuestion& question) = 0;

    // Whether another program wrote to the logbook since this was asked last. Cheap
    // enough to be asked every second.
    virtual bool writtenElsewhere() = 0;

    // Beside the logbook: where drafts are kept that must outlive a power cut.
    virtual std::filesystem::path folder() const = 0;
    virtual Instant time() const = 0;
};

} // namespace undermark
