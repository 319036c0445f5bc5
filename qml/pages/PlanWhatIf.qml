// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What would change the plan.
PageScroll {
    id: root

    required property PlanViewModel view

    GridLayout {
        Layout.fillWidth: true
        Layout.fillHeight: false
        columns: Theme.stacked || root.width < 60 * Theme.step ? 1 : 2
        columnSpacing: Theme.step
        rowSpacing: Theme.step

        Repeater {
            model: root.view.whatIfs

            TouchButton {
                required property string modelData
                required property int index

                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: modelData
                chosen: root.view.whatIfTitle === modelData
                onClicked: root.view.askWhatIf(index)
            }
        }
    }
    FactList {
        Layout.fillWidth: true
        nameShare: 0.28
        facts: root.view.whatIfAnswer
    }
    Item {
        Layout.fillHeight: true
    }
}
