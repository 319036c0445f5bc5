// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace undermark {

// Which of `words` was meant by `typed`, a slip of the fingers away: the one that needs the
// fewest single letters inserted, left out, replaced or swapped with their neighbour (the
// restricted Damerau-Levenshtein distance), at most one for every three letters typed and one
// in any case; a word that `typed` begins counts as one away. Empty where none is near; the
// first where several are equally near. Costs the product of the lengths, for each word.
std::string nearestWord(const std::string& typed, const std::vector<std::string>& words);

} // namespace undermark
