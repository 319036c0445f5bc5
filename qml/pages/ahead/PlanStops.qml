// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The fuel horizon of one leg, and the stops.
PageScroll {
    id: root

    required property PlanViewModel view

    NoticeBar {
        Layout.fillWidth: true
        notices: root.view.notices
    }
    WrapText {
        visible: text !== ""
        text: root.view.summary
        font.pixelSize: Theme.small
    }
    WrapText {
        visible: root.view.cures.length > 0
        text: qsTr("What would do, each by itself")
        font.bold: true
    }
    FactList {
        Layout.fillWidth: true
        facts: root.view.cures
    }
    RouteTable {
        Layout.fillWidth: true
        rows: root.view.stops
    }
    ModeBar {
        Layout.fillWidth: true
        visible: root.view.legs.length > 1
        names: root.view.legs
        current: root.view.leg
        onChosen: index => root.view.selectLeg(index)
    }
    FuelHorizon {
        Layout.fillWidth: true
        visible: root.view.feasible
        picture: root.view.horizon
    }
    WrapText {
        visible: root.view.feasible
        text: qsTr("sure: on arrival with 99 % probability. An estimate: keep a margin.")
        color: Theme.quietInk
        font.pixelSize: Theme.small
    }
    Item {
        Layout.fillHeight: true
    }
}
