// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The gauge table: what to type into whatever gauge is fitted.
PageScroll {
    id: root

    required property TankViewModel view

    GridLayout {
        Layout.fillWidth: true
        Layout.fillHeight: false
        visible: root.view.hasTable
        columns: root.width > 60 * Theme.step && !Theme.stacked ? 4 : 2
        columnSpacing: Theme.step
        rowSpacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Fewer")
            Accessible.description: root.view.tableSize
            onClicked: root.view.changeTableSize(-1)
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("More")
            Accessible.description: root.view.tableSize
            onClicked: root.view.changeTableSize(1)
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: root.view.tableUnit
            onClicked: root.view.switchTableUnit()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: root.view.tableDecimals
            onClicked: root.view.changeTableDecimals()
        }
    }
    EvenGrid {
        id: grid
        Layout.fillWidth: true
        columns: root.width > 60 * Theme.step && !Theme.stacked ? 2 : 1
        columnSpacing: 4 * Theme.step
        rowSpacing: 0

        Repeater {
            model: root.view.table

            Item {
                id: row
                required property fact modelData

                width: grid.share
                height: Theme.line(Theme.body) + Theme.step
                Accessible.role: Accessible.StaticText
                Accessible.name: modelData.name + ": " + modelData.value

                Text {
                    height: parent.height
                    text: row.modelData.name
                    color: Theme.ink
                    font.pixelSize: Theme.body
                    verticalAlignment: Text.AlignVCenter
                }
                Text {
                    anchors.right: parent.right
                    height: parent.height
                    text: row.modelData.value
                    color: Theme.ink
                    font.pixelSize: Theme.body
                    font.bold: true
                    verticalAlignment: Text.AlignVCenter
                }
                Rectangle {
                    anchors.bottom: parent.bottom
                    width: parent.width
                    height: Theme.hairline
                    color: Theme.track
                }
            }
        }
    }
    WrapText {
        text: root.view.tableNote
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    Item {
        Layout.fillHeight: true
    }
    RowLayout {
        Layout.fillHeight: false
        visible: root.view.hasTable
        spacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Copy")
            onClicked: root.view.copyTable()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Write a file")
            onClicked: root.view.exportTable()
        }
    }
    WrapText {
        visible: text !== ""
        text: root.view.tableDone
        font.pixelSize: Theme.small
    }
}
