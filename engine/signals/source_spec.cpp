// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/source_spec.h"

#include "engine/signals/can_frame.h"
#include "engine/signals/text_fields.h"

#include <algorithm>
#include <array>

namespace undermark {

namespace {

struct KindWord {
    std::string_view word;
    SourceKind kind;
};
constexpr std::array<KindWord, 6> kKinds{{{"can", SourceKind::can},
                                          {"slcan", SourceKind::slcan},
                                          {"candump", SourceKind::candump},
                                          {"asc", SourceKind::asc},
                                          {"nmea", SourceKind::nmea},
                                          {"lines", SourceKind::lines}}};

tl::unexpected<Error> failSource(const char* detail, const char* expected, std::string_view found)
{
    return failInput(Sentence::just(std::string(detail)), Sentence::just(std::string(expected)),
                     std::string(found));
}

bool hasSpeed(SourceKind kind)
{
    return kind == SourceKind::slcan || kind == SourceKind::nmea || kind == SourceKind::lines;
}

// "/dev/ttyACM0@500": what stands behind the last @ is a speed, where it is a number.
Result<void> takePlace(std::string_view text, SourceSpec& spec)
{
    const std::size_t at = text.rfind('@');
    if (hasSpeed(spec.kind) && at != std::string_view::npos) {
        if (const auto speed = wholeIn(text.substr(at + 1), 10)) {
            if (*speed == 0 || *speed > 4000000
                || (spec.kind == SourceKind::slcan && !slcanOpening(static_cast<int>(*speed))))
                return failSource("no speed that this source can have",
                                  "10, 20, 50, 100, 125, 250, 500, 800 or 1000 kbit/s of a bus, "
                                  "1 to 4000000 baud of a line", text.substr(at + 1));
            spec.speed = static_cast<int>(*speed);
            text = text.substr(0, at);
        }
    }
    if (text.empty())
        return failSource("the source has no place", "a file, device or interface after the colon", {});
    spec.place = text;
    return {};
}

Result<void> takeWord(std::string_view word, SourceSpec& spec)
{
    if (word == "obd") {
        spec.language = FrameLanguage::obd;
    } else if (word == "j1939") {
        spec.language = FrameLanguage::j1939;
    } else if (word.starts_with("dbc=") && word.size() > 4) {
        spec.language = FrameLanguage::dbc;
        spec.dbcFile = word.substr(4);
    } else {
        return failSource("what the frames mean is not understood", "obd, j1939 or dbc=FILE", word);
    }
    return {};
}

} // namespace

Result<SourceSpec> parseSourceSpec(std::string_view text)
{
    SourceSpec spec;
    const std::size_t colon = text.find(':');
    const auto kind = std::ranges::find(kKinds, text.substr(0, colon), &KindWord::word);
    const bool named = colon != std::string_view::npos && kind != kKinds.end();
    if (named) {
        spec.kind = kind->kind;
        text.remove_prefix(colon + 1);
    } else if (colon != std::string_view::npos && text.find('/') > colon) {
        return failSource("no such kind of source", "can, slcan, candump, asc, nmea or lines before the colon",
                          text.substr(0, colon));
    }
    std::string_view place = text;
    if (spec.carriesFrames()) {
        std::string_view word = text;
        place = nextField(word, ',');
        if (text.size() > place.size()) {
            if (const auto taken = takeWord(word, spec); !taken)
                return fail(taken.error());
        }
    }
    if (const auto taken = takePlace(place, spec); !taken)
        return fail(taken.error());
    return spec;
}

} // namespace undermark
