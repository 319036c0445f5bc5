// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// When one leaves, how fast one goes and what is carried.
FormBoard {
    id: root

    required property PlanDay day

    signal closed

    function finish() {
        if (root.day.take())
            root.closed();
    }

    form: root.day.form
    doneWord: qsTr("Back to the plan")
    onDone: root.finish()

    FieldColumn {
        Layout.fillWidth: true
        form: root.day.form
    }
    NoticeBar {  // where the finger is
        Layout.fillWidth: true
        notices: root.day.notices
    }
    WrapText {
        text: qsTr("Cans: approved ones, filled on the ground, poured with the engine off and cold, and only "
                   + "where the event and the place allow it.")
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
}
