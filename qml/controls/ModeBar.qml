// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick

// The driving modes side by side; more than fit are reached by sliding.
ListView {
    id: root

    required property list<string> names
    required property int current
    readonly property real share: (width - (count - 1) * spacing) / count

    signal chosen(index: int)

    implicitHeight: Theme.touch
    orientation: ListView.Horizontal
    spacing: Theme.step
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    interactive: contentWidth > width
    model: names
    onCurrentChanged: positionViewAtIndex(current, ListView.Contain)

    delegate: TouchButton {
        required property string modelData
        required property int index

        width: Math.max(10 * Theme.step, root.share, 0.8 * implicitWidth)
        height: root.height
        text: modelData
        chosen: index === root.current
        Accessible.role: Accessible.RadioButton
        onClicked: root.chosen(index)
    }
}
