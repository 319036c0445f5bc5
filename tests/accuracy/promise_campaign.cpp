// SPDX-License-Identifier: GPL-3.0-or-later
//
// promise_campaign [CARS] [SEED]: do the promises hold on cars nobody made the engine for?
// Owners (promise/owner.h) calibrate their vehicles with 2, 3, 5 or 9 points, drive, fill
// and keep a log through Car. Before the first fill and after 1, 2, 3, 8 and 20 of them, each
// full and noted truly, they ask how far: from full, on the way by the odometer, by a
// reading at rest and moving, to zero and to dry, and past zero. Then they hitch a trailer
// and ask again. The same world, driven on until it is dry, says what was true.
//
// A car is in a row once; a row of settled cars leaves out those with a roof box or another
// driver within the last five tanks. Prints tables in markdown, and what an answer costs.
#include "tests/accuracy/promise/questions.h"
#include "tests/accuracy/promise/promise_table.h"

#include <cstdio>
#include <cstdlib>

using namespace undermark;
using namespace undermark::test;

namespace {

constexpr std::array kPoints{2, 3, 5, 9};
constexpr std::array kFills{0, 1, 2, 3, 8, 20};
constexpr int kTrailerTanks = 4;

struct Campaign {
    PromiseTable settled{"settled cars"}, changed{"a roof box or another driver lately"},
        points{"by points, eight fills"}, unfilled{"by points, no fill yet"}, trailer{"with a trailer since"},
        kinds{"by kind, to dry from full"}, logs{"by log, settled cars, to dry from full"};
    Cost cost;

    void drive(int number, std::uint64_t seed, const std::filesystem::path& folder)
    {
        const auto kind = number % 2 ? Kind::car : Kind(1 + number / 2 % 4);
        const std::size_t withPoints = std::size_t(number / 8) % kPoints.size();
        Owner owner(kind, kPoints[withPoints], folder, seed);
        Random random(seed ^ 0x9e3779b97f4a7c15ULL);
        for (const int fills : kFills) {
            while (owner.fills() < fills) {
                if (owner.fills() == 0 || owner.fills() == fills - 1)
                    owner.toNextFullFill();
                else
                    owner.toNextFill();
            }
            count(owner, fills, withPoints, askAll(owner, owner.ahead(between(random, 0.15, 0.85)), cost));
        }
        if (kind != Kind::kart && owner.isSettled())
            hitch(owner, between(random, 1.15, 1.5), random);
    }

    void print() const
    {
        for (const PromiseTable* table : {&settled, &changed, &points, &unfilled, &trailer, &kinds, &logs})
            table->print();
        std::printf("\n%ld questions of %.0f us of processor time each; %ld times learnt in %.2f ms each\n", cost.asked,
                    1e6 * cost.askedSeconds / double(cost.asked), cost.learnt,
                    1e3 * cost.learntSeconds / double(cost.learnt));
    }

private:
    static void put(PromiseTable& table, int place, const std::string& row, const Answer& answer)
    {
        if (answer.promised)
            table.add(place, row, *answer.promised, answer.trueKm);
        else
            table.addRefused(place, row);
    }
    // The questions that stand for the others in the smaller tables.
    static bool isShort(const Answer& answer)
    {
        return answer.asked == Asked::fullToDry || answer.asked == Asked::odometerToZero;
    }
    void count(const Owner& owner, int fills, std::size_t withPoints, const std::vector<Answer>& answers)
    {
        const std::string after = fills == 0 ? ", no fill" : ", " + std::to_string(fills) + (fills == 1 ? " fill" : " fills");
        for (const Answer& answer : answers) {
            const int place = 100 * int(answer.asked);
            const std::string what = kAsked[std::size_t(answer.asked)];
            const bool settledNow = owner.isSettled();
            if (settledNow || isShort(answer))
                put(settledNow ? settled : changed, place + fills, what + after, answer);
            if (settledNow && answer.asked >= Asked::restToZero
                && answer.asked <= Asked::past && (fills == 0 || fills == 8))
                put(fills == 8 ? points : unfilled, place + kPoints[withPoints],
                    what + ", " + std::to_string(kPoints[withPoints]) + " points", answer);
            if (answer.asked == Asked::restToZero && settledNow && fills == 20)
                put(logs, owner.notesReadings() ? 400 : 401,
                    what + (owner.notesReadings() ? ", noted at the pump too" : ", not noted else"), answer);
            if (answer.asked != Asked::fullToDry)
                continue;
            put(kinds, 100 * int(owner.machine().kind) + fills,
                kKinds[std::size_t(owner.machine().kind)] + after, answer);
            if (settledNow && fills > 0)
                countByLog(owner, fills, after, answer);
        }
    }
    void countByLog(const Owner& owner, int fills, const std::string& after, const Answer& answer)
    {
        put(logs, (owner.isHonest() ? 0 : 100) + fills, (owner.isHonest() ? "honest" : "with slips") + after, answer);
        put(logs, (owner.logsTrips() ? 200 : 300) + fills, (owner.logsTrips() ? "trips by mode" : "no trips") + after,
            answer);
    }
    void hitch(Owner& owner, double factor, Random& random)
    {
        owner.hitch(factor);
        for (int tanks = 0; tanks <= kTrailerTanks; ++tanks) {
            if (tanks > 0)
                owner.toNextFullFill();
            for (const Answer& answer : askAll(owner, owner.ahead(between(random, 0.15, 0.85)), cost))
                if (isShort(answer))
                    put(trailer, 100 * int(answer.asked) + tanks,
                        std::string(kAsked[std::size_t(answer.asked)]) + ", " + std::to_string(tanks) + (tanks == 1 ? " tank" : " tanks"), answer);
        }
    }
};

} // namespace

int main(int argc, char** argv)
{
    const int cars = argc > 1 ? std::atoi(argv[1]) : 200;
    const auto seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1ULL;
    std::string name = (std::filesystem::temp_directory_path() / "promise-XXXXXX").string();
    const std::filesystem::path folder = mkdtemp(name.data());
    Campaign campaign;
    for (int i = 0; i < cars; ++i)
        campaign.drive(i, seed * 1000003ULL + std::uint64_t(i), folder);
    std::filesystem::remove_all(folder);
    std::printf("%d cars, seed %llu\n", cars, static_cast<unsigned long long>(seed));
    campaign.print();
}
