// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gathers the readings of one block (30 s) and sums them up as one robust
// mean: the mean of all instants near the median one, so that a contact that
// drops out now and then costs nothing. Readings of equal time count as one
// instant. Fixed memory, no allocation; a sample costs one histogram entry.
#pragma once

#include "engine/tracking/tracker_types.h"

#include <array>

namespace undermark {

enum class BlockKind { empty, exact, atMost, atLeast, tooLow, tooHigh };

struct BlockSummary {
    BlockKind kind = BlockKind::empty;
    double startS = 0.0;
    double seconds = 0.0;        // from the first to the last reading
    double levelL = 0.0;         // robust mean, or the stop's bound
    double sdL = 0.0;            // of the readings within the block
    double curveSdL = 0.0;       // the calibration's own, mean
    double flatL = 0.0;          // largest flat piece met
    double atStopShare = 0.0;    // of the instants used
    double outlierShare = 0.0;   // instants outside the sender's range or far off at an end
    int instants = 0;
};

class LevelBlock {
public:
    LevelBlock(Volume lowest, Volume highest);

    void add(double timeS, const LevelObservation& observation);
    // Ends the block and starts the next.
    BlockSummary take();
    int instants() const { return m_instants + (m_now.readings > 0 ? 1 : 0); }

private:
    static constexpr int kBins = 64;
    struct Bin {
        int count = 0;
        double sum = 0.0;
        double squares = 0.0;
    };
    struct Now {                 // the instant being gathered
        double timeS = 0.0;
        int readings = 0, inside = 0, atEnd = 0, atMost = 0, atLeast = 0, low = 0, high = 0;
        double insideSum = 0.0, endSum = 0.0, curveSdSum = 0.0;
    };

    void closeInstant();
    void addLevel(double levelL);
    int binOf(double levelL) const;
    int medianBin() const;
    void sumUp(BlockSummary& out) const;
    BlockKind kind() const;

    double m_lowL, m_rangeL, m_binsPerL;
    Now m_now;
    std::array<Bin, kBins> m_bins{};
    double m_firstS = 0.0, m_lastS = 0.0;
    double m_curveSdSum = 0.0, m_flatL = 0.0;
    int m_instants = 0, m_level = 0, m_atMost = 0, m_atLeast = 0, m_low = 0, m_high = 0, m_mixed = 0;
};

} // namespace undermark
