// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// A route and its plan: tabs for what is looked at, a line for what is set, and along the
// lower edge what can be done.
FocusScope {
    id: root

    required property PlanViewModel view
    property int tab: PlanViewModel.Stops
    property bool choosing: false  // what is wanted of the plan
    property bool leaving: false   // of that, when one leaves and with what
    property bool naming: false    // the route
    property bool mapping: false   // pumps from a map
    readonly property bool portrait: height > width
    readonly property bool routed: view.loaded && !view.editor.opened && !naming
    readonly property bool planned: routed && !choosing && !mapping
    readonly property bool acting: planned
                                   && (tab === PlanViewModel.Stops || tab === PlanViewModel.Rows)

    Keys.onPressed: event => {
        if (root.view.editor.opened)
            row.take(event);
        else if (root.routed && root.choosing && root.leaving)
            departure.take(event);
        else if (root.planned && root.tab === PlanViewModel.FromHere)
            here.take(event);
    }
    Keys.onEscapePressed: event => {
        event.accepted = root.view.editor.opened || root.choosing || root.naming || root.mapping;
        root.view.editor.close();
        root.choosing = root.choosing && root.leaving; // one step back
        root.leaving = root.naming = root.mapping = false;
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
            Layout.rightMargin: -2 * Theme.step
            Layout.fillHeight: true
            visible: !root.view.loaded
            title: root.view.title
            notices: root.view.notices
            files: root.view.files
            hint: qsTr("A route is a .csv or .gpx file: points in order, with distances, driving and "
                       + "where fuel can be had.")
            onPicked: row => root.view.pickFile(row)
        }
        TouchButton {
            Layout.fillWidth: true
            visible: !root.view.loaded
            text: qsTr("New route")
            onClicked: root.view.newRoute()
        }
        Words {
            Layout.fillWidth: true
            visible: root.routed
            text: root.view.title
            color: Theme.ink
            font.bold: true
            wrapMode: Text.Wrap
            maximumLineCount: 2  // the name is the user's own, however long
            elide: Text.ElideRight
        }
        ModeBar {
            Layout.fillWidth: true
            Layout.topMargin: -2 * Theme.step  // only its lower part is drawn
            visible: root.planned
            tabs: true
            names: [qsTr("Stops"), qsTr("Route"), qsTr("What if"), qsTr("From here")]
            current: root.tab
            onChosen: index => root.tab = index
        }
        PlanStops {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.planned && root.tab === PlanViewModel.Stops
            view: root.view
            onWishesWanted: root.choosing = true
            onMapWanted: root.mapping = true
        }
        PlanPumps {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.routed && root.mapping && !root.choosing
            map: root.view.map
            onClosed: root.mapping = false
        }
        PlanChoice {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.routed && root.choosing && !root.leaving
            wishes: root.view.wishes
            day: root.view.day
            onClosed: root.choosing = false
            onDayWanted: root.leaving = true
        }
        PlanDeparture {
            id: departure
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.routed && root.choosing && root.leaving
            day: root.view.day
            portrait: root.portrait
            onClosed: root.leaving = false
        }
        PlanRoute {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.planned && root.tab === PlanViewModel.Rows
            view: root.view
            onNameWanted: root.naming = true
        }
        WhatIfs {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.planned && root.tab === PlanViewModel.WhatIfs
            whatIfs: root.view.whatIfs
        }
        PlanFromHere {
            id: here
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.planned && root.tab === PlanViewModel.FromHere
            view: root.view
            portrait: root.portrait
        }
        NameEntry {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.view.loaded && root.naming
            text: root.view.editor.routeName
            spoken: qsTr("name of the route")
            doneWord: qsTr("Take the name")
            onEdited: text => root.view.editor.nameRoute(text)
            onAccepted: root.naming = false
            onGoneBack: root.naming = false
        }
        RouteLegEditor {
            id: row
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.view.loaded && root.view.editor.opened
            plan: root.view
            portrait: root.portrait
        }
        WrapText {
            visible: root.acting && root.tab === PlanViewModel.Stops && text !== ""
            text: root.view.card.done
            font.pixelSize: Theme.small
        }
        PlanActions {
            Layout.fillWidth: true
            visible: root.acting
            view: root.view
            ofRoute: root.tab === PlanViewModel.Rows
        }
    }
}
