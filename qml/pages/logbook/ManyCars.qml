// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// A workshop's cars: found by name or by what is due, and one of them chosen.
Item {
    id: root

    required property CarList cars
    property bool naming: false

    signal chosen(row: int)
    signal anotherWanted
    signal goneBack

    onVisibleChanged: root.naming = false

    NameEntry {
        anchors.fill: parent
        visible: root.naming
        text: root.cars.name
        spoken: qsTr("a part of its name; %1").arg(root.cars.count)
        doneWord: qsTr("Show them")
        onEdited: text => root.cars.name = text
        onAccepted: root.naming = false
        onGoneBack: {
            root.cars.name = "";
            root.naming = false;
        }
    }
    PageScroll {
        width: root.width + 2 * Theme.step // (its slide mark stands in the page's margin)
        height: root.height
        visible: !root.naming

        ChoiceRows {
            Layout.fillWidth: true
            choices: root.cars.choices
            onChosen: (choice, option) => root.cars.choose(option)
        }
        EvenGrid {
            id: ways
            Layout.fillWidth: true
            columns: Theme.stacked ? 1 : 3

            TouchButton {
                width: ways.share
                text: qsTr("Back")
                onClicked: root.goneBack()
            }
            TouchButton {
                width: ways.share
                text: root.cars.name === "" ? qsTr("Find by name") : qsTr("name: %1").arg(root.cars.name)
                onClicked: root.naming = true
            }
            TouchButton {
                width: ways.share
                text: qsTr("Another car")
                onClicked: root.anotherWanted()
            }
        }
        WrapText {
            text: root.cars.count
            color: Theme.quietInk
            font.pixelSize: Theme.small
        }
        EvenGrid {
            id: lines
            Layout.fillWidth: true
            spacing: 0

            Repeater {
                model: root.visible ? root.cars.lines : []

                SettingLine {
                    required property carLine modelData

                    width: lines.share
                    text: modelData.name
                    letters: Theme.body
                    detail: modelData.detail
                    way: modelData.shown ? qsTr("is shown") : qsTr("show")
                    onClicked: root.chosen(modelData.row)
                }
            }
        }
        Item {
            Layout.fillHeight: true
        }
    }
}
