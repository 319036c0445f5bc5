// SPDX-License-Identifier: GPL-3.0-or-later
//
// Page's two-sided cumulative sum over standardised values: it adds up small
// shifts until they cannot be chance. Used on innovations that were thinned
// until they are nearly independent.
#pragma once

namespace undermark {

class Cusum {
public:
    // Both in standard deviations: `allowance` is half the shift to be found
    // quickest, `threshold` where it alarms.
    Cusum(double allowance, double threshold) : m_allowance(allowance), m_threshold(threshold) {}

    // Adds a standardised value; +1 or -1 on an alarm in that direction, else 0.
    // The sums stay where they are after an alarm; the caller resets.
    int add(double value);
    void reset() { m_up = m_down = 0.0; }
    // Keeps the sums from growing past the threshold while the caller waits.
    void hold();

    // The sums, 0 where there is no suspicion: a change began after the last 0.
    double up() const { return m_up; }
    double down() const { return m_down; }

private:
    double m_allowance;
    double m_threshold;
    double m_up = 0.0;
    double m_down = 0.0;
};

// Mean number of values until an alarm of the two-sided sum, for values of
// N(shift, 1). Siegmund, Sequential Analysis (1985): one side runs
// (exp(-2 d b) + 2 d b - 1) / (2 d^2) with d = shift - allowance and
// b = threshold + 1.166; the sides' reciprocals add. Within 3 % of the exact
// run lengths of Lucas & Crosier (1982) from threshold 3 up.
double cusumRunLength(double allowance, double threshold, double shift);

// The threshold whose run length without any shift is `runLength` (> 10).
double cusumThreshold(double allowance, double runLength);

} // namespace undermark
