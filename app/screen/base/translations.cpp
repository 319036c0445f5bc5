// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/translations.h"

#include <QCoreApplication>

namespace undermark {

void Translations::use(const QString& language)
{
    QCoreApplication::removeTranslator(&m_translator);
    if (m_translator.load(QStringLiteral(":/i18n/undermark_%1.qm").arg(language)))
        QCoreApplication::installTranslator(&m_translator);
}

} // namespace undermark
