// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the touch screen needs from a car, without Qt. The view models take a
// reference to a CarService; the program gives them one over the logbook
// (app/open_car.h), the tests a fake (tests/support/fake_car.h).
#pragma once

#include "engine/error.h"
#include "engine/quantity.h"
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

// pNN: the distance made with probability NN/100; p99 <= p90 <= p50 <= p10.
// May be negative (the level itself is in doubt); shown as 0, and said.
struct Distances {
    Distance p99;
    Distance p90;
    Distance p50;
    Distance p10;
};

// The falling curves of the fuel horizon. Sample i of n stands for the
// distance i / (n - 1) of the strip's length. Both have the same size (64 or
// more, so that the drawn curve is smooth), values 0 to 1, never rising, and
// running >= aboveZero everywhere.
struct Sureness {
    std::vector<double> aboveZero;  // P(the level is still above the zero mark)
    std::vector<double> running;    // P(the engine still runs)
};

// A named place ahead, so far along the road.
struct Peg {
    std::string name;
    Distance at;
};

// How far one car goes, now, in one driving mode.
struct NowState {
    std::string vehicle;
    std::string mode;                    // one of `modes`
    std::vector<std::string> modes;      // all that can be asked for
    std::optional<Distance> sinceFill;
    Estimate<Volume> aboveZero;          // usable litres above the zero mark; may be negative
    Estimate<Volume> reserve;            // usable litres below it
    Estimate<Consumption> rate;          // of `mode`, with its predictive spread
    Distances toZero;
    Distances toDry;
    Sureness sureness;
    Distance stripLength;                // > 0
    std::vector<Peg> pegs;               // in no particular order
    std::vector<Notice> notices;         // in no particular order
    std::string why;                     // one line: what the answer rests on
};

// A fill as it is typed at the pump. Exactly one of odometer and sinceLast is
// normally given; both may be absent (then only the litres count).
struct FillDraft {
    Volume litres;
    std::optional<Distance> odometer;
    std::optional<Distance> sinceLast;   // trip meter, from the fill before
    FillExtent extent = FillExtent::full;
    std::optional<double> pricePerLitre; // in the user's currency
};

// Absent where there was, or is, nothing to estimate it from.
template <class Q>
struct Change {
    std::optional<Estimate<Q>> before;
    std::optional<Estimate<Q>> after;
};

// What one fill taught.
struct FillLesson {
    std::string entryId;                 // for undoFill
    Change<Consumption> rate;
    Change<Volume> reserve;
    std::vector<Notice> flags;           // what is implausible, with its likely cause
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
