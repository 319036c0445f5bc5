// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/dbc.h"

#include "engine/signals/dbc_tokens.h"
#include "engine/signals/text_fields.h"

#include <algorithm>

namespace undermark {

// One pass over the tokens: a message's signals follow it, value types come later.
class DbcParser {
public:
    DbcParser(std::string_view text, const std::string& file) : m_tokens(text) { m_dbc.m_file = file; }

    Result<Dbc> run()
    {
        for (DbcToken token = m_tokens.next(); token.kind != DbcToken::end; token = m_tokens.next()) {
            bool sound = true;
            if (token.leads && token.is("BO_"))
                sound = message();
            else if (token.leads && token.is("SG_"))
                sound = oneSignal();
            else if (token.leads && token.is("SIG_VALTYPE_"))
                sound = valueType();
            else if (token.kind == DbcToken::unended)
                sound = expect("a text that ends");
            if (!sound)
                return fail(ErrorCode::badInput, Sentence::just("cannot read this line of the DBC file"),
                            {m_dbc.m_file, m_tokens.line()}, Sentence::just(m_expected),
                            std::string(m_tokens.last()));
        }
        giveSelectors();
        return std::move(m_dbc);
    }

private:
    bool expect(const char* what)
    {
        m_expected = what;
        return false;
    }
    std::optional<std::uint32_t> readDbcId()
    {
        // Up to 4294967295: ten digits.
        const DbcToken token = m_tokens.next();
        std::uint64_t id = 0;
        for (const char c : token.text) {
            if (c < '0' || c > '9' || token.text.size() > 10)
                return std::nullopt;
            id = 10 * id + static_cast<std::uint64_t>(c - '0');
        }
        return token.kind == DbcToken::word && id <= 0xFFFFFFFFu ? std::optional(static_cast<std::uint32_t>(id))
                                                                 : std::nullopt;
    }
    bool number(double& out)
    {
        std::string_view text = m_tokens.next().text;
        if (text.starts_with('+'))
            text.remove_prefix(1);
        const auto value = numberIn(text);
        out = value.value_or(0.0);
        return value.has_value();
    }
    bool mark(std::string_view what) { return m_tokens.next().is(what); }

    // Not used: a sender beyond its limits says so by its value.
    bool limits()
    {
        constexpr int kMostTokens = 4; // with blanks around the bar
        for (int i = 0; i < kMostTokens; ++i) {
            if (mark("]"))
                return true;
        }
        return false;
    }

    bool message();
    bool oneSignal();
    bool multiplexing(std::string_view word, Dbc::Entry& entry);
    bool valueType();
    void giveSelectors();

