// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T

// A number to be typed: what it is, whether it is a guess, its value and unit.
T.AbstractButton {
    id: root

    required property string name
    required property string value
    required property string unit
    required property string hint
    required property string spoken
    property bool chosen: false

    implicitHeight: Theme.touch
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.EditableText
    Accessible.name: spoken
    Accessible.focused: chosen
    Accessible.onPressAction: click()
    Keys.onSpacePressed: click()

    background: Rectangle {
        radius: Theme.step
        color: Theme.surface
        border.width: (root.visualFocus ? 4 : root.chosen ? 3 : 1) * Theme.hairline
        border.color: root.visualFocus || root.chosen ? Theme.ink : Theme.edge
    }
    contentItem: Item {
        Text {
            id: nameText
            x: 1.5 * Theme.step
            y: Theme.step
            text: root.name
            color: Theme.quietInk
            font.pixelSize: Theme.small
        }
        Text {
            anchors.right: parent.right
            anchors.rightMargin: 1.5 * Theme.step
            anchors.baseline: nameText.baseline
            text: root.hint
            color: Theme.quietInk
            font.pixelSize: Theme.small
            font.italic: true
        }
        Text {
            anchors.right: unitText.left
            anchors.rightMargin: Theme.step
            anchors.baseline: unitText.baseline
            text: root.value
            color: Theme.ink
            font.pixelSize: Math.min(0.44 * root.height, 5 * Theme.step)
            font.italic: root.hint !== ""
        }
        Text {
            id: unitText
            anchors.right: parent.right
            anchors.rightMargin: 1.5 * Theme.step
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.step / 2
            text: root.unit
            color: Theme.ink
            font.pixelSize: Theme.body
        }
    }
}
