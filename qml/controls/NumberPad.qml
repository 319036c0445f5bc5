// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// Digits, the point and one step back, under the name and unit of the field
// that takes them. `flat` is four keys wide and three high.
Item {
    id: root

    required property string title // empty: it takes no room
    property string mark: "."  // the decimal mark
    property bool flat: false
    readonly property list<string> keys: flat
        ? ["7", "8", "9", "erase", "4", "5", "6", mark, "1", "2", "3", "0"]
        : ["7", "8", "9", "4", "5", "6", "1", "2", "3", mark, "0", "erase"]
    readonly property int columns: flat ? 4 : 3
    readonly property int rows: keys.length / columns
    readonly property real keyWidth: (width + Theme.step) / columns - Theme.step
    readonly property real keyHeight: (height - keysTop + Theme.step) / rows - Theme.step
    readonly property real keysTop: title !== "" ? Theme.line(Theme.body) + Theme.step : 0

    signal pressed(key: string)
    signal erased

    implicitHeight: keysTop + rows * (Theme.touch + Theme.step) - Theme.step
    implicitWidth: columns * (Theme.touch + Theme.step) - Theme.step

    Words {
        width: parent.width
        height: Theme.line(Theme.body)
        text: root.title
        font.bold: true
        verticalAlignment: Text.AlignVCenter
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Math.floor(1.625 * Theme.step)
        elide: Text.ElideRight
    }
    Repeater {
        model: root.keys

        TouchButton {
            required property string modelData
            required property int index
            readonly property bool erases: modelData === "erase"

            x: (index % root.columns) * (root.keyWidth + Theme.step)
            y: root.keysTop + Math.floor(index / root.columns) * (root.keyHeight + Theme.step)
            width: root.keyWidth
            height: root.keyHeight
            text: erases ? qsTr("Erase") : modelData
            face: erases && Theme.stacked ? "←" : text // (no language has room for the word there)
            textSize: erases && !Theme.stacked ? Theme.body : Theme.large
            Accessible.name: modelData === root.mark ? qsTr("decimal mark") : text
            onClicked: erases ? root.erased() : root.pressed(modelData)
        }
    }
}
