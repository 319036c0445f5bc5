// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/typeface.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <fontconfig/fontconfig.h>

namespace undermark {

namespace {

constexpr char kHideMono[] = R"(<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig><selectfont><rejectfont>
  <glob>*/B612Mono-*</glob>
</rejectfont></selectfont></fontconfig>)";

bool isProportional(const QString& family, QFont::Weight weight)
{
    const QFontMetricsF metrics(QFont(family, 20, weight));
    return metrics.horizontalAdvance(u"iiii"_qs) < metrics.horizontalAdvance(u"MMMM"_qs);
}

} // namespace

void hideMonoLetters()
{
    FcConfig* config = FcInitLoadConfig();
    if (!config)
        return;
    const auto* xml = reinterpret_cast<const FcChar8*>(kHideMono);
    if (FcConfigParseAndLoadFromMemory(config, xml, FcTrue) && FcConfigBuildFonts(config))
        FcConfigSetCurrent(config);   // takes a reference of its own
    FcConfigDestroy(config);
}

QString useTypeface()
{
    const QString family = u"B612"_qs;
    if (QFontDatabase::hasFamily(family) && isProportional(family, QFont::Normal) &&
        isProportional(family, QFont::Bold))
        QGuiApplication::setFont(QFont(family));
    return QGuiApplication::font().family();
}

} // namespace undermark
