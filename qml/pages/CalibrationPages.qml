// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The guided calibration: one step at a time.
ColumnLayout {
    id: root

    required property CalibrationGuide guide
    required property bool portrait
    signal leaving

    function take(event: KeyEvent) {
        if (root.guide.reviewing)
            review.take(event);
        else if (!root.guide.preparing)
            level.take(event);
    }

    spacing: Theme.step

    Text {
        Layout.fillWidth: true
        text: root.guide.title
        color: Theme.ink
        font.pixelSize: Theme.large
        elide: Text.ElideRight
    }
    NoticeBar {
        Layout.fillWidth: true
        notices: root.guide.notices
    }
    CalibrationCautions {
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: root.guide.preparing
        guide: root.guide
    }
    CalibrationLevel {
        id: level
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: !root.guide.preparing && !root.guide.reviewing
        guide: root.guide
        portrait: root.portrait
    }
    CalibrationReview {
        id: review
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: root.guide.reviewing
        guide: root.guide
    }
    GridLayout {
        Layout.fillHeight: false
        columns: root.portrait || Theme.stacked ? 2 : 4
        columnSpacing: Theme.step
        rowSpacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: qsTr("Leave it here")
            Accessible.description: qsTr("What was taken is kept")
            onClicked: root.leaving()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            visible: root.guide.backWord !== ""
            text: root.guide.backWord
            onClicked: root.guide.back()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            visible: root.guide.otherWord !== ""
            text: root.guide.otherWord
            onClicked: root.guide.other()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: root.guide.goWord
            leading: true
            onClicked: root.guide.go()
        }
    }
}
