// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
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

    component Head: Item {
        id: head
        required property string name
        required property string hint

        implicitHeight: nameText.height

        Text {
            id: nameText
            width: head.width - (hintText.visible ? hintText.width + Theme.step : 0)
            text: head.name
            color: Theme.quietInk
            font.pixelSize: Theme.small
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Math.floor(1.625 * Theme.step)
            elide: Text.ElideRight
        }
        Text {  // the slanted number says it too, where this has no room
            id: hintText
            anchors.right: parent.right
            visible: text !== "" && nameText.implicitWidth + width + 2 * Theme.step < head.width
            text: head.hint
            color: Theme.quietInk
            font.pixelSize: Theme.small
            font.italic: true
        }
    }

    implicitHeight: Math.max(Theme.touch, Theme.line(Theme.small) + Theme.line(Theme.body) + Theme.step)
    focusPolicy: Qt.TabFocus  // a touch leaves the keys with the page
    Accessible.ignored: true // the field below is told, since Qt 6.4 tells of a button whatever its role
    Accessible.name: spoken
    Keys.onSpacePressed: root.clicked()

    Item {
        readonly property string text: root.value // to a reader, a field's value

        anchors.fill: parent
        Accessible.role: Accessible.EditableText
        Accessible.name: root.spoken
        Accessible.focused: root.chosen
        Accessible.onPressAction: root.clicked()
    }

    background: Rectangle {
        radius: Theme.step
        color: Theme.surface
        border.width: (root.visualFocus ? 4 : root.chosen ? 3 : 1) * Theme.hairline
        border.color: root.visualFocus || root.chosen ? Theme.ink : Theme.edge
    }
    contentItem: ColumnLayout {
        spacing: 0

        Head {
            Layout.fillWidth: true
            name: root.name
            hint: root.hint
        }
        RowLayout {
            Layout.fillHeight: true
            spacing: Theme.step

            Text {
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBaseline
                text: root.value
                color: Theme.ink
                font.pixelSize: Math.max(Theme.body, Math.min(0.44 * (root.height - Theme.line(Theme.small) + 2.5 * Theme.step), 5 * Theme.step))
                fontSizeMode: Text.HorizontalFit   // a long odometer shrinks, it is never cut
                minimumPixelSize: 2 * Theme.step
                font.italic: root.hint !== ""
                horizontalAlignment: Text.AlignRight
            }
            Text {
                Layout.alignment: Qt.AlignBaseline
                text: root.unit
                color: Theme.ink
                font.pixelSize: Theme.body
            }
        }
    }
    padding: Theme.step / 2
    leftPadding: 1.5 * Theme.step
    rightPadding: 1.5 * Theme.step
}
