// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// One level of the calibration: litres, readings (of a source, or typed), how far they have
// settled, and the levels before, each a touch away from being corrected.
FormBoard {
    id: root

    required property CalibrationGuide guide
    readonly property string notice: guide.notices.length > 0 ? guide.notices[0].text : ""

    onNoticeChanged: root.toTop()
    form: root.guide.form
    onDone: root.guide.go()

    NoticeBar {
        Layout.fillWidth: true
        notices: root.guide.notices
    }
    WrapText {
        text: root.guide.text
        font.pixelSize: Theme.small
    }
    LiveSignalCard {
        Layout.fillWidth: true
        visible: root.guide.liveReading !== ""
        guide: root.guide
    }
    FieldColumn {
        Layout.fillWidth: true
        form: root.guide.form
    }
    FactList {
        Layout.fillWidth: true
        visible: root.guide.liveReading !== ""
        facts: root.guide.liveFacts
    }
    FactList {
        Layout.fillWidth: true
        facts: root.guide.facts
    }
    LevelsTaken {
        Layout.fillWidth: true
        guide: root.guide
    }
}
