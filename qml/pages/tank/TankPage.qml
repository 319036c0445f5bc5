// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

FocusScope {
    id: root

    required property TankViewModel view
    property int tab: view.guide.started ? TankViewModel.Calibrate : TankViewModel.Curve
    readonly property bool portrait: height > width

    Keys.onPressed: event => {
        if (root.tab === TankViewModel.Calibrate)
            guidePages.take(event);
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

        ModeBar {
            Layout.fillWidth: true
            visible: root.tab !== TankViewModel.Calibrate
            names: [qsTr("Curve"), qsTr("Gauge table"), qsTr("Reserve"), qsTr("Calibrate")]
            current: root.tab
            onChosen: index => root.tab = index
        }
        TankCurve {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === TankViewModel.Curve
            view: root.view
            onCalibrate: root.tab = TankViewModel.Calibrate
        }
        TankTable {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === TankViewModel.Table
            view: root.view
        }
        TankReserve {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === TankViewModel.Reserve
            view: root.view
        }
        CalibrationPages {
            id: guidePages
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === TankViewModel.Calibrate
            guide: root.view.guide
            portrait: root.portrait
            onLeaving: root.tab = TankViewModel.Curve
        }
    }
    Connections {
        target: root.view.guide
        function onStored() {
            root.tab = TankViewModel.Curve;
        }
    }
}
