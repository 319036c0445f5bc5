// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fields into which what the sender says is typed: one, or two of a saddle tank with two
// senders; none where no gauge knows what it means.
#pragma once

#include "app/screen/base/number_form.h"
#include "app/screen/base/unit_format.h"
#include "engine/outlook/outlook.h"

namespace undermark {

struct ReadingFields {
    QString unit; // of the sender; empty: a reading says nothing yet
    bool two = false;
    friend bool operator==(const ReadingFields&, const ReadingFields&) = default;

    static ReadingFields of(const CarKnowledge& car);
    // Both, with these ids; those that say nothing are not shown.
    QList<NumberEntry> entries(int first, int second) const;
};

// What was typed.
struct TypedReading {
    std::optional<Signal> first, second;
    bool any() const { return first || second; }
};
TypedReading typedReading(const NumberForm& form, const UnitFormat& format, int first, int second);

} // namespace undermark
