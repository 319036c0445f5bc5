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

    Words {
        Layout.fillWidth: true
        text: root.guide.title
        font.pixelSize: Theme.large
        elide: Text.ElideRight
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
    Item {  // (A GridLayout of Qt 6.4 keeps heights of before where the window grows.)
        id: ways
        readonly property int columns: Theme.stacked || root.portrait ? 2 : count
        readonly property int count: 2 + (root.guide.backWord !== "" ? 1 : 0) + (root.guide.otherWord !== "" ? 1 : 0)
        readonly property real share: Math.floor((width - (columns - 1) * Theme.step) / columns)

        Layout.fillWidth: true
        implicitHeight: row.height

        Flow {
            id: row
            width: ways.width
            spacing: Theme.step

            TouchButton {
                width: ways.share
                text: qsTr("Leave it here")
                Accessible.description: qsTr("What was taken is kept")
                onClicked: root.leaving()
            }
            TouchButton {
                width: ways.share
                visible: root.guide.backWord !== ""
                text: root.guide.backWord
                onClicked: root.guide.back()
            }
            TouchButton {
                width: ways.share
                visible: root.guide.otherWord !== ""
                text: root.guide.otherWord
                onClicked: root.guide.other()
            }
            TouchButton {  // alone in its row it takes all of it
                width: ways.columns === 2 && ways.count === 3 ? ways.width : ways.share
                text: root.guide.goWord
                leading: true
                onClicked: root.guide.go()
            }
        }
    }
}
