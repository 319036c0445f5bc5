// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The whole calibration before it is saved: curve, findings, zero mark, levels.
PageScroll {
    id: root

    required property CalibrationGuide guide
    readonly property bool problem: root.guide.notices.length > 0 && root.guide.notices[0].problem

    function take(event: KeyEvent) {
        entry.take(event);
    }

    NoticeBar {  // what keeps it from being saved; what else there is to say, under the curve
        Layout.fillWidth: true
        visible: root.problem
        notices: root.guide.notices
    }
    WrapText {
        text: root.guide.text
        font.pixelSize: Theme.small
    }
    CurvePair {
        Layout.fillWidth: true
        first: root.guide.plot
        second: root.guide.secondPlot
    }
    NoticeBar {
        Layout.fillWidth: true
        visible: count > 0 && !root.problem
        notices: root.guide.notices
    }
    FactList {
        Layout.fillWidth: true
        facts: root.guide.facts
    }
    FieldColumn {
        Layout.fillWidth: true
        form: root.guide.form
    }
    NumberEntry {
        id: entry
        Layout.fillWidth: true
        Layout.minimumHeight: implicitHeight
        portrait: true
        form: root.guide.form
        onDone: root.guide.go()
    }
    LevelsTaken {
        Layout.fillWidth: true
        guide: root.guide
    }
}
