// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// A trip or a proof, to be added to the log.
FormBoard {
    id: root

    required property EntryForm entry
    readonly property bool trip: root.entry.kind < 0

    form: root.entry.form
    doneWord: qsTr("Add it to the log")
    backWord: qsTr("Back")
    onDone: root.entry.save()

    WrapText {
        text: root.entry.title
        font.pixelSize: Theme.large
    }
    NoticeBar {
        Layout.fillWidth: true
        notices: root.entry.notices
    }
    ChoiceRows {
        Layout.fillWidth: true
        visible: choices.length > 0
        choices: root.entry.tanks
        onChosen: (choice, option) => root.entry.chooseTank(option)
    }
    ButtonGrid {
        Layout.fillWidth: true
        columns: 2
        names: root.trip ? root.entry.modes : root.entry.kinds
        current: root.trip ? root.entry.mode : root.entry.kind
        onChosen: index => root.trip ? root.entry.chooseMode(index) : root.entry.chooseKind(index)
    }
    FieldColumn {
        Layout.fillWidth: true
        form: root.entry.form
    }
    ButtonGrid {
        Layout.fillWidth: true
        columns: 2
        visible: !root.trip && names.length > 0
        names: root.entry.modes
        current: root.entry.mode
        onChosen: index => root.entry.chooseMode(index)
    }
    WrapText {
        visible: text !== ""
        text: root.entry.caution
        color: Theme.caution
        font.pixelSize: Theme.small
    }
}
