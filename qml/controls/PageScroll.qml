// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts

// A column as high as its page, or higher and then to be slid: large letters
// need room. What has the keyboard's focus is brought into view.
Flickable {
    id: root

    default property alias content: column.data
    property alias spacing: column.spacing
    readonly property Item focused: Window.activeFocusItem

    onFocusedChanged: {
        for (let item = focused; item; item = item.parent) {
            if (item !== column)
                continue;
            const top = focused.mapToItem(column, 0, 0).y;
            if (top < contentY)
                contentY = Math.max(0, top - Theme.step);
            else if (top + focused.height > contentY + height)
                contentY = Math.min(contentHeight - height, top + focused.height + Theme.step - height);
        }
    }

    contentWidth: width
    contentHeight: column.height
    boundsBehavior: Flickable.StopAtBounds
    interactive: contentHeight > height + 0.5
    clip: interactive

    ColumnLayout {
        id: column
        width: root.width - (root.interactive ? 2 * Theme.step : 0)
        height: Math.max(implicitHeight, root.height)
        spacing: Theme.step
    }
    SlideMark {
        parent: root
        view: root
    }
}
