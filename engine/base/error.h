// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bad data is a value, not an exception: every function that can meet it
// returns Result<T>. A bug asserts. An infeasible plan or a calibration with
// findings is an answer, not an error.
#pragma once

#include "engine/base/sentence.h"

#include <string>
#include <tl/expected.hpp>

namespace undermark {

enum class ErrorCode {
    badInput,    // malformed or impossible: nothing may be written (exit code 2)
    notFound,    // an unknown vehicle, mode or entry (exit code 2)
    fileAccess,  // cannot open, read or write a file (exit code 1)
    busy,        // another program holds the logbook longer than we wait (exit 1)
    damaged,     // the file is not a sound logbook; it is left untouched (exit 1)
    newerSchema, // the logbook was written by a newer Undermark (exit 1)
    internal,    // a library failed in a way nobody planned for (exit 1)
};

// A place in what was given. What is empty or zero is unknown, and left out of the sentence.
struct Where {
    std::string file = {};   // as the user named it
    long line = 0;           // from 1
    std::string column = {}; // column, flag or field name
    friend bool operator==(const Where&, const Where&) = default;
};

// What is wrong, and where. An empty `expected` or `found` is left out of the sentence.
struct Error {
    ErrorCode code = ErrorCode::internal;
    Sentence detail = {}; // without full stop
    Where where = {};
    Sentence expected = {};
    Part found = {};
};

template <class T>
using Result = tl::expected<T, Error>;

// One line for people: "FILE:LINE: column 'litres': DETAIL (expected a number
// of 0 or more, found 'abc')". What was found is cut to 60 bytes, and what cannot be
// printed is shown as '?'.
Sentence sentenceOf(const Error& error);
std::string describe(const Error& error); // in English

// Short-hands for returning an error from a function of any Result<T>.
inline tl::unexpected<Error> fail(Error error) { return tl::unexpected<Error>(std::move(error)); }
tl::unexpected<Error> fail(ErrorCode code, Sentence detail, Where where = {},
                           Sentence expected = {}, Part found = {});
// Of badInput whose place the caller may know better.
tl::unexpected<Error> failInput(Sentence detail, Sentence expected = {}, Part found = {});

} // namespace undermark
