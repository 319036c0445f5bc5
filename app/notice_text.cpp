// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/notice_text.h"

#include <QCoreApplication>
#include <algorithm>

namespace undermark {

namespace {

struct NoticeWords {
    Q_DECLARE_TR_FUNCTIONS(NoticeWords)
};

QString word(Notice::Severity severity)
{
    switch (severity) {
    case Notice::Severity::info:
        return NoticeWords::tr("Note");
    case Notice::Severity::warning:
        return NoticeWords::tr("Caution");
    case Notice::Severity::error:
        return NoticeWords::tr("Problem");
    }
    return {};
}

} // namespace

NoticeText noticeText(const Notice& notice)
{
    return {notice.severity, word(notice.severity), QString::fromStdString(notice.text)};
}

NoticeText noticeText(const Error& error)
{
    return noticeText(Notice{Notice::Severity::error, describe(error)});
}

QList<NoticeText> noticeTexts(const std::vector<Notice>& notices)
{
    QList<NoticeText> texts;
    texts.reserve(qsizetype(notices.size()));
    for (const Notice& notice : notices)
        texts.append(noticeText(notice));
    std::stable_sort(texts.begin(), texts.end(), [](const NoticeText& a, const NoticeText& b) {
        return a.severity > b.severity;
    });
    return texts;
}

} // namespace undermark
