// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <qqmlintegration.h>

namespace undermark {

// One thing known, with what it is of; both ready to show.
struct Fact {
    Q_GADGET
    QML_VALUE_TYPE(fact)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString value MEMBER value FINAL)
public:
    QString name;
    QString value;
    friend bool operator==(const Fact&, const Fact&) = default;
};

} // namespace undermark
