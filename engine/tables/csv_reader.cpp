// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/csv_reader.h"

// The reader thread would help only files above 32 MiB and would make every
// small program start a thread: read in place.
#define CSV_IO_NO_THREAD
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wstringop-truncation"
#include <libfccp/csv.h>
#pragma GCC diagnostic pop

#include <algorithm>
#include <charconv>
#include <cmath>

namespace undermark {

namespace {

using Trim = io::trim_chars<' ', '\t'>;
using Quote = io::double_quote_escape<',', '"'>;

constexpr int kUnknown = -1;
constexpr std::uintmax_t kMostBytes = 256u << 20;

bool isBlank(const char* line)
{
    while (*line == ' ' || *line == '\t')
        ++line;
    return *line == '\0';
}

// What a person most likely meant by text that is not a number.
Sentence whyNotANumber(std::string_view text)
{
    if (text.empty())
        return Sentence::of("the number is missing");
    if (text.find(',') != std::string_view::npos)
        return Sentence::of("a comma cannot be part of a number, decimals take a point");
    double value = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (problem == std::errc() && end != text.data())
        return Sentence::of("only the number belongs here, without a unit");
    return Sentence::of("this is not a number");
}

} // namespace

Result<double> parseNumber(std::string_view text, const NumberRange& range)
{
    double value = 0;
    std::string_view digits = text;
    if (digits.size() > 1 && digits.front() == '+' && digits[1] != '-')
        digits.remove_prefix(1);
    const auto [end, problem] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (problem != std::errc() || end != digits.data() + digits.size() || digits.empty())
        return failInput(whyNotANumber(text), range.words, std::string(text));
    if (!(std::isfinite(value) && value >= range.lowest && value <= range.highest))
        return failInput(Sentence::of("the number is outside what is possible"), range.words,
                         std::string(text));
    return value;
}

struct CsvReader::Impl {
    Impl(const std::filesystem::path& path, std::span<const CsvColumn> wanted)
        : file(path.string()), lines(file), columns(wanted.begin(), wanted.end()),
          cells(wanted.size())
    {
    }

    Error at(Sentence detail) const
    {
        return {ErrorCode::badInput,
                std::move(detail),
                {file, static_cast<long>(lines.get_file_line())}};
    }

    // The next line that is not blank; null at the end. fccp throws on a line
    // of more than 16 MiB.
    Result<char*> nextLine()
    {
        try {
            char* line = lines.next_line();
            while (line && isBlank(line))
                line = lines.next_line();
            return line;
        } catch (const io::error::line_length_limit_exceeded&) {
            return fail(at(Sentence::of("the line is too long")));
        }
    }

    // Cuts one cell off the front of `rest` (null after the last one).
    static std::string_view takeCell(char*& rest)
    {
        char* begin = nullptr;
        char* end = nullptr;
        io::detail::chop_next_column<Quote>(rest, begin, end);
        Trim::trim(begin, end);
        Quote::unescape(begin, end);
        return {begin, static_cast<std::size_t>(end - begin)};
    }

