// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// The pad of a form, and the way on below it. Keys of the keyboard reach the
// form through take(): Return goes to the next field, and from the last one to the way on.
ColumnLayout {
    id: root

    required property NumberForm form
    required property bool portrait
    property string doneWord: ""
    property string backWord: ""
    property bool padded: true  // not where there is no number to type
    property bool titled: true  // the pad, with the field that it types

    signal done
    signal goneBack

    function take(event: KeyEvent) {
        event.accepted = true;
        if (event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter) {
            event.accepted = root.form.takeKey(event.key, event.text);
            if (event.accepted && wayOn.activeFocus) // typed on: Return is the form's again
                root.forceActiveFocus();
        } else if (root.form.activeField + 1 < root.form.fields.length) {
            root.form.select(root.form.activeField + 1);
        } else {
            wayOn.forceActiveFocus(Qt.TabFocusReason);
        }
    }

    spacing: Theme.step

    NumberPad {
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: root.padded
        flat: root.portrait
        title: root.form.refused !== "" ? root.form.refused : root.titled ? root.form.padTitle : ""
        mark: root.form.decimalMark
        onPressed: key => root.form.press(key)
        onErased: root.form.erase()
    }
    RowLayout {
        Layout.fillHeight: false
        Layout.alignment: Qt.AlignBottom
        visible: root.doneWord !== ""
        spacing: Theme.step

        TouchButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            visible: root.backWord !== ""
            text: root.backWord
            onClicked: root.goneBack()
        }
        TouchButton {
            id: wayOn
            Layout.fillWidth: true
            Layout.preferredWidth: Theme.stacked ? 1 : 2
            text: root.doneWord
            leading: true
            onClicked: root.done()
        }
    }
}
