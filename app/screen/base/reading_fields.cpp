// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/reading_fields.h"

#include <QCoreApplication>

namespace undermark {

namespace {

struct ReadingWords {
    Q_DECLARE_TR_FUNCTIONS(ReadingFields)
};

} // namespace

ReadingFields ReadingFields::of(const CarKnowledge& car)
{
    return {car.gauge.isKnown() ? QString::fromStdString(car.vehicle().sender.unit) : QString(), car.gauge.hasTwoSignals()};
}

QList<NumberEntry> ReadingFields::entries(int first, int second) const
{
    return {{first, two ? ReadingWords::tr("reading, lobe with the pump") : ReadingWords::tr("reading"), unit, {}, false,
             !unit.isEmpty()},
            {second, ReadingWords::tr("reading, other lobe"), unit, {}, false, !unit.isEmpty() && two}};
}

TypedReading typedReading(const NumberForm& form, const UnitFormat& format, int first, int second)
{
    const auto signal = [&](int id) {
        const auto number = format.numberFrom(form.text(id));
        return number ? std::optional(Signal::of(*number)) : std::nullopt;
    };
    return {signal(first), signal(second)};
}

} // namespace undermark
