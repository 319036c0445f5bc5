// SPDX-License-Identifier: GPL-3.0-or-later
//
// The screen's words in one of its languages, those of the engine's sentences among them.
// Another language is one file, app/screen/i18n/undermark_KEY.ts: everything else finds it.
#pragma once

#include <QList>
#include <QString>
#include <QTranslator>

namespace undermark {

struct Language {
    QString key;  // "de"
    QString name; // in itself: "Deutsch"
};

// English first, then one for each catalogue, by key.
const QList<Language>& languages();

class Translations {
public:
    // The key of a language; anything else is English. Texts are made anew by their owners.
    void use(const QString& language);

private:
    QTranslator m_translator;
};

} // namespace undermark
