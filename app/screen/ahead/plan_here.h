// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/screen/base/notice_text.h"
#include "app/screen/base/number_form.h"
#include "engine/planning/route.h"

#include <QObject>
#include <qqmlintegration.h>

namespace undermark {

// Where the car is on the route, as typed on the Ahead page; what is left of it is planned.
class PlanHere : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(undermark::NumberForm* form READ form CONSTANT FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)

public:
    // `whole` is asked for the whole route.
    explicit PlanHere(std::function<Route()> whole, QObject* parent = nullptr);

    NumberForm* form() { return &m_form; }
    QList<NoticeText> notices() const { return noticeTexts(m_notices, m_format); }
    // What is left of a route, or all of it where nothing was said. Errors: those of routeFrom.
    Result<Route> left(const Route& whole) const;

    void setFormat(const UnitFormat& format);
    void startAnew(); // on another route

    Q_INVOKABLE void plan();
    Q_INVOKABLE void planWhole();

signals:
    void changed();
    void moved(); // something else is left

private:
    void showForm();

    std::function<Route()> m_whole;
    UnitFormat m_format;
    NumberForm m_form;
    std::optional<Distance> m_at;
    std::vector<Notice> m_notices;
};

} // namespace undermark
