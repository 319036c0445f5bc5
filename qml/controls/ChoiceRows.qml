// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// Things to choose, one below the other, each with its options side by side.
EvenGrid {
    id: root

    required property list<choice> choices

    signal chosen(choice: int, option: int)

    Repeater {
        model: root.choices

        Column {
            id: row
            required property choice modelData
            required property int index

            width: root.share
            Accessible.role: Accessible.Grouping
            Accessible.name: modelData.name

            Text {
                width: row.width
                text: row.modelData.name
                color: Theme.quietInk
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
            }
            ButtonGrid {
                width: row.width
                names: row.modelData.options
                current: row.modelData.current
                onChosen: option => root.chosen(row.index, option)
            }
        }
    }
}
