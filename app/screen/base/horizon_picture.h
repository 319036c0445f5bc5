// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuel horizon ready to draw: positions are shares (0 to 1) of the strip's
// length, heights are probabilities, words are ready to show.
#pragma once

#include "app/screen/base/unit_format.h"
#include "engine/range/horizon.h"

#include <QList>
#include <QObject>
#include <QPointF>
#include <QString>
#include <QVariant>
#include <qqmlintegration.h>

namespace undermark {

// A line of the ruler below the strip; minor lines have no label.
struct HorizonTickMark {
    Q_GADGET
    QML_VALUE_TYPE(horizonTickMark)
    Q_PROPERTY(qreal at MEMBER at FINAL)
    Q_PROPERTY(QString label MEMBER label FINAL)
    Q_PROPERTY(bool major MEMBER major FINAL)
    Q_PROPERTY(bool spare MEMBER spare FINAL)
public:
    qreal at = 0;
    QString label;
    bool major = false;
    bool spare = false; // every second label: left out where letters are large
    friend bool operator==(const HorizonTickMark&, const HorizonTickMark&) = default;
};

// A post or a peg with its name.
struct HorizonMark {
    Q_GADGET
    QML_VALUE_TYPE(horizonMark)
    Q_PROPERTY(qreal at MEMBER at FINAL)
    Q_PROPERTY(QString label MEMBER label FINAL)
    Q_PROPERTY(bool peg MEMBER peg FINAL)
public:
    qreal at = 0;
    QString label;
    bool peg = false; // else a post
    friend bool operator==(const HorizonMark&, const HorizonMark&) = default;
};

struct HorizonPicture {
    Q_GADGET
    QML_VALUE_TYPE(horizonPicture)
    Q_PROPERTY(QVariant aboveZero READ aboveZeroPath FINAL)
    Q_PROPERTY(QVariant notRunning READ notRunningPath FINAL)
    Q_PROPERTY(QList<undermark::HorizonTickMark> ticks MEMBER ticks FINAL)
    Q_PROPERTY(QList<undermark::HorizonMark> marks MEMBER marks FINAL)
    Q_PROPERTY(QString spoken MEMBER spoken FINAL)
public:
    QVariant aboveZeroPath() const { return QVariant::fromValue(aboveZero); } // as Shapes take it
    QVariant notRunningPath() const { return QVariant::fromValue(notRunning); }

    QList<QPointF> aboveZero;  // closed outline under P(above zero); y points down, 1 = ruler
    QList<QPointF> notRunning; // closed outline over P(running)
    QList<HorizonTickMark> ticks;
    QList<HorizonMark> marks; // posts and pegs on the strip
    QString spoken;           // the picture in one sentence, for those who cannot see it
    friend bool operator==(const HorizonPicture&, const HorizonPicture&) = default;
};

// The engine's geometry (engine/range/horizon.h) in words and shapes. Where
// labels go is decided where their width is known (app/screen/base/label_lanes.h).
// From here, by two laws of the same road.
HorizonPicture horizonPicture(const RangeLaw& toZero, const RangeLaw& toDry,
                              const UnitFormat& format);

// The same from a strip that is made already: a leg of a plan.
HorizonPicture legPicture(const Horizon& strip, const UnitFormat& format);

} // namespace undermark
