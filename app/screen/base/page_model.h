// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the view models of all pages have in common: so the screen keeps any number of
// them in step.
#pragma once

#include "app/screen/base/unit_format.h"

#include <QObject>

namespace undermark {

class PageModel : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    // Units or language have changed: every text is made anew.
    virtual void setFormat(const UnitFormat& format) = 0;
    // The logbook has changed elsewhere: asks the car again. What is being typed stays.
    Q_INVOKABLE virtual void refresh() = 0;
    // Another car is shown: nothing of the one before is left open.
    virtual void startOver() { refresh(); }

signals:
    void stored(); // the logbook was changed here
};

} // namespace undermark
