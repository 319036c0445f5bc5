// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What is known, name by value; a long value goes on below.
ColumnLayout {
    id: root

    required property list<fact> facts

    Layout.fillHeight: false
    spacing: Theme.step / 2

    Repeater {
        model: root.facts

        RowLayout {
            id: row
            required property fact modelData

            Layout.fillWidth: true
            Layout.fillHeight: false
            spacing: 2 * Theme.step

            Text {
                Layout.fillWidth: true
                Layout.preferredWidth: 2
                Layout.alignment: Qt.AlignTop
                text: row.modelData.name
                color: Theme.quietInk
                font.pixelSize: Theme.body
                wrapMode: Text.Wrap
            }
            Text {
                Layout.fillWidth: true
                Layout.preferredWidth: 3
                Layout.alignment: Qt.AlignTop
                text: row.modelData.value
                color: Theme.ink
                font.pixelSize: Theme.body
                wrapMode: Text.Wrap
            }
        }
    }
}
