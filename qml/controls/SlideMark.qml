// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// How much of a sliding view is seen, and where: a line at its right edge.
Rectangle {
    id: root

    required property Flickable view
    readonly property real length: view.contentHeight + view.topMargin + view.bottomMargin
    readonly property real share: view.height / Math.max(1, length)

    visible: share < 0.999
    x: view.width - width
    width: Math.floor(0.75 * Theme.step)
    radius: width / 2
    height: Math.max(4 * Theme.step, view.height * share)
    y: (view.height - height) * Math.max(0, Math.min(1, (view.contentY - view.originY + view.topMargin)
                                         / Math.max(1, length - view.height)))
    color: Theme.edge
}
