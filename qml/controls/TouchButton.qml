// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// A raised piece of paper to press; `chosen` says which of several is on,
// `leading` which one is the next thing to do. A `tab` names a view: it lies flat, on a line.
Pressable {
    id: root

    property bool chosen: false
    property bool leading: false
    property bool tab: false
    property int textSize: Theme.body
    property string face: text  // what is drawn; `text` is what it does, and is read

    implicitWidth: Math.max(Theme.touch, implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Theme.touch

    background: Rectangle {
        radius: root.tab ? 0 : Theme.step
        color: root.leading ? Theme.sure : root.down ? Theme.track : root.tab ? "transparent" : Theme.surface
        border.width: (root.visualFocus ? 4 : root.tab ? 0 : root.chosen ? 3 : 1) * Theme.hairline
        border.color: root.visualFocus || root.chosen ? Theme.ink : Theme.edge

        Rectangle {
            visible: root.tab
            anchors.bottom: parent.bottom
            width: parent.width
            height: (root.chosen ? 5 : 2) * Theme.hairline
            color: root.chosen ? Theme.sure : Theme.edge
        }
    }
    contentItem: Text {
        text: root.face
        color: root.leading ? Theme.inkOnSure : Theme.ink
        font.pixelSize: root.textSize
        font.bold: root.chosen || root.leading
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.WordWrap
        fontSizeMode: Text.Fit
        minimumPixelSize: Math.floor(1.625 * Theme.step)
    }
    leftPadding: Theme.step
    rightPadding: Theme.step
}
