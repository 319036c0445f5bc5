// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/car_file.h"

#include "engine/outlook/sender_health.h"

namespace undermark {

namespace {

std::vector<Sentence> whatIsDue(const CarFile& file, bool passed, Instant now)
{
    if (!file.calibrated)
        return {Sentence::of("calibrate it: there is no calibration yet")};
    std::vector<Sentence> due;
    if (now - *file.calibrated > kCalibrationOld)
        due.push_back(Sentence::of("calibrate it again: the calibration is older than two years"));
    if (!file.verified)
        due.push_back(Sentence::of("verify the calibration: take some litres out and read again"));
    else if (!passed)
        due.push_back(Sentence::of("look for the cause: the last verification was not passed"));
    if (!file.handedOver || *file.handedOver < *file.calibrated)
        due.push_back(Sentence::of("hand it over: this was not done since the calibration"));
    return due;
}

// ASCII and, in UTF-8 two bytes that begin with C3, Latin-1.
std::string inSmallLetters(std::string text)
{
    bool latin = false;
    for (char& c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if ((byte >= 'A' && byte <= 'Z') || (latin && byte >= 0x80 && byte <= 0x9E && byte != 0x97))
            c = static_cast<char>(byte + 0x20);
        latin = byte == 0xC3;
    }
    return text;
}

} // namespace

CarFile carFileOf(const VehicleLog& log, Instant now)
{
    CarFile file{log.vehicle, {}, {}, {}, {}};
    bool passed = false;
    if (log.calibration)
        file.calibrated = log.calibration->value.time;
    if (const VerificationRecord* tried = log.latestVerification()) {
        file.verified = tried->time;
        passed = tried->passed;
    }
    if (!log.handOvers.empty())
        file.handedOver = log.handOvers.back().value.time;
    file.due = whatIsDue(file, passed, now);
    return file;
}

bool isCalibratedBefore(const CarFile& file, int months, Instant now)
{
    namespace chrono = std::chrono;
    const auto dayOf = [](Instant time) { return chrono::floor<chrono::days>(time); };
    chrono::year_month_day then = chrono::year_month_day(dayOf(now)) - chrono::months(months);
    if (!then.ok())   // the 31st of a shorter month
        then = then.year() / then.month() / chrono::last;
    return file.calibrated && dayOf(*file.calibrated) <= chrono::sys_days(then);
}

bool isWanted(const CarFile& file, const CarWish& wish, Instant now)
{
    const std::string name = inSmallLetters(file.vehicle.value.name);
    return name.find(inSmallLetters(wish.name)) != std::string::npos && (!wish.due || !file.due.empty())
           && (!wish.months || isCalibratedBefore(file, *wish.months, now));
}

} // namespace undermark
