// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts

// What is set, in a line, and the one way to change it.
Pressable {
    id: root

    readonly property string way: qsTr("change")

    implicitHeight: Math.max(Theme.touch, implicitContentHeight + Theme.step)
    Accessible.name: text + ": " + way

    background: Rectangle {
        color: root.down ? Theme.track : "transparent"
        border.width: root.visualFocus ? 4 * Theme.hairline : 0
        border.color: Theme.ink
    }
    contentItem: RowLayout {
        spacing: 2 * Theme.step

        Text {
            Layout.fillWidth: true
            text: root.text
            color: Theme.ink
            font.pixelSize: Theme.small
            wrapMode: Text.Wrap
        }
        Text {
            text: root.way
            color: Theme.sure
            font.pixelSize: Theme.small
            font.bold: true
            font.underline: true
        }
    }
}
