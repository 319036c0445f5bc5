// SPDX-License-Identifier: GPL-3.0-or-later
//
// SIGKILL at random instants of a real process that writes with real syncs: what
// was acknowledged must be there, once. For a test and for a campaign.
#pragma once

#include "tests/support/logbook_samples.h"

#include <csignal>
#include <map>
#include <random>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

namespace undermark::test {

struct KillReport {
    int kills = 0;
    int unsound = 0;                // reopening or the integrity check failed
    std::size_t acknowledged = 0;   // fills, over all kills
    std::size_t missing = 0;        // of those, not in force afterwards
    std::size_t doubled = 0;        // fills that are there twice
};

namespace detail {

constexpr std::size_t kUuidLength = 36;

// The child: adds fills for ever, each of its own time, and tells the id of each
// that was acknowledged.
[[noreturn]] inline void keepWriting(const std::filesystem::path& file, const EntryId& car, int pipe,
                                     long long first)
{
    auto book = Logbook::open(file, OpenMode::readWrite);
    if (!book)
        _exit(3);
    for (long long i = first;; ++i) {
        const auto id = book->add(car, leastFill(at(i), 1.0 + static_cast<double>(i % 50)), kNow);
        if (!id || ::write(pipe, id->uuid.data(), kUuidLength) != kUuidLength)
            _exit(4);
    }
}

// All ids that a child told before it was killed `microseconds` after the first.
inline std::vector<std::string> killAfter(const std::filesystem::path& file, const EntryId& car,
                                          long long first, int microseconds)
{
    int ends[2];
    if (::pipe(ends) != 0)
        return {};
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        keepWriting(file, car, ends[1], first);
    }
    ::close(ends[1]);
    std::string told(kUuidLength, ' ');
    if (::read(ends[0], told.data(), kUuidLength) != ssize_t(kUuidLength))
        told.clear();
    ::usleep(static_cast<useconds_t>(microseconds));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    char buffer[4096];
    for (ssize_t got = 0; (got = ::read(ends[0], buffer, sizeof buffer)) > 0;)
        told.append(buffer, static_cast<std::size_t>(got));
    ::close(ends[0]);
    if (!WIFSIGNALED(status) || WTERMSIG(status) != SIGKILL)
        return {};
    std::vector<std::string> ids;
    for (std::size_t i = 0; i + kUuidLength <= told.size(); i += kUuidLength)
        ids.push_back(told.substr(i, kUuidLength));
    return ids;
}

} // namespace detail

// Kills `kills` writers of one logbook, each within `longest` microseconds of its
// first acknowledged fill, and looks at the file after each.
inline KillReport killWriters(const std::filesystem::path& file, const EntryId& car, int kills,
                              unsigned seed, int longest = 30'000)
{
    KillReport report;
    std::mt19937 random(seed);
    std::uniform_int_distribution<int> delay(0, longest);
    std::set<std::string> acknowledged;
    for (int kill = 0; kill < kills; ++kill) {
        const auto told = detail::killAfter(file, car, 1'000'000LL * (kill + 1), delay(random));
        report.kills += !told.empty();
        acknowledged.insert(told.begin(), told.end());
        report.acknowledged += told.size();

        const auto book = Logbook::open(file, OpenMode::readWrite);
        const auto fills =
            book && book->checkIntegrity() ? book->entries<Fill>(car) : fail(Error{ErrorCode::damaged});
        if (!fills) {
            ++report.unsound;
            continue;
        }
        std::map<Instant, int> byTime;
        std::set<std::string> present;
        for (const auto& fill : *fills) {
            present.insert(fill.id.uuid);
            report.doubled += ++byTime[fill.value.time] == 2;
        }
        for (const std::string& id : acknowledged)
            report.missing += !present.contains(id);
    }
    return report;
}

} // namespace undermark::test
