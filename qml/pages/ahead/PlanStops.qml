// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What the plan is for and what it comes to, the stops, and the fuel horizon of one leg.
PageScroll {
    id: root

    required property PlanViewModel view
    readonly property PlanAnswer answer: view.answer

    signal wishesWanted
    signal mapWanted

    NoticeBar {
        Layout.fillWidth: true
        notices: root.view.notices
    }
    SettingLine {
        Layout.fillWidth: true
        Layout.bottomMargin: -Theme.step
        text: root.view.wishes.line
        onClicked: root.wishesWanted()
    }
    SettingLine {
        Layout.fillWidth: true
        Layout.bottomMargin: -Theme.step
        visible: root.view.map.possible
        text: root.view.map.line
        onClicked: root.mapWanted()
    }
    WrapText {
        visible: text !== ""
        text: root.view.basis
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    WrapText {
        visible: text !== ""
        text: root.answer.summary
        font.pixelSize: Theme.body
    }
    WrapText {
        visible: text !== ""
        text: root.answer.changes
        font.bold: true
        font.pixelSize: Theme.small
    }
    WrapText {
        visible: root.answer.cures.length > 0
        text: qsTr("What would do, each by itself")
        font.bold: true
    }
    FactList {
        Layout.fillWidth: true
        facts: root.answer.cures
    }
    RouteTable {
        Layout.fillWidth: true
        rows: root.answer.stops
    }
    ModeBar {
        Layout.fillWidth: true
        visible: root.answer.legs.length > 1
        names: root.answer.legs
        current: root.answer.leg
        onChosen: index => root.answer.selectLeg(index)
    }
    FuelHorizon {
        Layout.fillWidth: true
        visible: root.answer.feasible
        picture: root.answer.horizon
    }
    WrapText {
        visible: root.answer.feasible
        text: qsTr("sure: on arrival with 99 % probability. An estimate: keep a margin.")
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    Item {
        Layout.fillHeight: true
    }
}
