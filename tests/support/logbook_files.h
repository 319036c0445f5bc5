// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the logbook's tests need of the file system, and the fixture that later
// programs must still be able to read.
#pragma once

#include "tests/support/logbook_samples.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <fstream>
#include <iterator>
#include <set>

namespace undermark::test {

namespace fs = std::filesystem;

inline std::string bytesOf(const fs::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

inline void writeBytes(const fs::path& file, const std::string& bytes)
{
    std::ofstream(file, std::ios::binary) << bytes;
}

inline std::set<std::string> namesIn(const fs::path& folder)
{
    std::set<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder))
        names.insert(entry.path().filename().string());
    return names;
}

// Every write-ahead page moved into the file itself, and no journal beside it.
inline void makeSingleFile(const fs::path& file)
{
    SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
    database.execAndGet("PRAGMA journal_mode = DELETE");
}

// The fixture of a schema, an invented car with every sample record, as a program of that
// schema wrote it: it stays as it is for ever, because those programs are gone.
inline fs::path fixtureOf(int schema)
{
    return fs::path(UNDERMARK_TEST_DATA) / ("schema_" + std::to_string(schema) + ".sqlite");
}

// Writes what the fixture of today's schema is to hold, before a step is added to it:
//     UNDERMARK_WRITE_FIXTURE=FILE engine_tests logbook_history_test
inline Result<void> writeFixture(const fs::path& file)
{
    {
        auto book = Logbook::open(file, OpenMode::createIfMissing);
        if (!book)
            return fail(book.error());
        const auto car = book->addVehicle(fullVehicle(), kNow);
        if (!car)
            return fail(car.error());
        const std::vector<Fill> fills{fullFill(), leastFill()};
        const std::vector<Trip> trips{fullTrip(), leastTrip()};
        const std::vector<Proof> proofs{fullProof(), leastProof()};
        const auto calibrated = book->add(*car, fullCalibration(), kNow);
        const auto filled = book->addAll<Fill>(*car, fills, kNow);
        const auto driven = book->addAll<Trip>(*car, trips, kNow);
        const auto proved = book->addAll<Proof>(*car, proofs, kNow);
        if (!calibrated || !filled || !driven || !proved || !addSchema2(*book, *car)
            || !addSchema3(*book, *car))
            return failInput(Sentence::just("the fixture cannot be written"));
    }
    makeSingleFile(file);
    return {};
}

} // namespace undermark::test
