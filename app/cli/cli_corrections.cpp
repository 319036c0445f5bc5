// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_corrections.h"
#include "app/cli/terminal_words.h"

#include <iostream>

namespace undermark {

void addCorrections(CLI::App& command, CorrectionOptions& options)
{
    addFlag(command, "--at-15c", options.to15Celsius,
            "learn from litres at 15 C, where the fuel's temperature was logged (ASTM D1250)");
    addFlag(command, "--blend-energy", options.blendEnergy,
            "learn from litres of pure fuel of the same energy, where the blend was logged");
}

Json correctionsJson(const CorrectionOptions& options, const CorrectedFills& corrected,
                     const std::function<Json(std::size_t)>& nameOf, Json effect)
{
    Json json{{"at_15c", options.to15Celsius},
              {"blend_energy", options.blendEnergy},
              {"effect", std::move(effect)},
              {"not_known", corrected.unknown},
              {"changed", Json::array()}};
    for (const Correction& change : corrected.changes) {
        std::string why;
        for (const Sentence& reason : change.why)
            why += (why.empty() ? "" : "; ") + said(reason);
        json["changed"].push_back({{"fill", nameOf(change.fill)},
                                   {"before_l", change.before.litres()},
                                   {"after_l", change.after.litres()},
                                   {"text", why}});
    }
    return json;
}

void printCorrections(const CorrectionOptions& options, const CorrectedFills& corrected,
                      const std::string& effect)
{
    Volume before;
    Volume after;
    for (const Correction& change : corrected.changes) {
        before += change.before;
        after += change.after;
    }
    const char* what = options.to15Celsius && options.blendEnergy ? "volume at 15 C and energy of the blend"
                     : options.to15Celsius                        ? "volume at 15 C"
                                                                  : "energy of the blend";
    std::cout << format("\n%s: %zu of %zu fills changed", what, corrected.changes.size(),
                        corrected.fills.size());
    if (!corrected.changes.empty())
        std::cout << format(", their %.1f L to %.1f L (%+.2f %%)", before.litres(), after.litres(),
                            100 * (after / before - 1));
    std::cout << "; " << effect << '\n';
    if (corrected.unknown > 0)
        std::cout << format("  %zu times temperature or blend was not known: left as it is\n",
                            corrected.unknown);
}

} // namespace undermark
