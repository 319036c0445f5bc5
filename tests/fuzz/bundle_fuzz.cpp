// SPDX-License-Identifier: GPL-3.0-or-later
//
// Any bytes as a bundle to merge, and as a damaged logbook to salvage. Whatever happens,
// the logbook that takes it in stays sound and keeps what it had, and so is what is
// salvaged.
#include "engine/logbook/salvage.h"
#include "tests/fuzz/fuzz_input.h"

using namespace undermark;

namespace {

const Instant kNow{std::chrono::seconds(1'790'000'000)};

void removeAll(const std::filesystem::path& file)
{
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm", "-journal", ".merging", ".salvaging"})
        std::filesystem::remove(file.string() + suffix, ignored);
}

std::size_t vehiclesIn(const std::filesystem::path& file)
{
    const auto book = Logbook::open(file, OpenMode::readOnly);
    fuzz::require(book.has_value() && book->checkIntegrity().has_value());
    const auto vehicles = book->vehicles();
    fuzz::require(vehicles.has_value());
    for (const auto& vehicle : *vehicles)
        fuzz::require(book->load(vehicle.id).has_value());
    return vehicles->size();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const fuzz::InputFile input(data, size);
    const std::filesystem::path mine = input.path().string() + "-mine";
    const std::filesystem::path fresh = input.path().string() + "-fresh";
    removeAll(mine);
    removeAll(fresh);
    {
        auto book = Logbook::open(mine, OpenMode::createIfMissing);
        fuzz::require(book.has_value());
        Vehicle car;
        car.name = "Wren";
        car.capacity = Volume::fromLitres(50);
        fuzz::require(book->addVehicle(car, kNow).has_value());
        const auto merged = book->merge(input.path());
        const auto again = book->merge(input.path());
        fuzz::require(merged.has_value() == again.has_value());
        fuzz::require(!again || again->added == 0);
    }
    fuzz::require(vehiclesIn(mine) >= 1);
    if (salvage(input.path(), fresh, kNow))
        (void)vehiclesIn(fresh);
    else
        fuzz::require(!std::filesystem::exists(fresh));
    removeAll(mine);
    removeAll(fresh);
    return 0;
}
