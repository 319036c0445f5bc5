// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The first run: a car in four answers, or the demo car; or one more car.
FocusScope {
    id: root

    required property SetupViewModel view
    readonly property bool portrait: height > width

    Keys.onPressed: event => entry.take(event)
    Keys.onEscapePressed: root.view.leave()

    PageScroll {
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: Theme.step
            topMargin: 1.5 * Theme.step
            bottomMargin: 1.5 * Theme.step
        }

        NoticeBar {
            Layout.fillWidth: true
            notices: root.view.notices
        }
        Item {
            id: board
            readonly property real half: Math.floor((width - 3 * Theme.step) * 0.55)

            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: root.portrait ? left.implicitHeight + entry.implicitHeight + Theme.step
                                                : Math.max(left.implicitHeight, entry.implicitHeight)

            ColumnLayout {
                id: left
                width: root.portrait ? board.width : board.half
                spacing: Theme.step

                WrapText {
                    text: qsTr("Which car?")
                    font.pixelSize: Theme.large
                }
                TextEntry {
                    Layout.fillWidth: true
                    text: root.view.name
                    spoken: qsTr("name of the car")
                    onEdited: text => root.view.name = text
                    onAccepted: root.view.save()
                }
                ButtonGrid {
                    Layout.fillWidth: true
                    columns: Theme.stacked ? 2 : 4
                    names: root.view.fuels
                    current: root.view.fuel
                    onChosen: index => root.view.selectFuel(index)
                }
                FieldColumn {
                    Layout.fillWidth: true
                    form: root.view.form
                }
                TouchButton {
                    Layout.fillWidth: true
                    text: root.view.another ? qsTr("Not now") : qsTr("Look at the demo car")
                    onClicked: root.view.another ? root.view.leave() : root.view.lookAtDemo()
                }
            }
            NumberEntry {
                id: entry
                x: root.portrait ? 0 : board.half + 3 * Theme.step
                y: root.portrait ? left.height + Theme.step : 0
                width: board.width - x
                height: root.portrait ? implicitHeight
                                      : Math.max(implicitHeight, Math.min(board.height, root.height - 3 * Theme.step))
                portrait: root.portrait
                form: root.view.form
                doneWord: qsTr("Set up this car")
                onDone: root.view.save()
            }
        }
    }
}
