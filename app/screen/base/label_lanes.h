// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where the labels of posts and pegs go, so that none covers another.
#pragma once

#include "app/screen/base/horizon_picture.h"

#include <QList>
#include <QObject>
#include <qqmlintegration.h>

namespace undermark {

struct PlacedLabel {
    Q_GADGET
    QML_VALUE_TYPE(placedLabel)
    Q_PROPERTY(undermark::HorizonMark mark MEMBER mark FINAL)
    Q_PROPERTY(qreal markX MEMBER markX FINAL)
    Q_PROPERTY(qreal left MEMBER left FINAL)
    Q_PROPERTY(qreal width MEMBER width FINAL)
    Q_PROPERTY(int lane MEMBER lane FINAL)
public:
    HorizonMark mark;
    qreal markX = 0; // px from the strip's left edge
    qreal left = 0;  // of the label, px
    qreal width = 0; // of the label, px
    int lane = 0;    // 0 is nearest the strip; -1: no room for the label
    friend bool operator==(const PlacedLabel&, const PlacedLabel&) = default;
};

// Labels stand to the right of their mark, else to its left, inside the strip,
// in the lowest lane where they touch neither another label nor the line of
// another mark that rises through the lane. Posts are placed first: their names
// are never left out for the sake of a peg's. `widths` are px, one per mark.
// O(n^2) for n marks.
QList<PlacedLabel> placeLabels(const QList<HorizonMark>& marks, const QList<qreal>& widths,
                               qreal stripWidth, qreal gap, int lanes);

// The same as a QML object that measures the labels in the application's font.
class LabelLanes : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QList<undermark::HorizonMark> marks MEMBER m_marks NOTIFY changed FINAL)
    Q_PROPERTY(int pixelSize MEMBER m_pixelSize NOTIFY changed FINAL)
    Q_PROPERTY(qreal stripWidth MEMBER m_stripWidth NOTIFY changed FINAL)
    Q_PROPERTY(qreal gap MEMBER m_gap NOTIFY changed FINAL)
    Q_PROPERTY(int lanes MEMBER m_lanes NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::PlacedLabel> placed READ placed NOTIFY changed FINAL)
    Q_PROPERTY(int lanesUsed READ lanesUsed NOTIFY changed FINAL)

public:
    using QObject::QObject;
    QList<PlacedLabel> placed() const;
    int lanesUsed() const;

signals:
    void changed();

private:
    QList<HorizonMark> m_marks;
    int m_pixelSize = 16;
    qreal m_stripWidth = 0;
    qreal m_gap = 8;
    int m_lanes = 3;
};

} // namespace undermark
