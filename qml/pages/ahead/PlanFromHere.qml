// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The route as it is driven: where the car is, what was taken on, what is in the tank; planned
// again at once, with what that changed.
FormBoard {
    id: root

    required property PlanViewModel view
    readonly property PlanHere here: view.here

    form: root.here.form
    onDone: root.here.plan()

    WrapText {
        visible: root.here.places.length > 0
        text: qsTr("The car is at")
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    ButtonGrid {
        Layout.fillWidth: true
        visible: root.here.places.length > 0
        columns: Theme.stacked ? 1 : 2
        names: root.here.places
        current: root.here.place
        onChosen: index => root.here.selectPlace(index)
    }
    FieldColumn {
        Layout.fillWidth: true
        form: root.here.form
    }
    ButtonGrid {
        Layout.fillWidth: true
        columns: Theme.stacked ? 1 : 2
        names: root.here.fuels
        current: root.here.fuel
        onChosen: index => root.here.selectFuel(index)
    }
    NoticeBar {  // where the finger is
        Layout.fillWidth: true
        notices: root.here.notices
    }
    TouchButton {
        Layout.fillWidth: true
        text: qsTr("Plan from here")
        leading: true
        onClicked: root.here.plan()
    }
    TouchButton {
        Layout.fillWidth: true
        text: qsTr("Filled up here: plan")
        onClicked: root.here.fillUp()
    }
    TouchButton {
        Layout.fillWidth: true
        text: qsTr("Plan the whole route")
        onClicked: root.here.planWhole()
    }
    WrapText {
        visible: text !== ""
        text: root.view.answer.changes
        font.bold: true
        font.pixelSize: Theme.small
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
