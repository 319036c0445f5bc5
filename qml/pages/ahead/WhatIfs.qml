// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What would change the plan.
PageScroll {
    id: root

    required property PlanWhatIfs whatIfs

    ButtonGrid {
        Layout.fillWidth: true
        columns: Theme.stacked || root.width < 60 * Theme.step ? 1 : 2
        names: root.whatIfs.questions
        marked: root.whatIfs.asked
        onChosen: index => root.whatIfs.ask(index)
    }
    FactList {
        Layout.fillWidth: true
        nameShare: 0.28
        facts: root.whatIfs.answer
    }
    Item {
        Layout.fillHeight: true
    }
}
