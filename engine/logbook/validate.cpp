// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/validate.h"

#include "engine/base/plain_text.h"
#include "engine/logbook/record_tables.h"

#include <algorithm>
#include <sstream>

namespace undermark::logbook {

namespace {

constexpr std::size_t kLongestText = 200;
constexpr std::size_t kLongestDocument = 1 << 20;
constexpr std::size_t kMostPoints = 10'000;

Result<void> refuseUnless(bool holds, const char* field, Sentence expected, std::string found)
{
    if (holds)
        return {};
    return fail(ErrorCode::badInput, undermark::Sentence::of("impossible value"), {.column = field},
                std::move(expected), std::move(found));
}

// `found` leaves out what could not be shown on one line.
Result<void> plainText(const char* field, const std::string& text, bool mayBeEmpty)
{
    const bool readable = isPlainUtf8(text) && text.size() <= kLongestText;
    return refuseUnless(
        readable && (mayBeEmpty || !text.empty()), field,
        Sentence::of("text of 1 to 200 bytes of UTF-8 without control characters"),
        readable ? text : std::to_string(text.size()) + " bytes");
}

// Of a number.
std::string words(const Cell& cell)
{
    std::ostringstream text;
    if (const auto* whole = std::get_if<std::int64_t>(&cell))
        text << *whole;
    else
        text << std::get<double>(cell);
    return text.str();
}

bool isCurrency(const std::string& text)
{
    return text.size() == 3
           && std::ranges::all_of(text, [](char c) { return c >= 'A' && c <= 'Z'; });
}

bool isHash(const std::string& text)
{
    return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

// `found` leaves a whole file out.
Result<void> possibleText(const ColumnShape& column, const std::string& text)
{
    switch (column.text) {
    case TextRule::word:
        return {};
    case TextRule::filled:
    case TextRule::anyText:
        return plainText(column.said, text, column.text == TextRule::anyText);
    case TextRule::currency:
        return refuseUnless(isCurrency(text), column.said,
                            Sentence::of("three capital letters, such as EUR"), printable(text));
    case TextRule::hash:
        return refuseUnless(isHash(text), column.said,
                            Sentence::of("64 hexadecimal digits in lower case"), printable(text));
    case TextRule::document:
    case TextRule::longText:
        return refuseUnless(!text.empty() && text.size() <= kLongestDocument
                                && text.find('\0') == std::string::npos,
                            column.said, Sentence::of("text of 1 to 1048576 bytes"),
                            std::to_string(text.size()) + " bytes");
    }
    return {};
}

Result<void> possible(const ColumnShape& column, const Cell& cell)
{
    if (const auto* text = std::get_if<std::string>(&cell))
        return possibleText(column, *text);
    if (!column.admits(cell))
        return refuseUnless(false, column.said, column.range->words, words(cell));
    return {};
}

// Each column for itself.
template <class T>
Result<void> columnsPossible(const T& record)
{
    for (const Column<T>& column : tableOf<T>().fields)
        if (auto checked = possible(column, column.field.get(record)); !checked)
            return checked;
    return {};
}

template <class T>
Result<void> partsPossible(const T& record)
{
    for (const PartOf<T>& part : partsOf(record))
        if (auto checked = columnsPossible(part); !checked)
            return checked;
    return {};
}

} // namespace

Result<void> validate(const Vehicle& vehicle)
{
    return partsPossible(vehicle).and_then([&] { return columnsPossible(vehicle); });
}

Result<void> validate(const Mode& mode) { return columnsPossible(mode); }

// Of a record whose parts come one after another.
template <class T>
static Result<void> validateList(const T& record, std::size_t size)
{
    return refuseUnless(size <= kMostPoints, "points", Sentence::of("at most 10000"),
                        std::to_string(size))
        .and_then([&] { return partsPossible(record); })
        .and_then([&] { return columnsPossible(record); });
}

Result<void> validate(const Calibration& calibration)
{
    return validateList(calibration, calibration.points.size());
}

Result<void> validate(const VerificationRecord& verification)
{
    return validateList(verification, verification.levels.size());
}

Result<void> validate(const ExtraTank& tank) { return columnsPossible(tank); }
Result<void> validate(const LiveSource& source) { return columnsPossible(source); }
Result<void> validate(const OwnPump& pump) { return columnsPossible(pump); }
Result<void> validate(const Photo& photo) { return columnsPossible(photo); }
Result<void> validate(const HandOverRecord& handOver) { return columnsPossible(handOver); }

Result<void> validate(const Fill& fill) { return columnsPossible(fill); }

Result<void> validate(const Trip& trip)
{
    return columnsPossible(trip).and_then([&] {
        return refuseUnless(trip.distance > Distance() || (trip.idle && trip.idle->count() > 0), "km",
                            Sentence::of("some distance, or some idling"), "0");
    });
}

Result<void> validate(const Proof& proof)
{
    const auto stated = [](bool is, const char* field, Sentence expected) {
        return refuseUnless(is, field, std::move(expected), "none");
    };
    const auto possible = columnsPossible(proof);
    if (!possible)
        return possible;
    switch (proof.kind) {
    case ProofKind::stalled:
    case ProofKind::pastZero:
        return stated(proof.distance.has_value(), "km", Sentence::of("km past the zero mark"));
    case ProofKind::base:
        return stated(proof.volume.has_value(), "litres", Sentence::of("the litres poured in"));
    case ProofKind::drained:
        return stated(proof.volume || proof.leftBehind, "litres",
                     Sentence::of("the litres pumped out, or those found left behind"));
    }
    return {};
}

Result<void> validate(const LevelRecord& level)
{
    return columnsPossible(level)
        .and_then([&] {
            return refuseUnless(level.signal || level.usable || level.added, "signal",
                                Sentence::of("a reading, or litres"), "none");
        })
        .and_then([&] {
            return refuseUnless(level.signal || !(level.signal2 || level.signalSd), "signal",
                                Sentence::of("the first reading, too"), "none");
        });
}

Result<void> validateTime(Instant time)
{
    const auto seconds = time.time_since_epoch().count();
    return refuseUnless(kPossibleTime.holds(double(seconds)), "time of recording",
                        kPossibleTime.words, std::to_string(seconds));
}

} // namespace undermark::logbook
