// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// The one large number, under what it means. Many digits in little room are smaller.
Item {
    id: root

    required property string caption
    required property string number
    required property string unit

    readonly property real besideDigits: Theme.step + unitText.implicitWidth
    readonly property real fit: Math.min(1, Math.max(0.5, (width - besideDigits) / wanted.advanceWidth))

    implicitWidth: Math.max(captionText.implicitWidth, wanted.advanceWidth + besideDigits)
    implicitHeight: captionText.height + metrics.tightBoundingRect.height + Theme.step
    Accessible.role: Accessible.StaticText
    Accessible.name: caption + ": " + number + " " + unit

    TextMetrics {  // the digits' own height, without the room for accents
        id: metrics
        font: wanted.font
        text: "0"
    }
    TextMetrics {
        id: wanted
        font.pixelSize: Theme.huge
        font.bold: true
        text: root.number
    }
    Text {
        id: captionText
        height: Math.max(3 * Theme.step, Theme.line(Theme.body))
        text: root.caption
        color: Theme.ink
        font.pixelSize: Theme.body
        verticalAlignment: Text.AlignVCenter
    }
    Text {
        id: digits
        y: captionText.height + Theme.step / 2 - metrics.tightBoundingRect.y - baselineOffset
        text: root.number
        color: Theme.ink
        font.pixelSize: Math.floor(root.fit * Theme.huge)
        font.bold: true
    }
    Text {
        id: unitText
        anchors.left: digits.right
        anchors.leftMargin: Theme.step
        anchors.baseline: digits.baseline
        text: root.unit
        color: Theme.ink
        font.pixelSize: Theme.large
    }
}
