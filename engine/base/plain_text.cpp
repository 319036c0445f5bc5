// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/plain_text.h"

#include <boost/locale/utf.hpp>

namespace undermark {

namespace {

using Utf8 = boost::locale::utf::utf_traits<char>;

bool isPlain(boost::locale::utf::code_point c)
{
    const bool isControl = c < 0x20 || (c >= 0x7F && c < 0xA0);
    return boost::locale::utf::is_valid_codepoint(c) && !isControl;
}

} // namespace

bool isPlainUtf8(std::string_view text)
{
    for (auto at = text.begin(); at != text.end();) {
        if (!isPlain(Utf8::decode(at, text.end())))
            return false;
    }
    return true;
}

std::string printable(std::string_view text)
{
    if (isPlainUtf8(text))
        return std::string(text);
    std::string shown;
    for (auto at = text.begin(); at != text.end();) {
        auto next = at;
        const auto c = Utf8::decode(next, text.end());
        if (isPlain(c) || c == '\n') {
            shown.append(at, next);
            at = next;
            continue;
        }
        shown += '?';
        at = boost::locale::utf::is_valid_codepoint(c) ? next : at + 1;
    }
    return shown;
}

} // namespace undermark
