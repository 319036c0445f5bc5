// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// Where the car is on the route, for planning what is left.
FormBoard {
    id: root

    required property PlanViewModel view

    form: view.here.form
    onDone: view.here.plan()

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
    WrapText {
        visible: root.view.answer.feasible
        text: root.view.answer.summary
        font.pixelSize: Theme.small
    }
    NoticeBar {
        Layout.fillWidth: true
        notices: root.view.answer.feasible ? [] : root.view.notices
    }
}
