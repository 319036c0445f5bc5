// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Undermark.App

// A line, its band, points and two axes.
Item {
    id: root

    required property plotPicture picture
    readonly property real labelHeight: Theme.line(Theme.small)
    readonly property var yTicks: picture.yTicks // (var: qmllint 6.4 knows no map() of a list of values)
    readonly property real widestY: Math.max(0, ...yTicks.map(tick => letters.advanceWidth(tick.label)))

    implicitHeight: 24 * Theme.step + 2.5 * labelHeight
    Accessible.role: Accessible.Graphic
    Accessible.name: picture.spoken

    FontMetrics {
        id: letters
        font.pixelSize: Theme.small
    }
    Text {
        id: yTitle
        width: root.width - xTitle.width - Theme.step
        elide: Text.ElideRight
        text: root.picture.yTitle
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    Text {
        id: xTitle
        anchors.right: parent.right
        text: root.picture.xTitle
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    Item {
        id: area
        x: Math.ceil(root.widestY) + Theme.step
        y: root.labelHeight + Math.max(Theme.step / 2, root.labelHeight / 2) // half a label above it
        width: root.width - x
        height: root.height - y - root.labelHeight - Theme.step

        Repeater {
            model: root.picture.yTicks

            Item {
                id: level
                required property horizonTickMark modelData
                readonly property real at: modelData.at * area.height

                Rectangle {
                    y: level.at
                    width: area.width
                    height: Theme.hairline
                    color: Theme.track
                }
                Text {
                    visible: !(Theme.stacked && level.modelData.spare)
                    x: -width - Theme.step
                    y: level.at - height / 2
                    text: level.modelData.label
                    color: Theme.ink
                    font.pixelSize: Theme.small
                }
            }
        }
        Repeater {
            model: root.picture.xTicks

            Item {
                id: column
                required property horizonTickMark modelData
                required property int index
                readonly property real at: modelData.at * area.width
                // The last one goes where it and the first have no room side by side.
                readonly property bool roomy: index === 0 || index < root.picture.xTicks.length - 1
                    || area.width > 2 * xLabel.width + 2 * Theme.step

                y: area.height

                Rectangle {
                    x: Math.min(column.at, area.width - width)
                    width: Theme.hairline
                    height: Theme.step / 2
                    color: Theme.ink
                }
                Text {
                    id: xLabel
                    visible: column.roomy && !(Theme.stacked && column.modelData.spare)
                    x: Math.max(0, Math.min(area.width - width, column.at - width / 2))
                    y: Theme.step / 2
                    text: column.modelData.label
                    color: Theme.ink
                    font.pixelSize: Theme.small
                }
            }
        }
        SeenShape {
            anchors.fill: parent
            clip: true
            // (Drawn while very narrow, strokes leave traces with the software renderer.)
            wanted: !root.picture.empty && width > 16 * Theme.step

            ShapePath {
                scale: Qt.size(area.width, area.height)
                fillColor: Theme.track
                strokeColor: root.picture.hasBand ? Theme.edge : "transparent"
                strokeWidth: Theme.hairline
                PathPolyline { path: root.picture.band }
            }
            ShapePath {
                scale: Qt.size(area.width, area.height)
                fillColor: "transparent"
                strokeColor: Theme.sure
                strokeWidth: 2 * Theme.hairline
                PathPolyline { path: root.picture.line }
            }
        }
        Rectangle {  // the named level
            visible: root.picture.postAt >= 0
            y: root.picture.postAt * area.height - height / 2
            width: area.width
            height: 2 * Theme.hairline
            color: Theme.reserve
        }
        Text {
            visible: root.picture.postAt >= 0
            x: area.width - width
            y: root.picture.postAt * area.height - height - Theme.hairline
            text: root.picture.postName
            color: Theme.reserve
            font.pixelSize: Theme.small
        }
        Repeater {
            model: root.picture.marks

            Item {
                id: mark
                required property plotMark modelData

                x: modelData.x * area.width
                y: modelData.y * area.height

                Rectangle {  // how far the line is missed
                    visible: mark.modelData.missBy !== 0
                    x: -width / 2
                    y: Math.min(0, mark.modelData.missBy * area.height)
                    width: 2 * Theme.hairline
                    height: Math.abs(mark.modelData.missBy) * area.height
                    color: Theme.ink
                }
                Rectangle {
                    x: -width / 2
                    y: -height / 2
                    width: Theme.step
                    height: width
                    radius: width / 2
                    color: mark.modelData.odd ? Theme.paper : Theme.ink
                    border.width: 2 * Theme.hairline
                    border.color: mark.modelData.odd ? Theme.caution : Theme.ink
                }
            }
        }
    }
}
