// SPDX-License-Identifier: GPL-3.0-or-later
//
// Records from the rows of a CSV, by the columns of engine/logbook/record_tables.h. Only
// for the files of engine/tables.
#pragma once

#include "engine/logbook/record_tables.h"
#include "engine/tables/csv_reader.h"
#include "engine/tables/import_csv.h"

#include <algorithm>

namespace undermark {

// The columns under the names that the file gives them. Errors: badInput for an option
// that names none of them.
Result<void> rename(std::vector<CsvColumn>& columns, const ImportOptions& options);

// The cell in the unit that its column's name states; nothing where it is empty. Errors:
// badInput with the place.
Result<logbook::Cell> cellOf(const CsvReader& csv, std::size_t column,
                             const logbook::CsvShape& shape, const ImportOptions& options);

template <class T>
class RecordReader {
public:
    // `others` are columns beside the record's; `spared` is one of the record's that may be
    // missing although it is needed. `options` have to outlive the reader. Errors: as rename() and CsvReader::open.
    static Result<RecordReader> open(const std::filesystem::path& file, const ImportOptions& options,
                                     std::initializer_list<CsvColumn> others,
                                     std::string_view spared = {})
    {
        auto fields = logbook::tableOf<T>().csvFields();
        std::vector<CsvColumn> columns;
        for (const auto& field : fields)
            columns.push_back({field.name, field.needed && field.name != spared});
        columns.insert(columns.end(), others);
        if (const auto renamed = rename(columns, options); !renamed)
            return fail(renamed.error());
        auto csv = CsvReader::open(file, columns);
        if (!csv)
            return fail(csv.error());
        return RecordReader(std::move(fields), std::move(*csv), options);
    }

    const CsvReader& csv() const { return m_csv; }
    Result<bool> nextRow() { return m_csv.nextRow(); }

    // Place in csv() of a column of the record, and of one of the others.
    std::size_t column(std::string_view name) const
    {
        const auto named = [&](const auto& field) { return field.name == name; };
        return std::size_t(std::ranges::find_if(m_fields, named) - m_fields.begin());
    }
    std::size_t other(std::size_t number) const { return m_fields.size() + number; }

    // The record of the current row. Errors: badInput for the first cell that is wrong.
    Result<T> record() const
    {
        T record;
        for (std::size_t i = 0; i < m_fields.size(); ++i) {
            if (!m_csv.has(i))
                continue;
            const auto cell = cellOf(m_csv, i, m_fields[i], m_options);
            if (!cell)
                return fail(cell.error());
            if (!std::holds_alternative<std::monostate>(*cell))
                m_fields[i].field.set(record, *cell);
        }
        return record;
    }

private:
    RecordReader(std::vector<logbook::CsvField<T>> fields, CsvReader csv, const ImportOptions& options)
        : m_fields(std::move(fields)), m_csv(std::move(csv)), m_options(options)
    {
    }
    std::vector<logbook::CsvField<T>> m_fields;
    CsvReader m_csv;
    const ImportOptions& m_options;
};

} // namespace undermark
