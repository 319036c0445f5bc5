// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T

// What is pressed: by touch, by Space and Return, and by a reader of the screen. (Whatever its
// Accessible.role, Qt 6.4 tells a reader of a button, or of a check box where it is checkable.)
T.AbstractButton {
    id: root

    focusPolicy: Qt.TabFocus  // a touch leaves the keys with the page
    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.onPressAction: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()
}
