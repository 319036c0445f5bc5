// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/typed_clock.h"

#include "engine/tables/route_csv.h"

#include <QRegularExpression>

namespace undermark {

std::optional<Minutes> clockFrom(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^([0-9]{1,2})[.,:]?([0-9]{2})$"));
    const QRegularExpressionMatch match = form.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    const QString clock = match.captured(1).rightJustified(2, u'0') + u':' + match.captured(2);
    const Result<Minutes> minutes = parseClock(clock.toStdString());
    return minutes ? std::optional(*minutes) : std::nullopt;
}

std::optional<std::chrono::sys_days> dayFrom(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^([0-9]{4})[-.,]?([0-9]{2})[-.,]?([0-9]{2})$"));
    const QRegularExpressionMatch match = form.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    const auto day = parseDay((match.captured(1) + u'-' + match.captured(2) + u'-' + match.captured(3)).toStdString());
    return day ? std::optional(*day) : std::nullopt;
}

} // namespace undermark
