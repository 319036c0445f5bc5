// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts

// Lies over a page that takes entries while the car moves.
Rectangle {
    id: root

    signal passengerConfirmed

    color: Theme.paper
    focus: visible

    MouseArea {  // nothing below it is touched
        anchors.fill: parent
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 3 * Theme.step
        spacing: 3 * Theme.step

        Item {
            Layout.fillHeight: true
        }
        WrapText {
            text: qsTr("Caution: the car is moving. Nothing is to be typed while driving: that is "
                       + "for the passenger, or at a halt.")
            color: Theme.caution
            font.pixelSize: Theme.large
        }
        TouchButton {
            Layout.fillWidth: true
            text: qsTr("I am the passenger")
            onClicked: root.passengerConfirmed()
        }
        Item {
            Layout.fillHeight: true
        }
    }
}