    std::string file;
    io::LineReader lines;
    std::vector<CsvColumn> columns;
    std::vector<int> order;   // header position -> column index or kUnknown
    std::vector<std::string_view> cells;
    std::vector<std::string> unknown;
};

namespace {

std::string joined(const std::vector<std::string>& words)
{
    std::string text;
    for (const auto& word : words)
        text += (text.empty() ? "" : ",") + word;
    return text;
}

} // namespace

Result<CsvReader> CsvReader::open(const std::filesystem::path& file,
                                  std::span<const CsvColumn> columns)
{
    std::error_code ignored;
    if (std::filesystem::is_directory(file, ignored))
        return fail(ErrorCode::fileAccess, Sentence::of("this is a folder, not a file"),
                    {file.string()});
    if (const auto size = std::filesystem::file_size(file, ignored); !ignored && size > kMostBytes)
        return fail(ErrorCode::badInput, Sentence::of("the file is too large"), {file.string()},
                    Sentence::of("%1 bytes at most", counted(kMostBytes)), std::to_string(size));
    std::unique_ptr<Impl> impl;
    try {
        impl = std::make_unique<Impl>(file, columns);
    } catch (const io::error::can_not_open_file&) {
        return fail(ErrorCode::fileAccess, Sentence::of("cannot open the file"), {file.string()});
    }
    Result<char*> header = impl->nextLine();
    if (!header)
        return fail(header.error());
    if (!*header)
        return fail(
            impl->at(Sentence::of("the file is empty, its first line must name the columns")));
    std::vector<std::string> names;
    try {
        for (char* rest = *header; rest;) {
            const std::string_view name = Impl::takeCell(rest);
            const auto found = std::ranges::find(columns, name, &CsvColumn::name);
            if (std::ranges::find(names, name) != names.end() && !name.empty())
                return fail(impl->at(
                    Sentence::of("the header names column '%1' twice", std::string(name))));
            names.emplace_back(name);
            if (found == columns.end()) {
                impl->order.push_back(kUnknown);
                impl->unknown.emplace_back(name);
            } else {
                impl->order.push_back(static_cast<int>(found - columns.begin()));
            }
        }
    } catch (const io::error::escaped_string_not_closed&) {
        return fail(impl->at(Sentence::of("a quoted text is not closed")));
    }
    CsvReader reader(std::move(impl));
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].required && !reader.has(i)) {
            Error error = reader.m_impl->at(Sentence::of("the header lacks this column"));
            error.where.column = columns[i].name;
            error.expected = Sentence::of("a header with '%1'", std::string(columns[i].name));
            error.found = joined(names);
            return fail(error);
        }
    }
    return reader;
}

CsvReader::CsvReader(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
CsvReader::CsvReader(CsvReader&&) noexcept = default;
CsvReader& CsvReader::operator=(CsvReader&&) noexcept = default;
CsvReader::~CsvReader() = default;

const std::vector<std::string>& CsvReader::unknownColumns() const { return m_impl->unknown; }

bool CsvReader::has(std::size_t column) const
{
    return std::ranges::find(m_impl->order, static_cast<int>(column)) != m_impl->order.end();
}

Result<bool> CsvReader::nextRow()
{
    Result<char*> line = m_impl->nextLine();
    if (!line)
        return fail(line.error());
    if (!*line)
        return false;
    char* rest = *line;
    std::size_t cells = 0;
    try {
        for (; rest; ++cells) {
            const std::string_view cell = Impl::takeCell(rest);
            if (cells < m_impl->order.size() && m_impl->order[cells] != kUnknown)
                m_impl->cells[static_cast<std::size_t>(m_impl->order[cells])] = cell;
        }
    } catch (const io::error::escaped_string_not_closed&) {
        return fail(m_impl->at(Sentence::of("a quoted text is not closed")));
    }
    if (cells != m_impl->order.size()) {
        Error error = m_impl->at(
            cells > m_impl->order.size()
                ? Sentence::of("the row has more cells than the header, decimals take a point")
                : Sentence::of("the row has fewer cells than the header"));
        error.expected = Sentence::of("%1 cells", counted(m_impl->order.size()));
        error.found = Sentence::part(Sentence::of("%1 cells", counted(cells)));
        return fail(error);
    }
    return true;
}

long CsvReader::line() const { return static_cast<long>(m_impl->lines.get_file_line()); }

std::string_view CsvReader::text(std::size_t column) const { return m_impl->cells[column]; }

Result<double> CsvReader::number(std::size_t column, const NumberRange& range) const
{
    Result<double> value = parseNumber(text(column), range);
    if (!value) {
        Error error = value.error();
        error.where = {m_impl->file, line(), std::string(m_impl->columns[column].name)};
        return fail(error);
    }
    return value;
}

Result<std::optional<double>> CsvReader::optionalNumber(std::size_t column,
                                                        const NumberRange& range) const
{
    if (text(column).empty())
        return std::optional<double>();
    return number(column, range).map([](double value) { return std::optional<double>(value); });
}

Error CsvReader::errorAt(std::size_t column, Sentence detail, Sentence expected) const
{
    Error error = m_impl->at(std::move(detail));
    error.where.column = m_impl->columns[column].name;
    error.expected = std::move(expected);
    error.found = std::string(text(column));
    return error;
}

} // namespace undermark
