// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The fuel horizon of one leg, and the stops.
PageScroll {
    id: root

    required property PlanViewModel view
    readonly property PlanAnswer answer: view.answer

    NoticeBar {
        Layout.fillWidth: true
        notices: root.view.notices
    }
    WrapText {
        visible: text !== ""
        text: root.answer.summary
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
