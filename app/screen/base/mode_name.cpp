// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/mode_name.h"

#include "engine/base/records.h"

#include <QCoreApplication>

namespace undermark {

namespace {

struct ModeNames {
    Q_DECLARE_TR_FUNCTIONS(ModeNames)
};

} // namespace

QString modeName(std::string_view mode)
{
    if (mode == kTown)
        return ModeNames::tr("Town");
    if (mode == kOpenRoad)
        return ModeNames::tr("Open road");
    if (mode == kMotorway)
        return ModeNames::tr("Motorway");
    if (mode == kSpecialStage)
        return ModeNames::tr("Special stage");
    return QString::fromUtf8(mode.data(), qsizetype(mode.size()));
}

} // namespace undermark
