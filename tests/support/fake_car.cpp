// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/fake_car.h"

#include <algorithm>

namespace undermark::test {

NowState inventedState(double aboveZeroLitres)
{
    const Estimate<Volume> aboveZero{Volume::fromLitres(aboveZeroLitres), Volume::fromLitres(0.6)};
    const Estimate<Volume> reserve{Volume::fromLitres(5.9), Volume::fromLitres(0.7)};
    const Estimate<Volume> usable{aboveZero.mean + reserve.mean, Volume::fromLitres(0.92)};
    const Estimate<Consumption> rate{Consumption::fromLitresPer100Km(8.1),
                                     Consumption::fromLitresPer100Km(0.35)};
    const RangeLaw toZero = *RangeLaw::make(aboveZero, rate);
    return {
        .vehicle = "Kestrel van",
        .mode = kOpenRoad,
        .modes = {kTown, kOpenRoad, kMotorway, kSpecialStage},
        .sinceFill = Distance::fromKm(312.4),
        .aboveZero = aboveZero,
        .reserve = reserve,
        .rate = rate,
        .toZero = toZero,
        .toDry = toZero.withFuel(usable),
        .places = {{"Ferry ramp", Distance::fromKm(96)}, {"Mill bridge", Distance::fromKm(181)}},
        .notices = {},
        .why = "Rate from 9 full fills; level from the last reading, 4 km ago; "
               "reserve from base and drain."};
}

FakeCar::FakeCar() : state(inventedState(13.8))
{
    guess = {Volume::fromLitres(41.5), Distance::fromKm(48210), Distance::fromKm(312),
             FillExtent::full, 1.759};
    lesson.entryId = "fill-1";
    lesson.rate = {state.rate, Estimate<Consumption>{Consumption::fromLitresPer100Km(8.3),
                                                     Consumption::fromLitresPer100Km(0.31)}};
    lesson.reserve = {state.reserve, state.reserve};
}

Result<NowState> FakeCar::now(const std::string& mode)
{
    if (error)
        return fail(*error);
    if (mode.empty())
        return state;
    if (std::ranges::find(state.modes, mode) == state.modes.end()) {
        Error unknown;
        unknown.code = ErrorCode::notFound;
        unknown.detail = "no such driving mode";
        return fail(unknown);
    }
    state.mode = mode;
    return state;
}

Result<FillDraft> FakeCar::guessFill()
{
    if (error)
        return fail(*error);
    return guess;
}

Result<FillLesson> FakeCar::addFill(const FillDraft& fill)
{
    if (error)
        return fail(*error);
    stored.push_back(fill);
    return lesson;
}

Result<void> FakeCar::undoFill(const std::string& entryId)
{
    if (error)
        return fail(*error);
    undone.push_back(entryId);
    return {};
}

} // namespace undermark::test
