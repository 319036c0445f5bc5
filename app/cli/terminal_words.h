// SPDX-License-Identifier: GPL-3.0-or-later
//
// Sentences as a terminal says them: in English, and a few of them in words that suit
// only there (the flag to type, litres in the words). The engine knows no flags: its
// sentence is the key of the table in the .cpp.
#pragma once

#include "engine/base/error.h"

#include <string>

namespace undermark {

std::string said(const Sentence& sentence);
std::string said(const Error& error);   // one line

} // namespace undermark
