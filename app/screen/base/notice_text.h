// SPDX-License-Identifier: GPL-3.0-or-later
//
// A notice ready to show: its severity as a word, so that no colour is needed
// to read it.
#pragma once

#include "app/car/notice.h"
#include "app/screen/base/unit_format.h"
#include "engine/base/error.h"
#include "engine/calibration/calibrate.h"

#include <QList>
#include <QObject>
#include <QString>
#include <qqmlintegration.h>

namespace undermark {

struct NoticeText {
    Q_GADGET
    QML_VALUE_TYPE(noticeText)
    Q_PROPERTY(bool problem READ problem FINAL)
    Q_PROPERTY(bool caution READ caution FINAL)
    Q_PROPERTY(QString word MEMBER word FINAL)
    Q_PROPERTY(QString text MEMBER text FINAL)
public:
    bool problem() const { return severity == Severity::error; }
    bool caution() const { return severity == Severity::warning; }
    Severity severity = Severity::info;
    QString word;
    QString text;
    friend bool operator==(const NoticeText&, const NoticeText&) = default;
};

Notice noticeOf(const Error& error);
Notice noticeOf(const Finding& finding);

NoticeText noticeText(const Notice& notice, const UnitFormat& format);

// The worst first; notices of one severity keep their order.
QList<NoticeText> noticeTexts(const std::vector<Notice>& notices, const UnitFormat& format);

} // namespace undermark
