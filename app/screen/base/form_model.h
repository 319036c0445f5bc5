// SPDX-License-Identifier: GPL-3.0-or-later
//
// What view models have in common in which a few numbers are typed by touch: the form, and
// what is said about what was typed. (Derive from undermark::FormModel, in full: qmllint 6.4
// finds a base by the name that is written.)
#pragma once

#include "app/screen/base/notice_text.h"
#include "app/screen/base/number_form.h"
#include "app/screen/base/unit_format.h"

#include <QObject>
#include <qqmlintegration.h>
#include <vector>

namespace undermark {

class FormModel : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(undermark::NumberForm* form READ form CONSTANT FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)

public:
    using QObject::QObject;

    NumberForm* form() { return &m_form; }
    QList<NoticeText> notices() const { return noticeTexts(m_notices, m_format); }

signals:
    void changed();

protected:
    // What was said is of what stood there: it goes with the next key.
    void forgetNotices()
    {
        m_notices.clear();
        emit changed();
    }

    UnitFormat m_format;
    NumberForm m_form;
    std::vector<Notice> m_notices;
};

} // namespace undermark
