// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The first run: a car in four answers, or the demo car; or one more car.
FocusScope {
    id: root

    required property SetupViewModel view
    readonly property bool portrait: height > width
    property bool naming: false

    Keys.onPressed: event => {
        if (!root.naming)
            board.take(event);
    }
    Keys.onEscapePressed: root.naming ? root.naming = false : root.view.leave()

    NameEntry {
        anchors {
            fill: parent
            margins: 1.5 * Theme.step
            leftMargin: 3 * Theme.step
        }
        visible: root.naming
        text: root.view.name
        spoken: qsTr("name of the car")
        doneWord: qsTr("Take the name")
        onEdited: text => root.view.name = text
        onAccepted: root.naming = false
        onGoneBack: root.naming = false
    }
    FormBoard {
        id: board
        anchors {
            fill: parent
            leftMargin: 3 * Theme.step
            rightMargin: Theme.step
            topMargin: 1.5 * Theme.step
            bottomMargin: 1.5 * Theme.step
        }
        visible: !root.naming
        portrait: root.portrait
        form: root.view.form
        doneWord: qsTr("Set up this car")
        onDone: root.view.save()

        NoticeBar {
            Layout.fillWidth: true
            notices: root.view.notices
        }
        WrapText {
            text: qsTr("Which car?")
            font.pixelSize: Theme.large
        }
        SettingLine {
            Layout.fillWidth: true
            text: qsTr("name: %1").arg(root.view.name)
            onClicked: root.naming = true
        }
        ButtonGrid {
            Layout.fillWidth: true
            columns: Theme.stacked ? 2 : 4
            names: root.view.fuels
            current: root.view.fuel
            onChosen: index => root.view.selectFuel(index)
        }
        FieldColumn {
            Layout.fillWidth: true
            form: root.view.form
        }
        TouchButton {
            Layout.fillWidth: true
            text: root.view.another ? qsTr("Not now") : qsTr("Look at the demo car")
            onClicked: root.view.another ? root.view.leave() : root.view.lookAtDemo()
        }
    }
}
