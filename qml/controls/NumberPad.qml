// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts

// Digits, the point and one step back, under the name and unit of the field
// that takes them.
GridLayout {
    id: root

    required property string title
    property bool flat: false
    readonly property list<string> keys: flat
        ? ["7", "8", "9", "erase", "4", "5", "6", ".", "1", "2", "3", "0"]
        : ["7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", "erase"]

    signal pressed(key: string)
    signal erased

    columns: flat ? 4 : 3
    columnSpacing: Theme.step
    rowSpacing: Theme.step

    Text {
        Layout.columnSpan: root.columns
        Layout.fillWidth: true
        text: root.title
        color: Theme.ink
        font.pixelSize: Theme.body
        font.bold: true
        elide: Text.ElideRight
    }
    Repeater {
        model: root.keys

        TouchButton {
            required property string modelData
            readonly property bool erases: modelData === "erase"

            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 1
            Layout.minimumHeight: Theme.touch
            Layout.maximumHeight: 1.5 * Theme.touch
            text: erases ? qsTr("Erase") : modelData
            textSize: erases ? Theme.body : Theme.large
            Accessible.name: modelData === "." ? qsTr("point") : text
            onClicked: erases ? root.erased() : root.pressed(modelData)
        }
    }
}
