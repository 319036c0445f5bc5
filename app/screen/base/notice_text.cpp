// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/notice_text.h"

#include "app/screen/base/sentence_text.h"

#include <QCoreApplication>
#include <algorithm>

namespace undermark {

namespace {

struct NoticeWords {
    Q_DECLARE_TR_FUNCTIONS(NoticeWords)
};

QString word(Severity severity)
{
    switch (severity) {
    case Severity::info:
        return NoticeWords::tr("Note");
    case Severity::warning:
        return NoticeWords::tr("Caution");
    case Severity::error:
        return NoticeWords::tr("Problem");
    }
    return {};
}

} // namespace

Notice noticeOf(const Error& error)
{
    return {Severity::error, sentenceOf(error)};
}

Notice noticeOf(const Finding& finding)
{
    return {finding.severity, finding.text};
}

NoticeText noticeText(const Notice& notice, const UnitFormat& format)
{
    return {notice.severity, word(notice.severity), sentenceText(notice.text, format)};
}

QList<NoticeText> noticeTexts(const std::vector<Notice>& notices, const UnitFormat& format)
{
    QList<NoticeText> texts;
    texts.reserve(qsizetype(notices.size()));
    for (const Notice& notice : notices)
        texts.append(noticeText(notice, format));
    std::stable_sort(texts.begin(), texts.end(), [](const NoticeText& a, const NoticeText& b) {
        return a.severity > b.severity;
    });
    return texts;
}

} // namespace undermark
