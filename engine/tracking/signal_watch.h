// SPDX-License-Identifier: GPL-3.0-or-later
//
// Watches on the signal itself: silence, values that the sender cannot give, a
// contact that falls out now and then.
#pragma once

#include "engine/tracking/block_drive.h"
#include "engine/tracking/level_block.h"

namespace undermark {

// No reading at all: a dropout after a minute of it.
class SilenceWatch {
public:
    // A block without a reading; true once, when the dropout is found.
    bool silent(const BlockDrive& past);
    // A block with one; true where a dropout is over.
    bool heard();
    double onsetS() const { return m_onsetS; }

private:
    double m_silentS = 0.0, m_onsetS = 0.0;
    bool m_said = false;
};

// Readings below or above anything the sender gives: a wire after two blocks.
class RangeWatch {
public:
    // True from the second block in a row on.
    bool outside(const BlockSummary& block);
    void inside() { m_blocks = 0; }
    double onsetS() const { return m_onsetS; }

private:
    int m_blocks = 0;
    double m_onsetS = 0.0;
};

// Instants that fall out in a tenth of a block's: a loose contact after four such
// blocks, over after twenty without.
class ContactWatch {
public:
    enum class Contact { none, loose, healed };   // each said once
    Contact add(const BlockSummary& block);

private:
    int m_loose = 0, m_since = 0;   // blocks
    bool m_said = false;
};

} // namespace undermark
