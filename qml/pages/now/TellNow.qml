// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The odometer or a reading, for a better answer now; a reading goes into the log where that is wanted.
FormBoard {
    id: root

    required property NowTell tell

    signal closed

    form: tell.form
    doneWord: qsTr("Answer for this")
    backWord: qsTr("Back")
    onDone: tell.take()
    onGoneBack: closed()

    NoticeBar {
        Layout.fillWidth: true
        notices: root.tell.notices
    }
    WrapText {
        text: qsTr("What stands there now? It counts until the log knows more.")
        font.pixelSize: Theme.small
    }
    FieldColumn {
        Layout.fillWidth: true
        form: root.tell.form
    }
    WrapText {
        visible: text !== ""
        text: root.tell.standing
        color: Theme.sure
        font.pixelSize: Theme.small
    }
    TouchButton {
        Layout.fillWidth: true
        visible: root.tell.canKeep
        text: qsTr("Keep this reading in the log")
        onClicked: root.tell.keepInLog()
    }
    TouchButton {
        Layout.fillWidth: true
        visible: root.tell.standing !== ""
        text: qsTr("Drop what was told")
        onClicked: root.tell.drop()
    }
}
