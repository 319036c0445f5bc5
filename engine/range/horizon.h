// SPDX-License-Identifier: GPL-3.0-or-later
//
// Geometry of the fuel horizon: a strip of road ahead that thins out as the
// probability of still running falls, with the zero mark a post across it, the
// hidden reserve a hatched tail behind that post, and places as pegs. The touch
// screen and the printed card draw the same numbers; nothing here knows about
// pixels or colours.
//
// Positions `at`, `from`, `to` are fractions of the strip's width: 0 here, 1 at
// `length`. A mark beyond the strip is absent, not moved to its edge.
//
// Guarantees (each has a test in tests/engine/range/horizon_test.cpp): the bands meet
// without gap from 0 to 1 and their opacity is the law's own probability at
// their middle, so it never rises along the strip; ticks stand at whole multiples of
// 1, 2 or 5 times a power of ten; labels of one row never touch.
#pragma once

#include "engine/range/range_law.h"

#include <optional>
#include <string>
#include <vector>

namespace undermark {

struct HorizonPlace {
    std::string name;
    Distance ahead;                 // >= 0; beyond the strip it gets no peg
};

struct HorizonRequest {
    std::optional<Distance> length; // > 0; absent: a whole tick past the hopeful distance to dry
    int bands = 96;                 // >= 64, so that the thinning looks smooth
    Distance unit = Distance::fromKm(1);   // of the ticks' labels; fromMiles(1) for miles
    int mostTicks = 8;              // >= 2
    double characterWidth = 0.012;  // of a label, as a fraction of the strip
    int labelRows = 3;              // for pegs; further ones stay without label
    std::vector<HorizonPlace> places;
};

struct HorizonBand {
    double from;
    double to;
    double running;                 // P(still running) at the middle: the opacity, 0 to 1
    double aboveZero;               // P(still above the zero mark) there
};

struct HorizonTick {
    double at;
    std::string label;              // "150", in the request's unit
};

struct HorizonPeg {
    std::string name;
    double at;
    double running;                 // P(still running) on arrival
    std::optional<int> row;         // of its label, from 0; absent where none is free
    double labelFrom;               // centred on the peg, kept within the strip
    double labelTo;
};

struct HorizonTail {
    double from;                    // the zero post
    double to;                      // hopeful distance to dry
};

struct Horizon {
    Distance length;
    std::vector<HorizonBand> bands;
    std::optional<double> sureToZero;
    std::optional<double> zeroPost;     // even distance to the zero mark
    std::optional<double> sureToDry;
    std::optional<double> evenToDry;
    std::optional<HorizonTail> tail;    // cut off at the end of the strip
    std::vector<HorizonTick> ticks;
    std::vector<HorizonPeg> pegs;       // by distance
    int placesBeyond = 0;               // further away than the strip is long
};

// `toZero` and `toDry` are laws of the same road. About (bands + places + 10)
// evaluations of the two laws: well under a millisecond.
Horizon horizon(const RangeLaw& toZero, const RangeLaw& toDry, const HorizonRequest& request);

// The smallest 1, 2 or 5 times a power of ten that is not under `span / most`.
double tickStep(double span, int most);

} // namespace undermark
