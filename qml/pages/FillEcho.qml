// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What the fill just saved has taught.
ColumnLayout {
    id: root

    required property PumpViewModel view

    spacing: 2 * Theme.step

    Text {
        Layout.fillWidth: true
        text: root.view.savedTitle
        color: Theme.ink
        font.pixelSize: Theme.large
        font.bold: true
    }
    Repeater {
        model: root.view.lesson

        GridLayout {
            id: row
            required property lessonRow modelData

            Layout.fillWidth: true
            columns: 2
            columnSpacing: 2 * Theme.step
            rowSpacing: Theme.step / 2

            Text {
                Layout.columnSpan: 2
                text: row.modelData.name
                color: Theme.quietInk
                font.pixelSize: Theme.body
            }
            Text {
                Layout.preferredWidth: 5 * Theme.step + 4 * Theme.step * Theme.textScale
                text: qsTr("was")
                color: Theme.quietInk
                font.pixelSize: Theme.body
            }
            Text {
                Layout.fillWidth: true
                text: row.modelData.before
                wrapMode: Text.Wrap
                color: Theme.quietInk
                font.pixelSize: Theme.body
            }
            Text {
                Layout.preferredWidth: 5 * Theme.step + 4 * Theme.step * Theme.textScale
                text: qsTr("now")
                color: Theme.ink
                font.pixelSize: Theme.body
            }
            Text {
                Layout.fillWidth: true
                text: row.modelData.after
                wrapMode: Text.Wrap
                color: Theme.ink
                font.pixelSize: Theme.large
            }
        }
    }
    Item {
        Layout.fillHeight: true
    }
    RowLayout {
        spacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Undo")
            Accessible.description: qsTr("Takes this fill back out of the logbook")
            onClicked: root.view.undo()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Next fill")
            leading: true
            onClicked: root.view.startAgain()
        }
    }
}
