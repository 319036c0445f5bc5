// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Where the car is on the route, for planning what is left; and the card.
PageScroll {
    id: root

    required property PlanViewModel view
    required property bool portrait

    function take(event: KeyEvent) {
        entry.take(event);
    }

    Item {
        id: board
        readonly property real half: Math.floor((width - 3 * Theme.step) * 0.5)

        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: root.portrait ? left.implicitHeight + entry.implicitHeight + Theme.step
                                            : Math.max(left.implicitHeight, entry.implicitHeight)

        ColumnLayout {
            id: left
            width: root.portrait ? board.width : board.half
            spacing: Theme.step

            NoticeBar {
                Layout.fillWidth: true
                notices: root.view.here.notices
            }
            WrapText {
                text: qsTr("Plan what is left of the route, with the fuel the car has now.")
                font.pixelSize: Theme.small
            }
            FieldColumn {
                Layout.fillWidth: true
                form: root.view.here.form
            }
            TouchButton {
                Layout.fillWidth: true
                text: qsTr("Plan from here")
                leading: true
                onClicked: root.view.here.plan()
            }
            TouchButton {
                Layout.fillWidth: true
                text: qsTr("Plan the whole route")
                onClicked: root.view.here.planWhole()
            }
            TouchButton {
                Layout.fillWidth: true
                visible: root.view.answer.feasible
                text: qsTr("Write the fuel card")
                onClicked: root.view.card.write()
            }
            WrapText {
                visible: text !== ""
                text: root.view.card.done
                font.pixelSize: Theme.small
            }
        }
        NumberEntry {
            id: entry
            x: root.portrait ? 0 : board.half + 3 * Theme.step
            y: root.portrait ? left.height + Theme.step : 0
            width: board.width - x
            height: root.portrait ? implicitHeight
                                  : Math.max(implicitHeight, Math.min(board.height, root.height))
            portrait: root.portrait
            form: root.view.here.form
            onDone: root.view.here.plan()
        }
    }
}
