// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What makes the car burn more than its log says, in the user's word and a percentage.
Item {
    id: root

    required property NowLoad load
    required property bool portrait
    property bool naming: false

    signal closed

    function take(event: KeyEvent) {
        if (!root.naming)
            board.take(event);
    }

    NameEntry {
        anchors.fill: parent
        visible: root.naming
        text: root.load.word
        spoken: qsTr("what makes it burn more")
        doneWord: qsTr("Take the word")
        onEdited: text => root.load.typeWord(text)
        onAccepted: root.naming = false
        onGoneBack: root.naming = false
    }
    FormBoard {
        id: board
        anchors.fill: parent
        visible: !root.naming
        portrait: root.portrait
        form: root.load.form
        doneWord: qsTr("Answer for this")
        backWord: qsTr("Back")
        onDone: root.load.take()
        onGoneBack: root.closed()

        NoticeBar {
            Layout.fillWidth: true
            notices: root.load.notices
        }
        WrapText {
            text: qsTr("More than the log says, since the last fill and ahead.")
            font.pixelSize: Theme.small
        }
        SettingLine {
            Layout.fillWidth: true
            text: qsTr("because of: %1").arg(root.load.word)
            onClicked: root.naming = true
        }
        ButtonGrid {
            Layout.fillWidth: true
            names: root.load.steps
            current: root.load.step
            onChosen: index => root.load.takeStep(index)
        }
        FieldColumn {
            Layout.fillWidth: true
            form: root.load.form
        }
        WrapText {
            visible: text !== ""
            text: root.load.standing
            color: Theme.sure
            font.pixelSize: Theme.small
        }
        TouchButton {
            Layout.fillWidth: true
            visible: root.load.standing !== ""
            text: qsTr("It burns as usual again")
            onClicked: root.load.drop()
        }
    }
}
