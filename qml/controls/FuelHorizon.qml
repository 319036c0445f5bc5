// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Undermark.App

// The road ahead as a strip: its height is the probability of getting there.
// Solid above the zero mark, hatched on the hidden reserve.
Item {
    id: root

    required property horizonPicture picture
    readonly property real laneHeight: Math.floor(1.25 * Theme.small)
    readonly property real rulerHeight: 2 * Theme.step + Math.floor(1.25 * Theme.small)

    implicitHeight: lanes.lanesUsed * laneHeight + 7 * Theme.step + rulerHeight
    Accessible.role: Accessible.Graphic
    Accessible.name: picture.spoken

    LabelLanes {
        id: lanes
        marks: root.picture.marks
        pixelSize: Theme.small
        stripWidth: root.width
        gap: Math.floor(1.25 * Theme.step)
        lanes: 2
    }

    Rectangle {
        id: strip
        y: lanes.lanesUsed * root.laneHeight
        width: root.width
        height: root.height - y - root.rulerHeight
        color: Theme.track
        clip: true

        Repeater {  // the hatching; what is not reserve is painted over below
            model: Math.ceil((strip.width + strip.height) / (1.5 * Theme.step))

            Rectangle {
                required property int index
                x: index * 1.5 * Theme.step - strip.height / 2
                y: -strip.height / 2
                width: 0.5 * Theme.step
                height: 2 * strip.height
                rotation: 30
                antialiasing: true
                color: Theme.reserve
            }
        }
        SeenShape {
            anchors.fill: parent
            // (Drawn while very narrow, strokes leave traces with the software renderer.)
            wanted: width > 16 * Theme.step

            ShapePath {
                scale: Qt.size(strip.width, strip.height)
                fillColor: Theme.track
                strokeColor: Theme.reserve
                strokeWidth: 2 * Theme.hairline
                PathPolyline { path: root.picture.notRunning }
            }
            ShapePath {
                scale: Qt.size(strip.width, strip.height)
                fillColor: Theme.sure
                strokeColor: Theme.sure
                strokeWidth: 1
                PathPolyline { path: root.picture.aboveZero }
            }
        }
    }

    Rectangle {  // where nothing gets to, too
        anchors.fill: strip
        color: "transparent"
        border.width: Theme.hairline
        border.color: Theme.edge
    }

    Repeater {  // posts, pegs and their names
        model: lanes.placed

        Item {
            id: place
            required property placedLabel modelData
            readonly property bool peg: modelData.mark.peg
            readonly property real laneY: (lanes.lanesUsed - 1 - modelData.lane) * root.laneHeight

            Rectangle {  // the post, edged so that it stands out on any ground
                readonly property real thickness: (place.peg ? 2 : 4) * Theme.hairline
                x: place.modelData.markX - width / 2
                y: place.laneY + (place.peg ? root.laneHeight / 2 : 0)
                width: thickness + 2 * Theme.hairline
                height: strip.y + strip.height - y + (place.peg ? 0 : Theme.step)
                color: Theme.ink
                border.width: Theme.hairline
                border.color: Theme.paper
            }
            Rectangle {
                visible: place.peg
                x: place.modelData.markX - width / 2
                y: place.laneY + (root.laneHeight - height) / 2
                width: 1.5 * Theme.step
                height: width
                rotation: 45
                antialiasing: true
                color: Theme.paper
                border.width: 2 * Theme.hairline
                border.color: Theme.ink
            }
            Text {
                visible: place.modelData.lane >= 0
                x: place.modelData.left
                y: place.laneY + (root.laneHeight - height) / 2
                text: place.modelData.mark.label
                color: Theme.ink
                font.pixelSize: Theme.small
            }
        }
    }

    Repeater {  // the ruler
        model: root.picture.ticks

        Item {
            id: tick
            required property horizonTickMark modelData
            readonly property real at: modelData.at * root.width

            y: strip.y + strip.height

            Rectangle {
                x: Math.min(tick.at, root.width - width)
                width: Theme.hairline
                height: (tick.modelData.major ? 1.5 : 0.75) * Theme.step
                color: Theme.ink
            }
            Text {
                visible: !(Theme.stacked && tick.modelData.spare)
                x: Math.max(0, Math.min(root.width - width, tick.at - width / 2))
                y: 1.75 * Theme.step
                text: tick.modelData.label
                color: Theme.ink
                font.pixelSize: Theme.small
            }
        }
    }
}
