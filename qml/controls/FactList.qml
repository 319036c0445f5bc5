// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// What is known, name by value; long ones are wrapped.
Column {
    id: root

    required property list<fact> facts
    property real nameShare: 0.42

    spacing: Theme.step / 2

    Repeater {
        model: root.facts

        Item {
            id: row
            required property fact modelData

            width: root.width
            height: Math.max(nameText.height, valueText.height)
            implicitHeight: height

            Text {
                id: nameText
                width: Math.floor(root.nameShare * root.width) - 2 * Theme.step
                text: row.modelData.name
                color: Theme.quietInk
                font.pixelSize: Theme.body
                wrapMode: Text.Wrap
            }
            Text {
                id: valueText
                x: Math.floor(root.nameShare * root.width)
                width: root.width - x
                text: row.modelData.value
                color: Theme.ink
                font.pixelSize: Theme.body
                wrapMode: Text.Wrap
            }
        }
    }
}
