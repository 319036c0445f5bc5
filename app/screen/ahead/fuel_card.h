// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/plan_card.h"
#include "app/screen/ahead/plan_answer.h"

#include <filesystem>

namespace undermark {

// The plan of the Ahead page on paper: fuel-card.pdf beside the logbook.
class FuelCard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the plan's view model")
    Q_PROPERTY(QString done READ done NOTIFY changed FINAL)

public:
    // `plan` outlives this; `folder` is asked where the logbook is, `wishes` what the plan is of.
    FuelCard(const PlanAnswer& plan, std::function<std::filesystem::path()> folder,
             std::function<CardWishes()> wishes, QObject* parent = nullptr);

    QString done() const { return m_done; } // what write() has done to this plan
    void setFormat(const UnitFormat& format);
    void startAnew(); // the plan is another one

    Q_INVOKABLE void write();

signals:
    void changed();

private:
    const PlanAnswer& m_plan;
    std::function<std::filesystem::path()> m_folder;
    std::function<CardWishes()> m_wishes;
    UnitFormat m_format;
    QString m_done;
};

} // namespace undermark
