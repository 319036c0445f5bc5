// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// Things to do, side by side in columns of one width. (To choose among: ButtonGrid.)
EvenGrid {
    id: root

    required property list<string> names

    signal picked(index: int)

    columns: Math.max(1, names.length)

    Repeater {
        model: root.names

        TouchButton {
            required property string modelData
            required property int index

            width: root.share
            text: modelData
            onClicked: root.picked(index)
        }
    }
}
