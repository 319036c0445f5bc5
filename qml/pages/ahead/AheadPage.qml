// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

FocusScope {
    id: root

    required property PlanViewModel view
    readonly property PlanWishes wishes: view.wishes
    property int tab: PlanViewModel.Stops
    readonly property bool portrait: height > width
    readonly property bool routed: view.loaded && !view.editor.opened

    Keys.onPressed: event => {
        if (root.view.editor.opened)
            row.take(event);
        else if (root.view.loaded && root.tab === PlanViewModel.FromHere)
            here.take(event);
    }
    Keys.onEscapePressed: event => {
        event.accepted = root.view.editor.opened;
        root.view.editor.close();
    }

    ColumnLayout {
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: 3 * Theme.step
            topMargin: 1.5 * Theme.step
            bottomMargin: 1.5 * Theme.step
        }
        spacing: Theme.step

        FilePicker {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: !root.view.loaded
            title: root.view.title
            notices: root.view.notices
            files: root.view.files
            hint: qsTr("A route is a .csv or .gpx file: points in order, with distances, driving and "
                       + "where fuel can be had.")
            onPicked: row => root.view.pickFile(row)
        }
        Text {
            Layout.fillWidth: true
            visible: root.routed
            text: root.view.title
            color: Theme.quietInk
            font.pixelSize: Theme.body
            wrapMode: Text.Wrap
            maximumLineCount: 2  // the name is the user's own, however long
            elide: Text.ElideRight
        }
        ModeBar {
            Layout.fillWidth: true
            visible: root.routed
            names: [qsTr("Stops"), qsTr("Route"), qsTr("What if"), qsTr("From here")]
            current: root.tab
            onChosen: index => root.tab = index
        }
        RowLayout {
            Layout.fillHeight: false
            visible: root.routed && (root.tab === PlanViewModel.Stops || root.tab === PlanViewModel.Rows)
            spacing: Theme.step

            TouchButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: root.wishes.aims[root.wishes.aim]
                Accessible.description: qsTr("Aim of the plan; press for the next one")
                onClicked: root.wishes.selectAim((root.wishes.aim + 1) % root.wishes.aims.length)
            }
            TouchButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: qsTr("%1 sure").arg(root.wishes.confidences[root.wishes.confidence])
                Accessible.description: qsTr("Confidence of each arrival; press for the next one")
                onClicked: root.wishes.selectConfidence((root.wishes.confidence + 1)
                                                        % root.wishes.confidences.length)
            }
            TouchButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: qsTr("Other route")
                onClicked: root.view.otherRoute()
            }
        }
        PlanStops {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.routed && root.tab === PlanViewModel.Stops
            view: root.view
        }
        PlanRoute {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.routed && root.tab === PlanViewModel.Rows
            view: root.view
        }
        WhatIfs {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.routed && root.tab === PlanViewModel.WhatIfs
            whatIfs: root.view.whatIfs
        }
        PlanFromHere {
            id: here
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.routed && root.tab === PlanViewModel.FromHere
            view: root.view
            portrait: root.portrait
        }
        RouteLegEditor {
            id: row
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.view.loaded && root.view.editor.opened
            plan: root.view
            portrait: root.portrait
        }
    }
}
