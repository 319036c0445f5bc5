// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/fake_car.h"

#include <algorithm>
#include <cmath>

namespace undermark::test {

namespace {

constexpr int kSamples = 128;

// P(D > d) for a normal level (litres) and rate (litres per km), design 4.5
// without route noise.
double sureness(double km, const Estimate<Volume>& level, const Estimate<Consumption>& rate)
{
    const double spread = std::hypot(level.sd.litres(), km * rate.sd.litresPerKm());
    const double z = (rate.mean.litresPerKm() * km - level.mean.litres()) / spread;
    return 0.5 * std::erfc(z / std::sqrt(2.0));
}

Distance quantile(double p, const Estimate<Volume>& level, const Estimate<Consumption>& rate)
{
    double low = -1000.0;
    double high = 3000.0;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2.0;
        (sureness(middle, level, rate) > p ? low : high) = middle;
    }
    return Distance::fromKm(low);
}

Distances distances(const Estimate<Volume>& level, const Estimate<Consumption>& rate)
{
    return {quantile(0.99, level, rate), quantile(0.90, level, rate),
            quantile(0.50, level, rate), quantile(0.10, level, rate)};
}

} // namespace

NowState inventedState(double aboveZeroLitres)
{
    NowState s;
    s.vehicle = "Kestrel van";
    s.modes = {kTown, kOpenRoad, kMotorway, kSpecialStage};
    s.mode = kOpenRoad;
    s.sinceFill = Distance::fromKm(312.4);
    s.aboveZero = {Volume::fromLitres(aboveZeroLitres), Volume::fromLitres(0.6)};
    s.reserve = {Volume::fromLitres(5.9), Volume::fromLitres(0.7)};
    s.rate = {Consumption::fromLitresPer100Km(8.1), Consumption::fromLitresPer100Km(0.35)};
    const Estimate<Volume> toDry{s.aboveZero.mean + s.reserve.mean,
                                 Volume::fromLitres(std::hypot(0.6, 0.7))};
    s.toZero = distances(s.aboveZero, s.rate);
    s.toDry = distances(toDry, s.rate);
    s.stripLength = std::max(Distance::fromKm(50), s.toDry.p10 * 1.15);
    for (int i = 0; i < kSamples; ++i) {
        const double km = s.stripLength.km() * i / (kSamples - 1);
        s.sureness.aboveZero.push_back(sureness(km, s.aboveZero, s.rate));
        s.sureness.running.push_back(
            std::max(sureness(km, toDry, s.rate), s.sureness.aboveZero.back()));
    }
    s.pegs = {{"Ferry ramp", Distance::fromKm(96)}, {"Mill bridge", Distance::fromKm(181)}};
    s.why = "Rate from 9 full fills; level from the last reading, 4 km ago; reserve from base and drain.";
    return s;
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
