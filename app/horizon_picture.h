// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuel horizon ready to draw: positions are shares (0 to 1) of the strip's
// length, heights are probabilities, words are ready to show.
#pragma once

#include "app/car_service.h"
#include "app/unit_format.h"

#include <QList>
#include <QObject>
#include <QPointF>
#include <QString>
#include <qqmlintegration.h>

namespace undermark {

// A line of the ruler below the strip; minor lines have no label.
struct HorizonTick {
    Q_GADGET
    QML_VALUE_TYPE(horizonTick)
    Q_PROPERTY(qreal at MEMBER at FINAL)
    Q_PROPERTY(QString label MEMBER label FINAL)
    Q_PROPERTY(bool major MEMBER major FINAL)
public:
    qreal at = 0;
    QString label;
    bool major = false;
    friend bool operator==(const HorizonTick&, const HorizonTick&) = default;
};

// A post or a peg with its name.
struct HorizonMark {
    Q_GADGET
    QML_VALUE_TYPE(horizonMark)
    Q_PROPERTY(qreal at MEMBER at FINAL)
    Q_PROPERTY(QString label MEMBER label FINAL)
    Q_PROPERTY(bool peg READ peg FINAL)
public:
    enum class Kind { zeroMark, sureToDry, fuelPoint };
    bool peg() const { return kind == Kind::fuelPoint; }  // else a post
    qreal at = 0;
    QString label;
    Kind kind = Kind::fuelPoint;
    friend bool operator==(const HorizonMark&, const HorizonMark&) = default;
};

struct HorizonPicture {
    Q_GADGET
    QML_VALUE_TYPE(horizonPicture)
    Q_PROPERTY(QList<QPointF> aboveZero MEMBER aboveZero FINAL)
    Q_PROPERTY(QList<QPointF> notRunning MEMBER notRunning FINAL)
    Q_PROPERTY(QList<undermark::HorizonTick> ticks MEMBER ticks FINAL)
    Q_PROPERTY(QList<undermark::HorizonMark> marks MEMBER marks FINAL)
    Q_PROPERTY(QString spoken MEMBER spoken FINAL)
public:
    QList<QPointF> aboveZero;   // closed outline under P(above zero); y points down, 1 = ruler
    QList<QPointF> notRunning;  // closed outline over P(running)
    QList<HorizonTick> ticks;
    QList<HorizonMark> marks;   // posts and pegs on the strip, nearest first
    QString spoken;             // the picture in one sentence, for those who cannot see it
    friend bool operator==(const HorizonPicture&, const HorizonPicture&) = default;
};

// Marks beyond the strip's end are left out. The zero post stands at the even
// distance, where the mark is as likely passed as not; the other at the sure
// distance to dry.
HorizonPicture horizonPicture(const NowState& state, const UnitFormat& format);

} // namespace undermark
