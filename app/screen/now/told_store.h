// SPDX-License-Identifier: GPL-3.0-or-later
//
// What was told of a car beside its log, kept in the settings until it is taken back.
#pragma once

#include <QSettings>
#include <QString>
#include <QStringList>
#include <memory>
#include <string>

namespace undermark {

class ToldStore {
public:
    // In the INI file `file`, under `group` and the car; no file: nothing is kept.
    ToldStore(const QString& file, const QString& group);

    bool turnTo(const std::string& car); // by its UUID; whether it is another one than before
    QStringList words() const;       // of the car; none: nothing was told
    void keep(const QStringList& words);

private:
    QString key() const { return m_group + u'/' + m_car; }

    std::unique_ptr<QSettings> m_store;
    QString m_group;
    QString m_car; // empty: none yet
};

} // namespace undermark