    struct Multiplexed {
        std::size_t entry, message;
        std::uint64_t value;
    };
    struct Message {
        std::string name;
        FrameMatch match;
        std::uint32_t number = 0; // as written
        std::optional<BitField> selector = {};
    };
    DbcTokens m_tokens;
    Dbc m_dbc;
    std::vector<Message> m_messages;
    std::vector<Multiplexed> m_multiplexed;
    std::vector<std::size_t> m_messageOf; // of each entry
    const char* m_expected = "";
};

namespace {

constexpr std::uint32_t kExtendedMark = 0x80000000u;
constexpr std::uint32_t kNoFrames = 0xC0000000u; // "independent signals" belong to no frame
constexpr std::uint8_t kNullAddress = 254;

FrameMatch matchOf(std::uint32_t number)
{
    const std::uint32_t id = number & ~kExtendedMark;
    if ((number & kExtendedMark) != 0 && (id & 0xFFu) == kNullAddress)
        return {.id = groupOf(id), .extended = true, .isGroup = true};
    return {.id = id, .extended = (number & kExtendedMark) != 0};
}

} // namespace

// BO_ 2566844926 Name: 8 Sender
bool DbcParser::message()
{
    const auto number = readDbcId();
    const bool sound = number
        && (*number == kNoFrames
            || (*number & ~kExtendedMark)
                <= ((*number & kExtendedMark) != 0 ? kMostExtendedId : kMostStandardId));
    if (!sound)
        return expect("the id of a message");
    const DbcToken name = m_tokens.next();
    if (name.kind != DbcToken::word || !mark(":"))
        return expect("NAME: after the id");
    m_messages.push_back({std::string(name.text), matchOf(*number), *number, {}});
    return true;
}

// m3 value 3 of the message's selector; M the selector; m3M both.
bool DbcParser::multiplexing(std::string_view word, Dbc::Entry& entry)
{
    Message& message = m_messages.back();
    entry.nested = word.size() > 1 && word.ends_with('M');
    const std::string_view digits = word.substr(1, word.size() - 1 - (entry.nested ? 1 : 0));
    if (word == "M") {
        message.selector = entry.signal.bits;
        return true;
    }
    const auto value = wholeIn(digits, 10);
    if (!word.starts_with('m') || !value)
        return false;
    m_multiplexed.push_back({m_dbc.m_entries.size(), m_messages.size() - 1, *value});
    return true;
}

// SG_ Name [M|m0] : 8|16@1+ (0.1,0) [0|100] "L" Receiver
bool DbcParser::oneSignal()
{
    const DbcToken name = m_tokens.next();
    if (m_messages.empty() || name.kind != DbcToken::word)
        return expect("a signal's name, within a message");
    DbcToken token = m_tokens.next();
    std::string_view multiplexed;
    if (token.kind == DbcToken::word) {
        multiplexed = token.text;
        token = m_tokens.next();
    }
    const auto bits = token.is(":") ? BitField::parse(m_tokens.next().text) : std::nullopt;
    if (!bits)
        return expect("M or mN where it is multiplexed, then : START|LENGTH@ORDER and SIGN");
    Dbc::Entry entry{m_messages.back().name + '.' + std::string(name.text), {}, {}, false};
    entry.signal.match = m_messages.back().match;
    entry.signal.bits = *bits;
    if (!(mark("(") && number(entry.signal.factor) && mark(",") && number(entry.signal.offset) && mark(")")))
        return expect("(FACTOR,OFFSET)");
    if (!mark("[") || !limits())
        return expect("[LEAST|MOST]");
    const DbcToken unit = m_tokens.next();
    if (unit.kind != DbcToken::quoted)
        return expect("a unit in quotes");
    entry.unit = unit.text;
    if (!multiplexed.empty() && !multiplexing(multiplexed, entry))
        return expect("M or mN where it is multiplexed");
    m_dbc.m_entries.push_back(std::move(entry));
    m_messageOf.push_back(m_messages.size() - 1);
    return true;
}

// SIG_VALTYPE_ 496 Name : 1;   In the list of section names (NS_) it stands alone.
bool DbcParser::valueType()
{
    const DbcTokens before = m_tokens;
    const auto number = readDbcId();
    if (!number) {
        m_tokens = before;
        return true;
    }
    const DbcToken name = m_tokens.next();
    DbcToken kind = m_tokens.next();
    if (kind.is(":"))
        kind = m_tokens.next();
    for (std::size_t i = 0; i < m_dbc.m_entries.size(); ++i) {
        const Message& message = m_messages[m_messageOf[i]];
        FrameSignal& signal = m_dbc.m_entries[i].signal;
        const bool meant = message.number == *number
            && m_dbc.m_entries[i].name.substr(message.name.size() + 1) == name.text;
        if (!meant || kind.is("0"))
            continue;
        const bool wide = kind.is("2");
        if ((!wide && !kind.is("1")) || signal.bits.length != (wide ? 64 : 32))
            return expect("1 for a signal of 32 bits, 2 for one of 64, 0 for neither");
        signal.kind = wide ? RawKind::float64 : RawKind::float32;
    }
    return true;
}

void DbcParser::giveSelectors()
{
    for (const Multiplexed& one : m_multiplexed) {
        Dbc::Entry& entry = m_dbc.m_entries[one.entry];
        if (const auto& bits = m_messages[one.message].selector)
            entry.signal.selector = FrameSignal::Selector{*bits, one.value};
        else
            entry.nested = true; // its selector is another multiplexed one, or missing
    }
}

Result<Dbc> Dbc::parse(std::string_view text, const std::string& file)
{
    return DbcParser(text, file).run();
}

Result<FrameSignal> Dbc::signal(std::string_view name) const
{
    const auto found = std::ranges::find(m_entries, name, &Entry::name);
    if (found == m_entries.end())
        return fail(ErrorCode::badInput, Sentence::just("the DBC file has no such signal"), {m_file},
                    Sentence::just("Message.Signal as in the file"), std::string(name));
    if (found->nested)
        return fail(ErrorCode::badInput,
                    Sentence::just("this signal is multiplexed on more than one level"), {m_file},
                    Sentence::just("one selector (M) in its message"), std::string(name));
    return found->signal;
}

} // namespace undermark
