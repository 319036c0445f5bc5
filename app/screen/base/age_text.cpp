// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/age_text.h"

#include <QCoreApplication>

namespace undermark {

namespace {

struct AgeWords {
    Q_DECLARE_TR_FUNCTIONS(AgeWords)
};

// Until here an age is told in the smaller unit: never "1 h ago", which has no plural.
constexpr std::chrono::minutes kInMinutes{120};
constexpr std::chrono::hours kInHours{48};

} // namespace

QString ageText(std::chrono::seconds age)
{
    using namespace std::chrono;
    if (age < seconds(0))
        return AgeWords::tr("at an unknown time");
    if (age < minutes(2))
        return AgeWords::tr("just now");
    if (age < kInMinutes)
        return AgeWords::tr("%1 min ago").arg(floor<minutes>(age).count());
    if (age < kInHours)
        return AgeWords::tr("%1 h ago").arg(floor<hours>(age).count());
    return AgeWords::tr("%1 days ago").arg(floor<days>(age).count());
}

} // namespace undermark
