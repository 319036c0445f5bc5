// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The source's reading as it comes, how far it has settled, and a touch to take it.
Rectangle {
    id: root

    required property CalibrationGuide guide

    implicitHeight: grid.implicitHeight + Theme.step
    radius: Theme.step
    color: Theme.paper
    border.width: (root.guide.liveSettled ? 3 : 1) * Theme.hairline
    border.color: root.guide.liveSettled ? Theme.sure : Theme.edge

    GridLayout {
        id: grid
        x: 1.5 * Theme.step
        y: Theme.step / 2
        width: parent.width - 2 * Theme.step
        columns: Theme.stacked ? 1 : 2
        columnSpacing: Theme.step
        rowSpacing: Theme.step / 2

        ColumnLayout {
            spacing: 0

            WrapText {
                text: root.guide.liveReading
                font.bold: true
                Accessible.role: Accessible.StaticText
                Accessible.name: qsTr("the source reads %1").arg(text)
            }
            WrapText {
                text: root.guide.liveState
                font.pixelSize: Theme.small
            }
        }
        TouchButton {
            Layout.fillWidth: Theme.stacked
            Layout.minimumWidth: 12 * Theme.step
            text: qsTr("Take it")
            leading: root.guide.liveSettled
            onClicked: root.guide.takeLive()
        }
    }
}
