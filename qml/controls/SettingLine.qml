// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T

// What is set, in a line, and the one way to change it.
T.AbstractButton {
    id: root

    readonly property string way: qsTr("change")

    implicitHeight: Math.max(Theme.touch, implicitContentHeight + Theme.step)
    focusPolicy: Qt.TabFocus
    Accessible.role: Accessible.Button
    Accessible.name: text + ": " + way
    Accessible.onPressAction: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

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
