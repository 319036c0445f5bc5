// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// One entry of the log, all of it, and what can be done about it.
ColumnLayout {
    id: root

    required property LogbookViewModel view

    spacing: Theme.step

    PageScroll {
        Layout.fillWidth: true
        Layout.fillHeight: true

        Words {
            Layout.fillWidth: true
            text: root.view.title
            font.pixelSize: Theme.large
            wrapMode: Text.Wrap
        }
        NoticeBar {
            Layout.fillWidth: true
            notices: root.view.notices
        }
        TouchButton {
            Layout.fillWidth: true
            visible: root.view.mendWord !== ""
            text: root.view.mendWord
            leading: true
            onClicked: root.view.mend()
        }
        FactList {
            Layout.fillWidth: true
            nameShare: Theme.stacked ? 0.5 : 0.42
            facts: root.view.facts
        }
        Words {
            Layout.fillWidth: true
            Layout.topMargin: Theme.step
            visible: root.view.versions.length > 0
            text: qsTr("As it was written down")
            font.bold: true
            wrapMode: Text.Wrap
        }
        FactList {
            Layout.fillWidth: true
            facts: root.view.versions
        }
        Item {
            Layout.fillHeight: true
        }
    }
    GridLayout {
        id: buttons
        readonly property real buttonHeight: Theme.stacked ? 2 * Theme.line(Theme.body) + Theme.step : Theme.touch

        Layout.fillHeight: false
        columns: Theme.stacked || root.width < 70 * Theme.step ? 2 : 4
        columnSpacing: Theme.step
        rowSpacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.preferredHeight: buttons.buttonHeight
            text: qsTr("Back")
            onClicked: root.view.close()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.preferredHeight: buttons.buttonHeight
            visible: root.view.ruleWord !== ""
            text: root.view.ruleWord
            onClicked: root.view.rule()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.preferredHeight: buttons.buttonHeight
            visible: root.view.changeable
            text: qsTr("Take out")
            Accessible.description: qsTr("Takes this entry out of the logbook, with all corrections of it")
            onClicked: root.view.takeOut()
        }
        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.preferredHeight: buttons.buttonHeight
            visible: root.view.correctable
            text: qsTr("Correct")
            onClicked: root.view.correct()
        }
    }
}
