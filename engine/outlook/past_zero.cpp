// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/past_zero.h"

#include "engine/outlook/outlook.h"

namespace undermark {

Result<Distances> pastZero(const CarKnowledge& car, const std::string& mode)
{
    Question atZero;
    atZero.usable = car.reserve.reserve();
    atZero.mode = mode;
    const Result<Outlook> there = outlook(car, atZero);
    if (!there)
        return fail(there.error());
    return pastZero(car.reserve, there->toDry, car.surgeMargin(mode));
}

} // namespace undermark
