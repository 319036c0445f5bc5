// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/terminal_words.h"

#include "engine/base/plain_text.h"

#include <algorithm>
#include <array>

namespace undermark {

namespace {

enum class Figures { withUnit, bare };

struct Rewording {
    std::string_view sentence;   // the engine's
    std::string_view terminal;   // its parts by the same numbers
    Figures figures = Figures::withUnit;
};

constexpr std::array kRewordings{
    Rewording{"the level is not known: the log holds no full fill yet",
              "the level is not known: the log holds no full fill, give a reading (--signal) or "
              "the usable litres (--litres)"},
    Rewording{"there is no logbook",
              "there is no logbook (vehicle add makes one, demo shows one with an invented car)"},
    Rewording{"a reading says nothing before the sender is calibrated",
              "a reading says nothing before the sender is calibrated (calibrate POINTS.csv --save)"},
    Rewording{"the level cannot be followed before the sender is calibrated",
              "the level cannot be followed before the sender is calibrated: it needs --calibration, "
              "--shape, or a calibrated car in the logbook (calibrate POINTS.csv --save)"},
    Rewording{"the fuel as given", "litres as given"},
    Rewording{"at most %1 usable", "at most %1 usable litres", Figures::bare},
    Rewording{"at least %1 usable", "at least %1 usable litres", Figures::bare},
    Rewording{"both readings", "--signal and --signal2"},
    Rewording{"one reading", "--signal alone"},
    Rewording{"no calibration is stored: readings cannot be used",
              "no calibration is stored: readings cannot be used (calibrate --save)"},
    Rewording{"%1 of %2 full fills since the calibration note the reading before pumping: note it "
              "and the sender is watched",
              "%1 of %2 full fills since the calibration note the reading before pumping: note it "
              "(fill add --signal) and the sender is watched"},
    Rewording{"over %1 full fills reading and fuel pumped come to %2 more than the full tank of "
              "the calibration: %3",
              "over %1 full fills reading and litres pumped come to %2 more than the full tank of "
              "the calibration: %3"},
    Rewording{"over %1 full fills reading and fuel pumped come to %2 less than the full tank of "
              "the calibration: %3",
              "over %1 full fills reading and litres pumped come to %2 less than the full tank of "
              "the calibration: %3"},
    Rewording{"The signal turned back while the level went on one way, at and above %1. The float "
              "may be fouling the tank or a baffle, or a row was noted wrongly: repeat these "
              "readings.",
              "The signal turned back while the litres went on one way, at and above %1. The float "
              "may be fouling the tank or a baffle, or a row was noted wrongly: repeat these "
              "readings."},
    Rewording{"%1 where about %2 were expected: please check fuel and distance",
              "%1 where about %2 were expected: please check litres and distance"},
    Rewording{"the point at %1", "km %1", Figures::bare},
    Rewording{"from %1 to below %2", "from %1 to below %2 km", Figures::bare},
    Rewording{"the track has a gap of %1 after %2: it is not bridged and adds no distance",
              "the track has a gap of %1 km at km %2: it is not bridged and adds no distance",
              Figures::bare},
    Rewording{"%1; undermark-cli can take out what is readable, or bring a backup back",
              "%1; check --salvage NEWFILE takes out what can be read, restore FILE brings a backup "
              "back"},
    Rewording{"a shorter way", "--paper a4, or a shorter way"},
    Rewording{"one %1 element, or the name of one", "one %1 element, or --track NAME"},
};

void takeUnit(Part& part)
{
    if (const auto* volume = std::get_if<Figure<Volume>>(&part))
        part = Figure<double>{volume->value.litres(), volume->digits, {}};
    else if (const auto* distance = std::get_if<Figure<Distance>>(&part))
        part = Figure<double>{distance->value.km(), distance->digits, {}};
}

Sentence reworded(Sentence sentence)
{
    const auto own = std::ranges::find(kRewordings, sentence.pattern, &Rewording::sentence);
    if (own != kRewordings.end()) {
        sentence.pattern = own->terminal;
        if (own->figures == Figures::bare)
            std::ranges::for_each(sentence.parts, takeUnit);
    }
    for (Part& part : sentence.parts)
        if (auto* list = std::get_if<std::vector<Sentence>>(&part))
            std::ranges::transform(*list, list->begin(), reworded);
    std::ranges::transform(sentence.next, sentence.next.begin(), reworded);
    return sentence;
}

} // namespace

std::string said(const Sentence& sentence)
{
    return printable(english(reworded(sentence)));
}

std::string said(const Error& error)
{
    return said(sentenceOf(error));
}

} // namespace undermark
