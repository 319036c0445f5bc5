// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// One row of the route: how far it is, how one drives on, what fuel there is; and
// what the plan says to it.
ColumnLayout {
    id: root

    required property PlanViewModel plan
    required property bool portrait
    readonly property RouteEditModel view: plan.editor

    function take(event: KeyEvent) {
        entry.take(event);
    }

    spacing: Theme.step / 2  // so that an 800 x 480 screen shows all of the pad

    GridLayout {
        id: head
        // In large letters the words need the whole width, above the buttons.
        readonly property bool narrow: Theme.stacked && root.width < 60 * Theme.step

        Layout.fillHeight: false
        columnSpacing: 2 * Theme.step
        rowSpacing: Theme.step / 2

        TouchButton {
            Layout.row: head.narrow ? 1 : 0
            Layout.column: 0
            Layout.fillWidth: head.narrow
            Layout.preferredWidth: 12 * Theme.step
            enabled: !root.view.first
            opacity: enabled ? 1 : 0.4
            text: qsTr("Row before")
            onClicked: root.view.step(-1)
        }
        Column {
            Layout.row: 0
            Layout.column: head.narrow ? 0 : 1
            Layout.columnSpan: head.narrow ? 2 : 1
            Layout.fillWidth: true

            Text {
                width: parent.width
                text: root.view.name
                color: Theme.ink
                font.pixelSize: Theme.body
                font.bold: true
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.Wrap
                maximumLineCount: 2  // the name is the user's own, however long
                elide: Text.ElideRight
            }
            Text {
                width: parent.width
                text: root.view.place
                color: Theme.quietInk
                font.pixelSize: Theme.small
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.Wrap
            }
        }
        TouchButton {
            Layout.row: head.narrow ? 1 : 0
            Layout.column: head.narrow ? 1 : 2
            Layout.fillWidth: head.narrow
            Layout.preferredWidth: 12 * Theme.step
            enabled: !root.view.last
            opacity: enabled ? 1 : 0.4
            text: qsTr("Row after")
            onClicked: root.view.step(1)
        }
    }
    PageScroll {
        id: scroll
        Layout.fillWidth: true
        Layout.fillHeight: true

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
                    notices: root.view.notices
                }
                ModeBar {
                    Layout.fillWidth: true
                    names: root.view.parts
                    current: root.view.part
                    onChosen: index => root.view.selectPart(index)
                }
                ButtonGrid {
                    Layout.fillWidth: true
                    visible: root.view.part === RouteEditModel.Fuel
                    columns: 2
                    names: root.view.fuels
                    current: root.view.fuel
                    onChosen: index => root.view.selectFuel(index)
                }
                Item {
                    Layout.fillWidth: true
                    implicitHeight: behind.visible && Theme.stacked ? behind.y + behind.height : fields.height

                    FieldColumn {
                        id: fields
                        width: parent.width
                        form: root.view.form
                        narrowRow: behind.visible && !Theme.stacked ? 0 : -1
                        narrowBy: behind.width + Theme.step
                    }
                    TouchButton {  // beside the leg, or below it
                        id: behind
                        anchors.right: parent.right
                        y: Theme.stacked ? fields.height + Theme.step : 0
                        width: Theme.stacked ? parent.width : 15 * Theme.step
                        height: Theme.stacked ? implicitHeight : fields.height
                        visible: root.view.part === RouteEditModel.Road && !root.view.first && !root.view.last
                        text: root.view.behindWord
                        textSize: Theme.small
                        Accessible.description: qsTr("What another distance does to the rows behind; "
                                                     + "press to change it")
                        onClicked: root.view.switchBehind()
                    }
                }
                ButtonGrid {
                    Layout.fillWidth: true
                    visible: root.view.part === RouteEditModel.Road && !root.view.last
                    columns: 2
                    names: root.view.modes
                    current: root.view.mode
                    onChosen: index => root.view.selectMode(index)
                }
                WrapText {
                    visible: root.view.part === RouteEditModel.Row
                    text: nameEntry.spoken
                    color: Theme.quietInk
                    font.pixelSize: Theme.small
                }
                TextEntry {
                    id: nameEntry
                    Layout.fillWidth: true
                    visible: root.view.part === RouteEditModel.Row
                    text: root.view.typedName
                    spoken: qsTr("name of the row")
                    onEdited: text => root.view.typeName(text)
                    onAccepted: root.view.done()
                }
                TouchButton {
                    Layout.fillWidth: true
                    visible: root.view.part === RouteEditModel.Row
                    text: qsTr("Add a row after this one")
                    onClicked: root.view.addRow()
                }
                TouchButton {
                    Layout.fillWidth: true
                    visible: root.view.part === RouteEditModel.Row
                    text: qsTr("Remove this row")
                    onClicked: root.view.removeRow()
                }
                WrapText {
                    visible: text !== ""
                    text: root.plan.answer.summary
                    color: Theme.quietInk
                    font.pixelSize: Theme.small
                }
                NoticeBar {
                    Layout.fillWidth: true
                    notices: root.plan.answer.feasible ? [] : root.plan.notices
                }
            }
            NumberEntry {
                id: entry
                x: root.portrait ? 0 : board.half + 3 * Theme.step
                y: root.portrait ? left.height + Theme.step : 0
                width: board.width - x
                height: root.portrait ? implicitHeight
                                      : Math.max(implicitHeight, Math.min(board.height, scroll.height))
                portrait: root.portrait
                form: root.view.form
                padded: root.view.part !== RouteEditModel.Row
                doneWord: root.view.doneWord
                backWord: root.view.undoWord
                onDone: root.view.done()
                onGoneBack: root.view.undo()
            }
        }
    }
}
