// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What is wanted of the plan; the way back is always in sight.
ColumnLayout {
    id: root

    required property PlanWishes wishes
    required property PlanDay day

    signal closed
    signal dayWanted

    spacing: Theme.step

    PageScroll {
        Layout.fillWidth: true
        Layout.fillHeight: true

        SettingLine {
            Layout.fillWidth: true
            text: root.day.line
            onClicked: root.dayWanted()
        }
        ChoiceRows {
            Layout.fillWidth: true
            choices: root.wishes.choices
            onChosen: (choice, option) => root.wishes.choose(choice, option)
        }
        Item {
            Layout.fillHeight: true
        }
    }
    TouchButton {
        Layout.fillWidth: true
        text: qsTr("Back to the plan")
        leading: true
        onClicked: root.closed()
    }
}
