// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

FocusScope {
    id: root

    required property LogbookViewModel view
    required property ScreenSettings settings
    property int tab: LogbookViewModel.All
    property alias choosingCar: settingsView.choosing
    readonly property bool portrait: height > width
    readonly property bool busy: view.opened || view.correcting || view.adding
    readonly property bool listing: tab < view.filters.length && !busy

    Keys.onPressed: event => {
        if (root.view.correcting)
            form.take(event);
        else if (root.view.adding)
            entryBoard.take(event);
    }
    Keys.onEscapePressed: root.view.close()

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
            visible: !root.busy
            names: root.view.filters.concat([qsTr("Rates"), qsTr("Transfer"), qsTr("Settings")])
            current: root.tab
            onChosen: index => {
                root.tab = index;
                root.view.selectFilter(index);
            }
        }
        TouchButton {
            Layout.fillWidth: true
            visible: root.view.undoWord !== "" && !root.view.correcting && !root.view.adding
                     && (root.view.opened || root.listing || root.tab === LogbookViewModel.Transfer)
            text: root.view.undoWord
            onClicked: root.view.undo()
        }
        NoticeBar {
            Layout.fillWidth: true
            visible: root.listing && count > 0
            notices: root.view.listNotices
        }
        TouchButton {
            Layout.fillWidth: true
            visible: root.listing && root.view.listNotices.length > 0
            text: qsTr("Read the logbook again")
            onClicked: root.view.refresh()
        }
        HistoryList {
            Layout.fillWidth: true
            Layout.rightMargin: -2 * Theme.step
            Layout.fillHeight: true
            visible: root.listing
            rows: root.view.rows
            emptyText: root.view.emptyText
            onPicked: row => root.view.open(row)
        }
        ActionGrid {
            Layout.fillWidth: true
            visible: root.listing
            names: root.view.addable
            onPicked: what => root.view.add(what)
        }
        ConsumptionView {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === LogbookViewModel.Rates && !root.busy
            view: root.view
        }
        TransferView {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === LogbookViewModel.Transfer && !root.busy
            view: root.view.transfer
        }
        SettingsView {
            id: settingsView
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.tab === LogbookViewModel.Settings && !root.busy
            settings: root.settings
            cars: root.view.cars
        }
        LogEntry {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.view.opened && !root.view.correcting && !root.view.adding
            view: root.view
        }
        EntryBoard {
            id: entryBoard
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.view.adding
            entry: root.view.entry
            portrait: root.portrait
            onGoneBack: root.view.close()
        }
        PageScroll {
            id: correction
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: root.view.correcting

            NoticeBar {
                id: notice
                Layout.fillWidth: true
                notices: root.view.editor.notices
            }
            FillForm {
                id: form
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.minimumHeight: implicitHeight
                view: root.view.editor
                portrait: root.portrait
                room: correction.height - (notice.visible ? notice.implicitHeight + Theme.step : 0)
                backWord: qsTr("Back")
                onGoneBack: root.view.close()
            }
        }
    }
}
