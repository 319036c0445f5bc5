// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-preview: the touch screen over the tests' invented car, to look at
// pages without a logbook. UNDERMARK_PREVIEW chooses its state: calm (default),
// warned, low, unknown.
#include "app/screen/base/application.h"
#include "tests/support/fake_car.h"

#include <cstdlib>
#include <string>

namespace {

using namespace undermark;

Result<std::unique_ptr<CarService>> openPreview(const CarSource&)
{
    const char* wanted = std::getenv("UNDERMARK_PREVIEW");
    const std::string kind = wanted ? wanted : "calm";
    auto car = std::make_unique<test::FakeCar>();
    if (kind == "low")
        car->state = test::inventedState(0.9);
    if (kind == "unknown")
        return failInput(Sentence::just("no reading and no fill yet"),
                         Sentence::just("one of them"), "an empty logbook");
    if (kind != "calm") {
        car->state.notices = {
            {Notice::Severity::info, Sentence::just("The odometer was reset with the new dash.")},
            {Notice::Severity::warning,
             Sentence::just(
                 "The last fill is 12 L more than the distance explains: a can filled too, "
                 "or a missed fill before it?")}};
        car->lesson.flags = {car->state.notices[1]};
    }
    return car;
}

} // namespace

int main(int argc, char** argv)
{
    return runScreen(argc, argv, openPreview);
}
