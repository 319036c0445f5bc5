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
        else if (root.tab === TankViewModel.Sheet)
            sheetForm.take(event);
        else if (proofBoard.visible)
            proofBoard.take(event);
    }

    ColumnLayout {
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: 3 * Theme.step
            topMargin: Theme.step
            bottomMargin: Theme.step
        }
        spacing: Theme.step

        ModeBar {
            Layout.fillWidth: true
            visible: root.tab !== TankViewModel.Calibrate && !proofBoard.visible
            names: [qsTr("Curve"), qsTr("Gauge table"), qsTr("Reserve"), qsTr("Car"), qsTr("Calibrate")]
            current: root.tab
            onChosen: index => root.tab = index
        }
        ChoiceRows {
            Layout.fillWidth: true
            visible: root.view.tanks.length > 0 && root.tab !== TankViewModel.Sheet && !proofBoard.visible
                     && (root.tab !== TankViewModel.Calibrate || root.view.guide.preparing)
            choices: root.view.tanks
            onChosen: (choice, option) => root.view.selectTank(option)
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
            visible: root.tab === TankViewModel.Reserve && !root.view.proving
            view: root.view
        }
        EntryBoard {
            id: proofBoard
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === TankViewModel.Reserve && root.view.proving
            entry: root.view.proof
            portrait: root.portrait
            onGoneBack: root.view.leaveProof()
        }
        CarSheetForm {
            id: sheetForm
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === TankViewModel.Sheet
            sheet: root.view.sheet
            tanks: root.view.tanks
            portrait: root.portrait
            onTankChosen: option => root.view.selectTank(option)
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
