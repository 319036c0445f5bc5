// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The whole logbook out; fills or trips of a table, or another logbook, in.
ColumnLayout {
    id: root

    required property TransferViewModel view

    spacing: Theme.step

    FilePicker {
        Layout.fillWidth: true
        Layout.rightMargin: -2 * Theme.step
        Layout.fillHeight: true
        visible: root.view.picking
        watching: root.visible
        title: root.view.title
        notices: root.view.notices
        files: root.view.files
        hint: root.view.text
        onPicked: row => root.view.pick(row)
    }
    PageScroll {
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: !root.view.picking

        WrapText {
            text: root.view.title
            font.pixelSize: Theme.large
        }
        NoticeBar {
            Layout.fillWidth: true
            notices: root.view.notices
        }
        WrapText {
            text: root.view.text
        }
        TouchButton {
            Layout.fillWidth: true
            visible: root.view.starting
            text: qsTr("Export the whole logbook")
            onClicked: root.view.exportAll()
        }
        EvenGrid {
            id: sticks
            Layout.fillWidth: true
            visible: root.view.starting && root.view.sticks.length > 0

            Repeater {
                model: root.view.sticks

                TouchButton {
                    required property string modelData
                    required property int index

                    width: sticks.share
                    text: qsTr("Export to %1").arg(modelData)
                    onClicked: root.view.exportTo(index)
                }
            }
        }
        TouchButton {
            Layout.fillWidth: true
            visible: root.view.starting
            text: qsTr("Take in fills from a table")
            onClicked: root.view.chooseTable()
        }
        TouchButton {
            Layout.fillWidth: true
            visible: root.view.starting
            text: qsTr("Take in trips from a table")
            onClicked: root.view.chooseTrips()
        }
        TouchButton {
            Layout.fillWidth: true
            visible: root.view.starting
            text: qsTr("Take in another device's logbook")
            onClicked: root.view.chooseLogbook()
        }
        ChoiceRows {
            Layout.fillWidth: true
            visible: root.view.stating
            choices: root.view.units
            onChosen: (choice, option) => root.view.chooseUnit(choice, option)
        }
        FactList {
            Layout.fillWidth: true
            nameShare: Theme.stacked ? 0.56 : 0.42
            facts: root.view.facts
        }
        Item {
            Layout.fillHeight: true
        }
    }
    RowLayout {
        Layout.fillHeight: false
        visible: !root.view.starting
        spacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Back")
            onClicked: root.view.back()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            visible: root.view.confirmWord !== ""
            text: root.view.confirmWord
            leading: true
            onClicked: root.view.confirm()
        }
    }
}
