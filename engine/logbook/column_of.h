// SPDX-License-Identifier: GPL-3.0-or-later
//
// Makes the columns of a record T, one call each. `Member` is a pointer to the member, or
// a function from the record to a reference to it; where that is optional, the column may
// be NULL. Only for record_tables.cpp.
#pragma once

#include "engine/base/record_words.h"
#include "engine/base/records.h"
#include "engine/logbook/column.h"

#include <array>
#include <functional>
#include <optional>

namespace undermark::logbook {

// A quantity as a number in the unit that its column names.
template <auto From, auto In, Measure kind>
struct ColumnUnit {
    static constexpr Measure measure = kind;
    static auto from(double number) { return From(number); }
    static double in(const auto& quantity) { return std::invoke(In, quantity); }
};

template <class V>
struct Optional : std::false_type {
    using Value = V;
};
template <class V>
struct Optional<std::optional<V>> : std::true_type {
    using Value = V;
};

inline std::optional<double> numberIn(const Cell& cell)
{
    if (const auto* whole = std::get_if<std::int64_t>(&cell))
        return static_cast<double>(*whole);
    const auto* number = std::get_if<double>(&cell);
    return number ? std::optional(*number) : std::nullopt;
}

// What holds of a text, $ for the column; by TextRule.
inline constexpr std::array kTextSql{
    "", "length($) > 0", "", "$ GLOB '[A-Z][A-Z][A-Z]'",
    "length($) = 64 AND $ NOT GLOB '*[^0-9a-f]*'", "length($) BETWEEN 1 AND 1048576", "length($) > 0"};

template <class T>
class ColumnOf {
    template <auto Member>
    using Held = std::remove_cvref_t<decltype(std::invoke(Member, std::declval<T&>()))>;
    template <auto Member>
    using Value = typename Optional<Held<Member>>::Value;
    template <auto Member>
    static constexpr bool kNeeded = !Optional<Held<Member>>::value;

    // The two ways between a member and a cell, of the ways between its value and a cell:
    // `Out` gives a Cell, `In` an optional value.
    template <auto Member, auto Out, auto In>
    static constexpr Field<T> field()
    {
        return {[](const T& record) -> Cell {
                    const auto& held = std::invoke(Member, record);
                    if constexpr (kNeeded<Member>)
                        return Out(held);
                    else
                        return held ? Out(*held) : Cell();
                },
                [](T& record, const Cell& cell) {
                    if (!kNeeded<Member> && std::holds_alternative<std::monostate>(cell))
                        return true;
                    auto value = In(cell);
                    if (!value)
                        return false;
                    std::invoke(Member, record) = *std::move(value);
                    return true;
                }};
    }

    static std::string condition(const ColumnRange& range, std::string_view name)
    {
        return condition(std::string(range.sql), name);
    }
    static std::string condition(TextRule rule, std::string_view name)
    {
        return condition(std::string(kTextSql.at(std::size_t(rule))), name);
    }
    static std::string condition(std::string sql, std::string_view name)
    {
        for (std::size_t at = 0; (at = sql.find('$', at)) != std::string::npos; at += name.size())
            sql.replace(at, 1, name);
        return sql;
    }

    static Column<T> numbers(const char* name, const ColumnRange& range, const char* said,
                             CellType type, bool needed, Measure measure, Field<T> field)
    {
        return {{name, said, type, needed, condition(range, name), &range},
                field,
                {{{name, measure, needed, &range}, field}}};
    }

