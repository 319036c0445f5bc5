// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts

// What is set, in a line, and the one way to change it; below it maybe what to know of it.
Pressable {
    id: root

    property string way: qsTr("change")
    property string detail: ""
    property real letters: Theme.small  // of the line
    property bool crossed: false

    implicitHeight: Math.max(Theme.touch, implicitContentHeight + Theme.step)
    Accessible.name: (detail === "" ? text : text + ", " + detail) + ": " + way

    background: Rectangle {
        color: root.down ? Theme.track : "transparent"
        border.width: root.visualFocus ? 4 * Theme.hairline : 0
        border.color: Theme.ink
    }
    contentItem: RowLayout {
        spacing: 2 * Theme.step

        ColumnLayout {
            Layout.fillWidth: true
            spacing: 0

            Text {
                Layout.fillWidth: true
                text: root.text
                color: root.crossed ? Theme.quietInk : Theme.ink
                font.pixelSize: root.letters
                font.strikeout: root.crossed
                wrapMode: Text.Wrap
            }
            Text {
                Layout.fillWidth: true
                visible: text !== ""
                text: root.detail
                color: Theme.quietInk
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
            }
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
