// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// One row of the route: how far it is, how one drives on, what fuel there is; and
// what the plan says to it. (By anchors: a layout of wrapped texts in another layout has it
// polished for ever in large letters, Qt 6.4.)
Item {
    id: root

    required property PlanViewModel plan
    required property bool portrait
    readonly property RouteEditModel view: plan.editor

    property bool lettersWanted: false
    readonly property bool naming: lettersWanted && view.part === RouteEditModel.Row

    function take(event: KeyEvent) {
        if (!root.naming)
            board.take(event);
    }

    GridLayout {
        id: head
        visible: !root.naming
        // In large letters the words need the whole width, above the buttons.
        readonly property bool narrow: Theme.stacked && root.width < 60 * Theme.step

        width: parent.width
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

            Words {
                width: parent.width
                text: root.view.name
                font.bold: true
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.Wrap
                maximumLineCount: 2  // the name is the user's own, however long
                elide: Text.ElideRight
            }
            Words {
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
    FormBoard {
        id: board
        anchors {
            top: head.bottom
            topMargin: Theme.step / 2  // so that an 800 x 480 screen shows all of the pad
            bottom: parent.bottom
        }
        width: root.width + 2 * Theme.step
        visible: !root.naming
        portrait: root.portrait
        form: root.view.form
        padded: root.view.part !== RouteEditModel.Row
        doneWord: root.view.doneWord
        backWord: root.view.undoWord
        onDone: root.view.done()
        onGoneBack: root.view.undo()

        NoticeBar {
            Layout.fillWidth: true
            notices: root.view.notices
        }
        ModeBar {
            Layout.fillWidth: true
            tabs: true
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
        TouchButton {
            Layout.fillWidth: true
            visible: root.view.part === RouteEditModel.Road && text !== ""
            text: root.view.timedWord
            Accessible.description: qsTr("Whether running dry there ends the event; press to change it")
            onClicked: root.view.switchTimed()
        }
        WrapText {
            visible: root.view.part === RouteEditModel.Fuel && root.view.knownPumps.length > 0
            text: qsTr("pumps of your routes")
            color: Theme.quietInk
            font.pixelSize: Theme.small
        }
        ButtonGrid {
            Layout.fillWidth: true
            visible: root.view.part === RouteEditModel.Fuel && root.view.knownPumps.length > 0
            columns: Theme.stacked ? 1 : 2
            names: root.view.knownPumps
            onChosen: index => root.view.takeKnownPump(index)
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
            text: qsTr("Letters")
            onClicked: root.lettersWanted = true
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
    NameEntry {
        width: root.width + 2 * Theme.step
        height: root.height
        visible: root.naming
        text: root.view.typedName
        spoken: nameEntry.spoken
        doneWord: qsTr("Take the name")
        onEdited: text => root.view.typeName(text)
        onAccepted: {
            root.lettersWanted = false;
            root.view.takeName();
        }
        onGoneBack: root.lettersWanted = false
    }
}
