// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/screen/ahead/plan_answer.h"
#include "app/screen/base/background.h"
#include "engine/planning/what_if.h"

namespace undermark {

// What would change the plan on the Ahead page. Asking changes nothing of it.
class PlanWhatIfs : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(QList<QString> questions READ questions NOTIFY changed FINAL)
    Q_PROPERTY(int asked READ asked NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> answer READ answer NOTIFY changed FINAL)

public:
    // `plan` outlives this.
    explicit PlanWhatIfs(const PlanAnswer& plan, QObject* parent = nullptr);

    QStringList questions() const; // none without a feasible plan
    int asked() const { return m_asked; } // of questions(); -1: none
    QList<Fact> answer() const;           // empty until it is known
    bool busy() const { return m_background.busy(); }

    void setFormat(const UnitFormat& format);
    void startAnew(); // the route is another one
    void followPlan(); // the plan is another one: what was asked is asked of it, too

    Q_INVOKABLE void ask(int question);

signals:
    void changed();
    void answered();

private:
    using Question = std::function<Result<WhatIf>(const PlanRequest&)>;
    Question question(std::size_t index) const;

    const PlanAnswer& m_plan;
    UnitFormat m_format;
    int m_asked = -1;
    QString m_askedText;
    std::optional<Result<WhatIf>> m_answer;
    Background m_background;
};

} // namespace undermark