    template <auto Member, class Unit>
    static constexpr Field<T> numberField()
    {
        return field<Member, [](const Value<Member>& value) -> Cell { return Unit::in(value); },
                     [](const Cell& cell) -> std::optional<Value<Member>> {
                         const auto number = numberIn(cell);
                         return number ? std::optional(Unit::from(*number)) : std::nullopt;
                     }>();
    }

public:
    // Of an Instant, in seconds UTC.
    template <auto Member>
    static Column<T> time(const char* name, const ColumnRange& range, const char* said)
    {
        return numbers(name, range, said, CellType::integer, kNeeded<Member>, Measure::date,
                       field<Member,
                             [](Instant time) -> Cell {
                                 return std::int64_t(time.time_since_epoch().count());
                             },
                             [](const Cell& cell) -> std::optional<Instant> {
                                 const auto* seconds = std::get_if<std::int64_t>(&cell);
                                 return seconds ? std::optional(Instant(std::chrono::seconds(*seconds)))
                                                : std::nullopt;
                             }>());
    }

    // Of a quantity.
    template <auto Member, class Unit>
    static Column<T> number(const char* name, const ColumnRange& range, const char* said)
    {
        return numbers(name, range, said, CellType::real, kNeeded<Member>, Unit::measure,
                       numberField<Member, Unit>());
    }

    // Of an optional estimate, whose two columns follow each other.
    template <auto Member, class Unit>
    static Column<T> mean(const char* name, const ColumnRange& range, const char* said)
    {
        return numbers(name, range, said, CellType::real, false, Unit::measure, meanField<Member, Unit>());
    }
    template <auto Member, class Unit>
    static Column<T> sd(const char* name, const ColumnRange& range, const char* said)
    {
        auto column = numbers(name, range, said, CellType::real, false, Unit::measure,
                              sdField<Member, Unit>());
        column.isSd = true;
        return column;
    }

    // Of a whole number.
    template <auto Member>
    static Column<T> count(const char* name, const ColumnRange& range, const char* said)
    {
        return numbers(name, range, said, CellType::integer, kNeeded<Member>, Measure::count,
                       field<Member, [](Value<Member> value) -> Cell { return std::int64_t(value); },
                             [](const Cell& cell) -> std::optional<Value<Member>> {
                                 const auto number = numberIn(cell);
                                 return number ? std::optional(static_cast<Value<Member>>(*number))
                                               : std::nullopt;
                             }>());
    }

    // Of a bool, 0 or 1 in the file.
    template <auto Member>
    static Column<T> flag(const char* name)
    {
        const CsvField<T> csv = yesNo<Member>(name);
        return {{name, name, CellType::integer, kNeeded<Member>, std::string(name) + " IN (0, 1)"},
                csv.field,
                {csv}};
    }

    // Of a string.
    template <auto Member>
    static Column<T> text(const char* name, const char* said, TextRule rule = TextRule::filled)
    {
        constexpr Field<T> both =
            field<Member, [](const std::string& value) -> Cell { return value; },
                  [](const Cell& cell) -> std::optional<std::string> {
                      const auto* value = std::get_if<std::string>(&cell);
                      return value ? std::optional(*value) : std::nullopt;
                  }>();
        return {{name, said, CellType::text, kNeeded<Member>, condition(rule, name), nullptr, rule},
                both,
                {{{name, Measure::text, kNeeded<Member>}, both}}};
    }

    // Of a member of an optional part of the record: all of its columns or none are NULL.
    template <auto Part, auto Member, class Unit>
    static Column<T> within(const char* name, const ColumnRange& range, const char* said)
    {
        return numbers(name, range, said, CellType::real, false, Unit::measure,
                       fieldWithin<Part, Member,
                                   [](const auto& value) -> Cell { return Unit::in(value); },
                                   [](const Cell& cell) {
                                       const auto number = numberIn(cell);
                                       return number ? std::optional(Unit::from(*number))
                                                     : std::nullopt;
                                   }>());
    }
    template <auto Part, auto Member>
    static Column<T> wordWithin(const char* name)
    {
        using P = Value<Part>;
        using Enum = std::remove_cvref_t<decltype(std::invoke(Member, std::declval<P&>()))>;
        constexpr Field<T> both =
            fieldWithin<Part, Member, [](Enum value) -> Cell { return std::string(wordOf(value)); },
                        [](const Cell& cell) -> std::optional<Enum> {
                            const auto* value = std::get_if<std::string>(&cell);
                            return value ? fromWord<Enum>(*value) : std::nullopt;
                        }>();
        return {{name, name, CellType::text, false, oneOf(name, kWords<Enum>)},
                both,
                {{{name, Measure::text}, both}}};
    }

