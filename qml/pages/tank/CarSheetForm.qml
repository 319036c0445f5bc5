// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The car's sheet, or a further tank's: name, tank and sender, checked against the calibration.
Item {
    id: root

    required property CarSheet sheet
    required property list<choice> tanks
    required property bool portrait
    property bool naming: false

    signal tankChosen(option: int)

    function take(event: KeyEvent) {
        if (!root.naming)
            board.take(event);
    }

    NameEntry {
        anchors.fill: parent
        visible: root.naming
        text: root.sheet.name
        spoken: root.sheet.ofCar ? qsTr("name of the car") : qsTr("name of the tank")
        doneWord: qsTr("Take the name")
        onEdited: text => root.sheet.name = text
        onAccepted: root.naming = false
        onGoneBack: root.naming = false
    }
    FormBoard {
        id: board
        width: root.width + 2 * Theme.step // (its slide mark stands in the page's margin)
        height: root.height
        visible: !root.naming
        portrait: root.portrait
        form: root.sheet.form
        doneWord: qsTr("Save the sheet")
        backWord: qsTr("Leave it as it was")
        onDone: root.sheet.save()
        onGoneBack: root.sheet.startOver()

        NoticeBar {
            Layout.fillWidth: true
            notices: root.sheet.notices
        }
        ChoiceRows {
            Layout.fillWidth: true
            visible: choices.length > 0 && !root.sheet.adding
            choices: root.tanks
            onChosen: (choice, option) => root.tankChosen(option)
        }
        TouchButton {
            Layout.fillWidth: true
            visible: text !== ""
            text: root.sheet.pouredWord
            onClicked: root.sheet.takePoured()
        }
        SettingLine {
            Layout.fillWidth: true
            visible: root.sheet.renamable
            text: qsTr("name: %1").arg(root.sheet.name)
            onClicked: root.naming = true
        }
        FieldColumn {
            Layout.fillWidth: true
            form: root.sheet.form
        }
        ChoiceRows {
            Layout.fillWidth: true
            choices: root.sheet.choices
            onChosen: (choice, option) => root.sheet.choose(choice, option)
        }
        TouchButton {
            Layout.fillWidth: true
            visible: !root.sheet.adding
            text: qsTr("Add a tank")
            onClicked: {
                root.sheet.addTank();
                board.toTop();
            }
        }
    }
}
