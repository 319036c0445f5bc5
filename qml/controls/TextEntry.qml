// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// A line of text to be typed. It shows `text` until something is typed into it.
Rectangle {
    id: root

    required property string text
    required property string spoken

    signal edited(text: string)
    signal accepted()

    // (A TextInput that is typed into loses the binding of its text.)
    onTextChanged: if (input.text !== text) input.text = text

    implicitHeight: Math.max(Theme.touch, Theme.line(Theme.body) + Theme.step)
    radius: Theme.step
    color: Theme.surface
    border.width: (input.activeFocus ? 3 : 1) * Theme.hairline
    border.color: input.activeFocus ? Theme.ink : Theme.edge

    TextInput {
        id: input
        anchors.fill: parent
        anchors.leftMargin: 1.5 * Theme.step
        anchors.rightMargin: 1.5 * Theme.step
        text: root.text
        color: Theme.ink
        selectionColor: Theme.sure
        selectedTextColor: Theme.inkOnSure
        font.pixelSize: Theme.body
        verticalAlignment: TextInput.AlignVCenter
        activeFocusOnTab: true
        clip: true
        maximumLength: 60
        Accessible.role: Accessible.EditableText
        Accessible.name: root.spoken
        onTextEdited: root.edited(text)
        Keys.onReturnPressed: root.accepted()
        Keys.onEnterPressed: root.accepted()
    }
}
