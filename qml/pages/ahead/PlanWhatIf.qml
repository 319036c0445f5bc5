// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What would change the plan.
PageScroll {
    id: root

    required property PlanViewModel view

    ButtonGrid {
        Layout.fillWidth: true
        columns: Theme.stacked || root.width < 60 * Theme.step ? 1 : 2
        names: root.view.whatIfs
        current: root.view.whatIfs.indexOf(root.view.whatIfTitle)
        onChosen: index => root.view.askWhatIf(index)
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
