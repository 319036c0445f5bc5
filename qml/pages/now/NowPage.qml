// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

FocusScope {
    id: root

    required property NowViewModel view
    readonly property bool portrait: height > width || Theme.stacked

    PageScroll {
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: Theme.step
            topMargin: Theme.step
            bottomMargin: Theme.step
        }
        spacing: Theme.step / 2

        NoticeBar {
            Layout.fillWidth: true
            notices: root.view.notices
        }
        GridLayout {
            columns: Theme.stacked ? 1 : 2
            columnSpacing: 2 * Theme.step
            rowSpacing: 0

            Text {
                Layout.fillWidth: true
                text: root.view.title
                color: root.view.known ? Theme.quietInk : Theme.ink
                font.pixelSize: root.view.known ? Theme.body : Theme.large
                elide: Text.ElideRight
            }
            Text {
                Layout.fillWidth: Theme.stacked
                visible: text !== ""
                text: root.view.sinceFill
                wrapMode: Theme.stacked ? Text.WordWrap : Text.NoWrap
                elide: Text.ElideRight
                color: Theme.quietInk
                font.pixelSize: Theme.body
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
                caption: qsTr("sure to the zero mark")
                number: root.view.sureNumber
                unit: root.view.distanceUnit
            }
            RangeTable {
                Layout.fillWidth: root.portrait
                Layout.alignment: Qt.AlignTop
                unit: root.view.distanceUnit
                toZero: root.view.toZero
                toDry: root.view.toDry
            }
        }
        FuelHorizon {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: implicitHeight - (root.view.notices.length > 0 ? 4 : 3.5) * Theme.step
            Layout.minimumHeight: Layout.preferredHeight
            Layout.maximumHeight: implicitHeight + 6 * Theme.step
            visible: root.view.known
            picture: root.view.horizon
        }
        FactColumns {
            Layout.fillWidth: true
            visible: root.view.known
            columns: Theme.stacked ? 1 : root.portrait ? 2 : 3
            columnSpacing: 3 * Theme.step
            facts: root.view.facts
        }
        Text {
            Layout.fillWidth: true
            visible: text !== ""
            text: root.view.why
            color: Theme.quietInk
            font.pixelSize: Theme.small
            wrapMode: Text.WordWrap
            maximumLineCount: Theme.stacked ? 99 : root.portrait ? 3 : root.view.notices.length > 0 ? 1 : 2
            elide: Text.ElideRight
        }
        Item {
            Layout.fillHeight: true
        }
        TouchButton {
            visible: !root.view.known
            text: qsTr("Ask again")
            onClicked: root.view.refresh()
        }
        ModeBar {
            Layout.fillWidth: true
            visible: root.view.known
            names: root.view.modes
            current: root.view.modeIndex
            onChosen: index => root.view.selectMode(index)
        }
    }
}
