// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_burns_more.h"

#include "app/car/told.h"
#include "app/cli/cli_command.h"

namespace undermark {

void addBurnsMore(CLI::App& command, BurnsMore& flags)
{
    static const NumberRange kPercent{kLeastMore.percent(), kMostMore.percent(),
                                      Sentence::of("a percentage from -50 to 400")};
    addNumber(command, "--burns-more", flags.percent, kPercent,
              "percent that it burns more than the log says, since the last fill and ahead "
              "(towing, a roof box, winter)");
    addNumber(command, "--burns-more-sd", flags.sdPercent, kNotNegative,
              "its uncertainty, percent; default a third of it");
}

Result<void> checkBurnsMore(const BurnsMore& flags)
{
    if (flags.sdPercent && !flags.percent)
        return wrongUse("--burns-more-sd goes with --burns-more");
    return {};
}

std::optional<Estimate<Fraction>> byWord(const BurnsMore& flags)
{
    if (!flags.percent)
        return std::nullopt;
    Estimate<Fraction> more = byWord(Fraction::fromPercent(*flags.percent));
    if (flags.sdPercent)
        more.sd = Fraction::fromPercent(*flags.sdPercent);
    return more;
}

} // namespace undermark
