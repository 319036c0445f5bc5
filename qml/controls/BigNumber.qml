// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// The one large number, under what it means.
Item {
    id: root

    required property string caption
    required property string number
    required property string unit

    implicitWidth: Math.max(captionText.implicitWidth, unitText.x + unitText.implicitWidth)
    implicitHeight: captionText.height + digits.height
    Accessible.role: Accessible.StaticText
    Accessible.name: caption + ": " + number + " " + unit

    Text {
        id: captionText
        height: 3 * Theme.step
        text: root.caption
        color: Theme.ink
        font.pixelSize: Theme.body
        verticalAlignment: Text.AlignVCenter
    }
    Text {
        id: digits
        anchors.top: captionText.bottom
        height: 11 * Theme.step
        text: root.number
        color: Theme.ink
        font.pixelSize: Theme.huge
        font.bold: true
        verticalAlignment: Text.AlignVCenter
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
