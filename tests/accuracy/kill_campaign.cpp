// SPDX-License-Identifier: GPL-3.0-or-later
//
// kill_campaign [KILLS] [SEED]: kills that many writers of one logbook at random
// instants (1,000 if not said) and counts what was acknowledged and is missing or
// doubled afterwards. Exit code 1 if anything is.
#include "tests/support/killed_writer.h"

#include <cstdio>
#include <cstdlib>

using namespace undermark;

int main(int argc, char** argv)
{
    const int kills = argc > 1 ? std::atoi(argv[1]) : 1000;
    const unsigned seed = argc > 2 ? unsigned(std::atol(argv[2])) : 20'261'125;
    char folder[] = "/tmp/undermark-kills-XXXXXX";
    if (!mkdtemp(folder))
        return 1;
    const auto file = std::filesystem::path(folder) / "log.sqlite";
    EntryId car;
    {
        auto book = Logbook::open(file, OpenMode::createIfMissing);
        if (!book)
            return std::fprintf(stderr, "%s\n", describe(book.error()).c_str()), 1;
        car = *book->addVehicle(test::fullVehicle(), test::kNow);
    }
    const test::KillReport report = test::killWriters(file, car, kills, seed);
    std::printf("%d writers killed, %zu fills acknowledged: %zu missing, %zu doubled, %d times unsound\n",
                report.kills, report.acknowledged, report.missing, report.doubled, report.unsound);
    std::filesystem::remove_all(folder);
    return report.missing || report.doubled || report.unsound || report.kills != kills;
}
