// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// What is known, each value under its name, side by side; where there are many columns, each
// as wide as its words.
EvenGrid {
    id: root

    required property list<fact> facts

    Repeater {
        model: root.facts

        Column {
            id: column
            required property fact modelData

            width: root.columns > 3 ? implicitWidth : root.share
            Accessible.role: Accessible.StaticText
            Accessible.name: modelData.name + ": " + modelData.value

            Text {
                text: column.modelData.name
                color: Theme.quietInk
                font.pixelSize: Theme.small
            }
            Text {
                text: column.modelData.value
                color: Theme.ink
                font.pixelSize: Theme.body
            }
        }
    }
}
