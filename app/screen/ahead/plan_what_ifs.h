// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/screen/ahead/plan_answer.h"
#include "app/screen/base/background.h"
#include "engine/planning/what_if.h"

#include <QStringList>

namespace undermark {

// What would change the plan on the Ahead page, by itself or several at once. Asking changes
// nothing of it.
class PlanWhatIfs : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(QList<QString> questions READ questions NOTIFY changed FINAL)
    Q_PROPERTY(QList<int> asked READ asked NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> answer READ answer NOTIFY changed FINAL)

public:
    // `plan` outlives this.
    explicit PlanWhatIfs(const PlanAnswer& plan, QObject* parent = nullptr);

    QStringList questions() const; // none without a feasible plan
    QList<int> asked() const; // of questions()
    QList<Fact> answer() const;           // empty until it is known
    bool busy() const { return m_background.busy(); }

    void setFormat(const UnitFormat& format);
    void startAnew(); // the route is another one
    void followPlan(); // the plan is another one: what was asked is asked of it, too

    Q_INVOKABLE void ask(int question); // as well; or no more, where it is asked

signals:
    void changed();
    void answered();

private:
    WhatIfQuestion question(std::size_t index) const;
    void askAll();

    const PlanAnswer& m_plan;
    UnitFormat m_format;
    QStringList m_asked; // their words: places among the questions change with the plan
    std::optional<Result<WhatIf>> m_answer;
    Background m_background;
};

} // namespace undermark
