// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The hidden reserve, on what evidence, and which proof next.
PageScroll {
    id: root

    required property TankViewModel view

    WrapText {
        text: qsTr("hidden reserve, an estimate")
        color: Theme.quietInk
    }
    WrapText {
        text: root.view.reserve
        color: Theme.reserve
        font.pixelSize: Theme.large
        font.bold: true
    }
    WrapText {
        visible: text !== ""
        text: root.view.pastZero
    }
    WrapText {
        Layout.topMargin: Theme.step
        text: qsTr("Evidence, and what it made of it")
        font.bold: true
    }
    FactList {
        Layout.fillWidth: true
        nameShare: 0.52
        facts: root.view.evidence
    }
    WrapText {
        Layout.topMargin: Theme.step
        text: qsTr("Next proof")
        font.bold: true
    }
    WrapText {
        text: root.view.nextProof
    }
    WrapText {
        text: root.view.nextProofCaution
        color: Theme.caution
        font.pixelSize: Theme.small
    }
    EvenGrid {
        id: ways
        Layout.fillWidth: true
        columns: Theme.stacked || root.width < 50 * Theme.step ? 1 : 2

        TouchButton {
            width: ways.share
            text: qsTr("It is done: note it")
            onClicked: root.view.tellNextProof()
        }
        TouchButton {
            width: ways.share
            text: qsTr("Note another proof")
            onClicked: root.view.tellProof()
        }
    }
    Item {
        Layout.fillHeight: true
    }
}
