// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QTranslator>

namespace undermark {

// The screen's words in one of its languages, those of the engine's sentences among them.
class Translations {
public:
    // "de", "fr"; anything else is English. Texts are made anew by their owners.
    void use(const QString& language);

private:
    QTranslator m_translator;
};

} // namespace undermark
