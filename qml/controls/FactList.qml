// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// What is known, name by value; long ones are wrapped. In large letters on a
// narrow page the value stands below its name.
EvenGrid {
    id: root

    required property list<fact> facts
    property real nameShare: 0.42
    readonly property bool below: Theme.stacked && width < 60 * Theme.step

    rowSpacing: Theme.step / 2

    Repeater {
        model: root.facts

        Item {
            id: row
            required property fact modelData

            width: root.share
            height: root.below ? nameText.height + valueText.height : Math.max(nameText.height, valueText.height)
            implicitHeight: height
            Accessible.role: Accessible.StaticText
            Accessible.name: modelData.name + ": " + modelData.value

            Text {
                id: nameText
                width: root.below ? root.width : Math.floor(root.nameShare * root.width) - 2 * Theme.step
                text: row.modelData.name
                color: Theme.quietInk
                font.pixelSize: Theme.body
                wrapMode: Text.Wrap
            }
            Text {
                id: valueText
                x: root.below ? 2 * Theme.step : Math.floor(root.nameShare * root.width)
                y: root.below ? nameText.height : 0
                width: root.width - x
                text: row.modelData.value
                color: Theme.ink
                font.pixelSize: Theme.body
                wrapMode: Text.Wrap
            }
        }
    }
}
