// SPDX-License-Identifier: GPL-3.0-or-later
//
// How each record becomes a row and comes back. One Row<T> per record: its
// kind in the ledger, its table, its columns, and both directions, in the order
// of the columns. Only for the files of engine/logbook.
#pragma once

#include "engine/base/records.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <type_traits>

namespace undermark::logbook {

// Binds the next parameter of a statement, or takes the next column of a row.
// Quantities go in and out in the unit that is handed along.
class Cursor {
public:
    Cursor(SQLite::Statement& statement, int first) : m_statement(statement), m_next(first) {}

    template <class Number>
    void put(Number value) { m_statement.bind(m_next++, value); }
    void putText(const std::string& value) { m_statement.bind(m_next++, value); }
    void putNull() { m_statement.bind(m_next++); }

    SQLite::Column take() { return m_statement.getColumn(m_next++); }
    double takeNumber() { return take().getDouble(); }
    std::int64_t takeInteger() { return take().getInt64(); }
    std::string takeText() { return take().getString(); }

private:
    SQLite::Statement& m_statement;
    int m_next;
};

template <class T>
struct Row;

#define UNDERMARK_ROW(Type)                                                                        \
    template <>                                                                                    \
    struct Row<Type> {                                                                             \
        static const char* const kind;      /* in the ledger */                                    \
        static const char* const table;                                                            \
        static const char* const columns;   /* without id, separated by ", " */                    \
        static void put(Cursor& cursor, const Type& value);                                        \
        static Type take(Cursor& cursor);                                                          \
    };

UNDERMARK_ROW(Vehicle)
UNDERMARK_ROW(Mode)
UNDERMARK_ROW(Calibration)
UNDERMARK_ROW(Fill)
UNDERMARK_ROW(Trip)
UNDERMARK_ROW(Proof)
#undef UNDERMARK_ROW

// The parts of a record that have a table of their own: a calibration's points,
// a vehicle's surge margins. Other records have none.
void insertParts(const SQLite::Database& database, std::int64_t id, const Vehicle& vehicle);
void insertParts(const SQLite::Database& database, std::int64_t id, const Calibration& calibration);
void readParts(const SQLite::Database& database, std::int64_t id, Vehicle& vehicle);
void readParts(const SQLite::Database& database, std::int64_t id, Calibration& calibration);

template <class T>
inline constexpr bool kHasParts = std::is_same_v<T, Vehicle> || std::is_same_v<T, Calibration>;
// A record that has a time of its own, by which it is listed.
template <class T>
inline constexpr bool kHasTime = !std::is_same_v<T, Vehicle> && !std::is_same_v<T, Mode>;

} // namespace undermark::logbook
