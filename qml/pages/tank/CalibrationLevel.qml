// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// One level of the calibration: litres, readings (of a source, or typed) and how
// far they have settled on the left, the pad on the right.
PageScroll {
    id: root

    required property CalibrationGuide guide
    required property bool portrait

    function take(event: KeyEvent) {
        entry.take(event);
    }

    Item {
        id: board
        readonly property real half: Math.floor((width - 3 * Theme.step) * 0.55)

        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: root.portrait ? details.y + details.height
                                            : Math.max(details.y + details.height, entry.implicitHeight)

        ColumnLayout {
            id: fields
            width: root.portrait ? board.width : board.half
            spacing: Theme.step

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
        }
        NumberEntry {
            id: entry
            x: root.portrait ? 0 : board.half + 3 * Theme.step
            y: root.portrait ? fields.height + Theme.step : 0
            width: board.width - x
            height: root.portrait ? implicitHeight
                                  : Math.max(implicitHeight, Math.min(board.height, root.height))
            portrait: root.portrait
            form: root.guide.form
            onDone: root.guide.go()
        }
        ColumnLayout {
            id: details
            y: root.portrait ? entry.y + entry.height + Theme.step : fields.height + Theme.step
            width: fields.width
            spacing: Theme.step

            FactList {
                Layout.fillWidth: true
                visible: root.guide.liveReading !== ""
                facts: root.guide.liveFacts
            }
            FactList {
                Layout.fillWidth: true
                facts: root.guide.facts
            }
            WrapText {
                visible: root.guide.done.length > 0
                text: qsTr("Taken so far")
                color: Theme.quietInk
                font.pixelSize: Theme.small
            }
            FactList {
                Layout.fillWidth: true
                facts: root.guide.done
            }
        }
    }
}
