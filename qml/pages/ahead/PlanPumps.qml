// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The pumps of a map along the track: the map is chosen, then each pump that it has is taken or
// left out by a touch.
ColumnLayout {
    id: root

    required property PlanMap map

    signal closed

    // The list stays where it is, though it is made anew.
    function toggle(pump: int) {
        const at = list.contentY;
        root.map.toggle(pump);
        list.forceLayout();
        list.contentY = at;
    }

    spacing: Theme.step

    FilePicker {
        Layout.fillWidth: true
        Layout.rightMargin: -2 * Theme.step
        Layout.fillHeight: true
        visible: !root.map.found && !root.map.reading
        title: qsTr("Which map?")
        notices: root.map.notices
        files: root.map.files
        hint: qsTr("A map is an OpenStreetMap extract (.osm.pbf) of the region. It may be old: whether a "
                   + "pump still is there, and is open, is known to who asks there.")
        onPicked: row => root.map.pick(row)
    }
    WrapText {
        Layout.fillHeight: true
        visible: root.map.reading
        text: root.map.progress
        font.pixelSize: Theme.large
    }
    WrapText {
        Layout.fillWidth: true
        visible: root.map.found
        text: root.map.line
        font.pixelSize: Theme.body
    }
    NoticeBar {
        Layout.fillWidth: true
        visible: root.map.found && root.map.notices.length > 0
        notices: root.map.notices
    }
    ListView {
        id: list
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: root.map.found
        clip: true
        spacing: Theme.step / 2
        boundsBehavior: Flickable.StopAtBounds
        model: root.map.pumps
        delegate: SettingLine {
            required property mapPumpRow modelData
            required property int index

            width: list.width
            text: modelData.name
            detail: modelData.detail
            letters: Theme.body
            crossed: !modelData.taken
            way: modelData.taken ? qsTr("taken") : qsTr("left out")
            Accessible.role: Accessible.CheckBox
            Accessible.checked: modelData.taken
            onClicked: root.toggle(index)
        }
    }
    EvenGrid {
        id: actions
        Layout.fillWidth: true
        columns: root.map.found || root.map.reading ? 2 : 1

        TouchButton {
            width: actions.share
            visible: root.map.found || root.map.reading
            text: root.map.reading ? qsTr("Stop reading") : qsTr("Another map")
            onClicked: root.map.reading ? root.map.stop() : root.map.anotherMap()
        }
        TouchButton {
            width: actions.share
            text: qsTr("Back to the plan")
            leading: root.map.found
            onClicked: root.closed()
        }
    }
}
