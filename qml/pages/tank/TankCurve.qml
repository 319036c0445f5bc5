// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The level curve, what it rests on, and what looks wrong with it.
PageScroll {
    id: root

    required property TankViewModel view
    signal calibrate

    TouchButton {
        Layout.fillWidth: true
        visible: root.view.guide.started
        text: qsTr("Go on with the calibration that lies open")
        leading: true
        onClicked: root.calibrate()
    }
    WrapText {
        visible: root.view.known && !root.view.calibrated
        text: qsTr("This tank has no calibration yet. It takes a drained tank, a measuring can and "
                   + "an hour.")
    }
    TouchButton {
        Layout.fillWidth: true
        visible: root.view.known && !root.view.calibrated && !root.view.guide.started
        text: qsTr("Calibrate")
        leading: true
        onClicked: root.calibrate()
    }
    CurvePair {
        Layout.fillWidth: true
        Layout.fillHeight: true
        first: root.view.plot
        second: root.view.secondPlot
    }
    FactList {
        Layout.fillWidth: true
        facts: root.view.curveFacts
    }
    NoticeBar {
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignTop
        notices: root.view.findings
    }
    TouchButton {
        Layout.fillWidth: true
        visible: text !== ""
        text: root.view.sheet.pouredWord
        onClicked: root.view.sheet.takePoured()
    }
    TouchButton {
        Layout.fillWidth: true
        visible: root.view.calibrated
        text: qsTr("Write the hand-over sheet")
        onClicked: root.view.writeSheet()
    }
    WrapText {
        visible: text !== ""
        text: root.view.sheetDone
        font.pixelSize: Theme.small
    }
    Item {
        visible: !root.view.calibrated
        Layout.fillHeight: true
    }
}
