// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The distances, the road ahead, and what they rest on.
PageScroll {
    id: root

    required property NowViewModel view
    required property bool portrait

    signal modeWanted
    signal fillWanted
    signal tellWanted
    signal tankWanted

    spacing: Theme.step / 2

    NoticeBar {
        Layout.fillWidth: true
        notices: root.view.notices
    }
    GridLayout {
        columns: Theme.stacked ? 1 : 2
        columnSpacing: 2 * Theme.step
        rowSpacing: 0

        Words {
            Layout.fillWidth: true
            text: root.view.title
            color: root.view.known ? Theme.quietInk : Theme.ink
            font.pixelSize: root.view.known ? Theme.body : Theme.large
            wrapMode: root.view.known ? Text.NoWrap : Text.WordWrap
            elide: Text.ElideRight
        }
        Words {
            Layout.fillWidth: Theme.stacked
            visible: text !== ""
            text: root.view.age
            wrapMode: Theme.stacked ? Text.WordWrap : Text.NoWrap
            elide: Text.ElideRight
            color: root.view.live.quiet ? Theme.quietInk : Theme.sure
        }
    }
    GridLayout {
        Layout.fillWidth: true
        visible: root.view.known
        columns: root.portrait ? 1 : 2
        columnSpacing: 2 * Theme.step
        rowSpacing: root.portrait ? Theme.step : 0

        BigNumber {
            Layout.fillWidth: true
            caption: root.view.sureCaption
            number: root.view.sureNumber
            unit: root.view.distanceUnit
        }
        RangeTable {
            Layout.fillWidth: root.portrait
            Layout.alignment: Qt.AlignTop
            unit: root.view.distanceUnit
            rows: root.view.rows
        }
    }
    FuelHorizon {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: implicitHeight - 4 * Theme.step
        Layout.minimumHeight: implicitHeight - 4 * Theme.step
        Layout.maximumHeight: implicitHeight + 6 * Theme.step
        visible: root.view.known
        picture: root.view.horizon
    }
    FactColumns {
        Layout.fillWidth: true
        visible: root.view.known
        columns: Theme.stacked ? 1 : root.portrait ? 2 : 4
        columnSpacing: 2 * Theme.step
        facts: root.view.facts
    }
    Words {  // (a notice says more, and needs its room)
        Layout.fillWidth: true
        visible: text !== "" && (root.portrait || root.view.notices.length === 0)
        text: root.view.why
        color: root.view.known ? Theme.quietInk : Theme.ink
        font.pixelSize: root.view.known ? Theme.small : Theme.body
        wrapMode: Text.WordWrap
        maximumLineCount: Theme.stacked ? 99 : root.portrait ? 3 : 2
        elide: Text.ElideRight
    }
    Item {
        Layout.fillHeight: true
    }
    TouchButton {
        visible: !root.view.known && !root.view.waiting
        text: qsTr("Ask again")
        onClicked: root.view.refresh()
    }
    EvenGrid {
        id: refuel
        Layout.fillWidth: true
        visible: root.view.live.refuelWord !== ""
        columns: 2

        TouchButton {
            width: refuel.share
            text: root.view.live.refuelWord
            leading: true
            onClicked: root.fillWanted()
        }
        TouchButton {
            width: refuel.share
            text: qsTr("No fuel went in")
            onClicked: root.view.live.denyFill()
        }
    }
    EvenGrid {
        id: proof
        Layout.fillWidth: true
        visible: root.view.tell.proofWord !== ""
        columns: 2

        TouchButton {
            width: proof.share
            text: root.view.tell.proofWord
            onClicked: root.view.tell.noteProof()
        }
        TouchButton {
            width: proof.share
            text: qsTr("It was not so")
            onClicked: root.view.tell.dropProof()
        }
    }
    TouchButton {
        Layout.fillWidth: true
        visible: root.view.calibrating && !root.view.known
        text: qsTr("Go on with the calibration")
        onClicked: root.tankWanted()
    }
    TouchButton {
        Layout.fillWidth: true
        visible: root.view.waiting && root.view.readable
        text: qsTr("Tell a reading")
        onClicked: root.tellWanted()
    }
    TouchButton {
        Layout.fillWidth: true
        visible: root.view.waiting
        text: qsTr("Log a fill")
        leading: true
        onClicked: root.fillWanted()
    }
    EvenGrid {
        id: ways
        Layout.fillWidth: true
        visible: root.view.known
        columns: Theme.stacked ? 1 : !root.view.calibrating ? 3 : root.portrait ? 2 : 4

        TouchButton {
            width: ways.share
            visible: root.view.calibrating
            text: qsTr("Go on with the calibration")
            onClicked: root.tankWanted()
        }
        TouchButton {
            width: ways.share
            readonly property string proposed: root.view.live.modeWord

            text: proposed !== "" ? proposed : qsTr("%1: change").arg(root.view.mode)
            Accessible.description: qsTr("The kind of driving that the distances are for")
            onClicked: {
                if (proposed !== "")
                    root.view.takeProposedMode();
                else
                    root.modeWanted();
            }
        }
        TouchButton {
            width: ways.share
            text: qsTr("Needle at zero now")
            onClicked: root.view.tell.needleAtZero()
        }
        TouchButton {
            width: ways.share
            text: qsTr("Tell a reading or the odometer")
            onClicked: root.tellWanted()
        }
    }
}
