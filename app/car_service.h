// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the touch screen needs from a car, without Qt. The view models take a
// reference to a CarService; the program gives them one over the logbook
// (app/open_car.h), the tests a fake (tests/support/fake_car.h).
#pragma once

#include "engine/error.h"
#include "engine/quantity.h"
#include "engine/range/horizon.h"
#include "engine/range/range_law.h"
#include "engine/records.h"

#include <optional>
#include <string>
#include <vector>

namespace undermark {

// Something the driver must read before the number. One plain sentence,
// already in words.
struct Notice {
    enum class Severity { info, warning, error };
    Severity severity = Severity::info;
    std::string text;
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
    std::string why;                  // one line: what the answer rests on
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
};

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
};

} // namespace undermark
