// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Undermark.App

// What can be done with the plan, or with the changed route, along the lower edge.
EvenGrid {
    id: root

    required property PlanViewModel view
    required property bool ofRoute  // else of the plan
    readonly property RouteEditModel editor: view.editor
    readonly property int shown: 1 + Number(card.visible) + Number(undo.visible) + Number(save.visible)

    columns: Math.max(1, Theme.stacked ? Math.min(2, shown) : shown)

    TouchButton {
        id: card
        width: root.share
        visible: !root.ofRoute && root.view.answer.feasible
        enabled: !root.view.planning  // not of the plan before
        text: qsTr("Write the fuel card")
        onClicked: root.view.card.write()
    }
    TouchButton {
        id: undo
        width: root.share
        visible: root.ofRoute && root.editor.undoWord !== ""
        text: root.editor.undoWord
        onClicked: root.editor.undo()
    }
    TouchButton {
        id: save
        width: root.share
        visible: root.ofRoute && root.editor.unsaved
        text: qsTr("Save the route")
        leading: true
        onClicked: root.editor.save()
    }
    TouchButton {
        width: root.share
        text: qsTr("Other route")
        onClicked: root.view.otherRoute()
    }
}
