// SPDX-License-Identifier: GPL-3.0-or-later
//
// A record by the columns of its table (engine/logbook/record_tables.h): as options of the
// command that adds it, and as the JSON that answers state.
#pragma once

#include "app/cli/cli_command.h"
#include "engine/logbook/record_tables.h"

#include <string>
#include <vector>

namespace undermark {

// What stood behind one option.
struct TypedCell {
    std::optional<double> number;
    std::optional<int> count;
    std::string text;
    bool yes = false;
    logbook::Cell cell() const;   // nothing where the option was not given
};

// The option of one column: price_per_l is --price-per-l. `typed` must live as long as the
// command line is parsed.
void addTyped(CLI::App& command, const logbook::CsvShape& shape, TypedCell& typed);

// One option for each column of T that a person is asked for, and the record they make.
template <class T>
class RecordOptions {
public:
    // *this must stay where it is, and live as long as the command line is parsed.
    void addTo(CLI::App& command)
    {
        for (std::size_t i = 0; i < m_fields.size(); ++i)
            if (m_fields[i].about)
                addTyped(command, m_fields[i], m_typed[i]);
    }

    T record() const
    {
        T record;
        applyTo(record);
        return record;
    }

    // What was given, over what is there.
    void applyTo(T& record) const
    {
        for (std::size_t i = 0; i < m_fields.size(); ++i)
            if (const auto cell = m_typed[i].cell(); cell != logbook::Cell())
                m_fields[i].field.set(record, cell);
    }

private:
    std::vector<logbook::CsvField<T>> m_fields = logbook::tableOf<T>().csvFields();
    std::vector<TypedCell> m_typed{m_fields.size()};
};

// Null for nothing, true or false for yes or no, a date as ISO 8601.
Json cellJson(const logbook::Cell& cell, logbook::Measure measure);

// Each column under its name in tables; an estimate is one {"mean", "sd"}, or null.
template <class T>
Json recordJson(const T& record)
{
    Json json = Json::object();
    std::string before;
    for (const auto& column : logbook::tableOf<T>().fields) {
        const logbook::CsvField<T>& told = column.told();
        Json value = cellJson(told.field.get(record), told.measure);
        if (!column.isSd)
            json[before = told.name] = std::move(value);
        else if (!value.is_null())
            json[before] = {{"mean", json[before]}, {"sd", std::move(value)}};
    }
    return json;
}

} // namespace undermark
