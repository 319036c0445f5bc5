// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/translations.h"

#include <QCoreApplication>
#include <QDir>

namespace undermark {

namespace {

constexpr auto kCatalogue = ":/i18n/undermark_%1.qm";
constexpr const char* kOwnName[] = QT_TRANSLATE_NOOP3("Language", "English",
                                                      "The name of this language, in it");

QString catalogueOf(const QString& language)
{
    return QString::fromLatin1(kCatalogue).arg(language);
}

QList<Language> findLanguages()
{
    const QString english = QString::fromLatin1(kOwnName[0]);
    QList<Language> all{{QStringLiteral("en"), english}};
    const QDir catalogues(QStringLiteral(":/i18n"), catalogueOf(QStringLiteral("*")).section(u'/', -1),
                          QDir::Name, QDir::Files);
    for (const QString& file : catalogues.entryList()) {
        QTranslator catalogue;
        if (catalogue.load(catalogues.filePath(file)))
            all.append({file.section(u'_', 1).section(u'.', 0, 0),
                        catalogue.translate("Language", kOwnName[0], kOwnName[1])});
    }
    return all;
}

} // namespace

const QList<Language>& languages()
{
    static const QList<Language> all = findLanguages();
    return all;
}

void Translations::use(const QString& language)
{
    QCoreApplication::removeTranslator(&m_translator);
    if (m_translator.load(catalogueOf(language)))
        QCoreApplication::installTranslator(&m_translator);
}

} // namespace undermark
