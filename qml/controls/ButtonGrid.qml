// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// Buttons in columns of one width, one of them perhaps chosen.
EvenGrid {
    id: root

    required property list<string> names
    property int current: -1
    property real buttonHeight: Theme.touch
    property bool tabs: false

    signal chosen(index: int)

    columns: Math.max(1, names.length)

    Repeater {
        model: root.names

        TouchButton {
            required property string modelData
            required property int index

            width: root.share
            height: Math.max(Theme.touch, root.buttonHeight)
            text: modelData
            chosen: index === root.current
            tab: root.tabs
            Accessible.role: root.tabs ? Accessible.PageTab : Accessible.RadioButton
            onClicked: root.chosen(index)
        }
    }
}