    // Of an enumeration, by the words of record_words.h.
    template <auto Member>
    static Column<T> word(const char* name)
    {
        using Enum = Value<Member>;
        constexpr Field<T> both =
            field<Member, [](Enum value) -> Cell { return std::string(wordOf(value)); },
                  [](const Cell& cell) -> std::optional<Enum> {
                      const auto* value = std::get_if<std::string>(&cell);
                      return value ? fromWord<Enum>(*value) : std::nullopt;
                  }>();
        return {{name, name, CellType::text, kNeeded<Member>, oneOf(name, kWords<Enum>)},
                both,
                {{{name, Measure::text}, both}}};
    }

    // The condition that a text is one of these.
    static std::string oneOf(const char* name, const auto& words)
    {
        std::string list;
        for (const char* word : words)
            list += (list.empty() ? "'" : ", '") + std::string(word) + "'";
        return std::string(name) + " IN (" + list + ")";
    }

    // Columns of a CSV that are not kept so in the file.
    template <auto Member, class Unit>
    static CsvField<T> csvNumber(const char* name, const ColumnRange& range)
    {
        return {{name, Unit::measure, kNeeded<Member>, &range}, numberField<Member, Unit>()};
    }
    template <auto Member, class Unit>
    static CsvField<T> csvMean(const char* name)
    {
        return {{name, Unit::measure}, meanField<Member, Unit>()};
    }
    template <auto Member, class Unit>
    static CsvField<T> csvSd(const char* name)
    {
        return {{name, Unit::measure}, sdField<Member, Unit>()};
    }
    template <auto Member>
    static CsvField<T> yesNo(const char* name)
    {
        return {{name, Measure::yesNo},
                field<Member, [](bool value) -> Cell { return std::int64_t(value); },
                      [](const Cell& cell) -> std::optional<bool> {
                          const auto* value = std::get_if<std::int64_t>(&cell);
                          return value ? std::optional(*value != 0) : std::nullopt;
                      }>()};
    }

private:
    template <auto Part, auto Member, auto Out, auto In>
    static constexpr Field<T> fieldWithin()
    {
        return {[](const T& record) -> Cell {
                    const auto& part = std::invoke(Part, record);
                    return part ? Out(std::invoke(Member, *part)) : Cell();
                },
                [](T& record, const Cell& cell) {
                    auto& part = std::invoke(Part, record);
                    if (std::holds_alternative<std::monostate>(cell))
                        return !part;
                    auto value = In(cell);
                    if (!value)
                        return false;
                    std::invoke(Member, part ? *part : part.emplace()) = *std::move(value);
                    return true;
                }};
    }
    template <auto Member, class Unit>
    static constexpr Field<T> meanField()
    {
        return {[](const T& record) -> Cell {
                    const auto& estimate = std::invoke(Member, record);
                    return estimate ? Cell(Unit::in(estimate->mean)) : Cell();
                },
                [](T& record, const Cell& cell) {
                    if (const auto number = numberIn(cell))
                        std::invoke(Member, record) = {Unit::from(*number), {}};
                    return std::holds_alternative<std::monostate>(cell) || numberIn(cell);
                }};
    }
    template <auto Member, class Unit>
    static constexpr Field<T> sdField()
    {
        return {[](const T& record) -> Cell {
                    const auto& estimate = std::invoke(Member, record);
                    return estimate ? Cell(Unit::in(estimate->sd)) : Cell();
                },
                [](T& record, const Cell& cell) {
                    auto& estimate = std::invoke(Member, record);
                    const auto number = numberIn(cell);
                    if (estimate && number)
                        estimate->sd = Unit::from(*number);
                    return estimate.has_value() == number.has_value();
                }};
    }
};

} // namespace undermark::logbook
