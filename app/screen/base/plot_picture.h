// SPDX-License-Identifier: GPL-3.0-or-later
//
// A plot ready to draw: positions are shares (0 to 1) of its area, y points
// down; words are ready to show.
#pragma once

#include "app/screen/base/horizon_picture.h"

#include <QList>
#include <QObject>
#include <QPointF>
#include <QString>
#include <QVariant>
#include <qqmlintegration.h>

namespace undermark {

// A point of data. `odd` ones are drawn hollow; `missBy` is the length of a
// whisker from the point to where the line should be, as a share of the height.
struct PlotMark {
    Q_GADGET
    QML_VALUE_TYPE(plotMark)
    Q_PROPERTY(qreal x MEMBER x FINAL)
    Q_PROPERTY(qreal y MEMBER y FINAL)
    Q_PROPERTY(qreal missBy MEMBER missBy FINAL)
    Q_PROPERTY(bool odd MEMBER odd FINAL)
public:
    qreal x = 0;
    qreal y = 0;
    qreal missBy = 0;
    bool odd = false;
    friend bool operator==(const PlotMark&, const PlotMark&) = default;
};

struct PlotPicture {
    Q_GADGET
    QML_VALUE_TYPE(plotPicture)
    Q_PROPERTY(QVariant band READ bandPath FINAL)
    Q_PROPERTY(bool hasBand READ hasBand FINAL)
    Q_PROPERTY(QVariant line READ linePath FINAL)
    Q_PROPERTY(QList<undermark::PlotMark> marks MEMBER marks FINAL)
    Q_PROPERTY(QList<undermark::HorizonTickMark> xTicks MEMBER xTicks FINAL)
    Q_PROPERTY(QList<undermark::HorizonTickMark> yTicks MEMBER yTicks FINAL)
    Q_PROPERTY(QString xTitle MEMBER xTitle FINAL)
    Q_PROPERTY(QString yTitle MEMBER yTitle FINAL)
    Q_PROPERTY(qreal postAt MEMBER postAt FINAL)
    Q_PROPERTY(QString postName MEMBER postName FINAL)
    Q_PROPERTY(bool empty READ isEmpty FINAL)
    Q_PROPERTY(QString spoken MEMBER spoken FINAL)
public:
    QVariant bandPath() const { return QVariant::fromValue(band); }
    bool hasBand() const { return !band.isEmpty(); }
    QVariant linePath() const { return QVariant::fromValue(line); }
    bool isEmpty() const { return line.isEmpty() && marks.isEmpty(); }

    QList<QPointF> band; // closed outline, or empty
    QList<QPointF> line;
    QList<PlotMark> marks;
    QList<HorizonTickMark> xTicks;
    QList<HorizonTickMark> yTicks;
    QString xTitle;
    QString yTitle;
    qreal postAt = -1; // a level line across, from the left; -1: none
    QString postName;
    QString spoken; // the picture in one sentence, for those who cannot see it
    friend bool operator==(const PlotPicture&, const PlotPicture&) = default;
};

// From a number on an axis to its share of the axis.
class PlotAxis {
public:
    // Grown to whole ticks, `most` of them or fewer. `low` < `high`.
    static PlotAxis around(double low, double high, int most);
    double share(double value) const { return (value - m_low) / (m_high - m_low); }
    double low() const { return m_low; }
    double high() const { return m_high; }
    // Labels through the format; `upwards` where 1 is at the top.
    QList<HorizonTickMark> ticks(const UnitFormat& format, bool upwards) const;

private:
    double m_low = 0.0;
    double m_high = 1.0;
    double m_step = 1.0;
};

} // namespace undermark
