// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The whole calibration before it is saved: curve, levels, zero mark.
PageScroll {
    id: root

    required property CalibrationGuide guide

    function take(event: KeyEvent) {
        entry.take(event);
    }

    WrapText {
        text: root.guide.text
        font.pixelSize: Theme.small
    }
    PlotPair {
        Layout.fillWidth: true
        Layout.fillHeight: false
        visible: !root.guide.plot.empty
        first: root.guide.plot
        second: root.guide.secondPlot
    }
    FactList {
        Layout.fillWidth: true
        facts: root.guide.facts
    }
    FactList {
        Layout.fillWidth: true
        facts: root.guide.done
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
}
