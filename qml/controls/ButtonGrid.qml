// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// Buttons in columns of one width, one of them perhaps chosen.
Grid {
    id: root

    required property list<string> names
    property int current: -1
    property real buttonHeight: Theme.touch
    // (1 at least: a Grid leaves out children of no width, gets narrower, and they wider,
    // without end.)
    readonly property real share: Math.max(1, Math.floor((width - (columns - 1) * spacing) / columns))

    signal chosen(index: int)

    columns: Math.max(1, names.length)
    spacing: Theme.step

    Repeater {
        model: root.names

        TouchButton {
            required property string modelData
            required property int index

            width: root.share
            height: Math.max(Theme.touch, root.buttonHeight)
            text: modelData
            chosen: index === root.current
            Accessible.role: Accessible.RadioButton
            onClicked: root.chosen(index)
        }
    }
}
