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
        for (let item = focused; item; item = item.parent)
            if (item === column)
                reveal(focused);
    }

    // Slides until the item, one of the column's, is in sight.
    function reveal(item: Item) {
        const top = item.mapToItem(column, 0, 0).y;
        if (top < contentY)
            contentY = Math.max(0, top - Theme.step);
        else if (top + item.height > contentY + height)
            contentY = Math.min(contentHeight - height, top + item.height + Theme.step - height);
    }

    // The mark of the slide stands in the page's right margin. (A width that came
    // and went with it would have layouts rearranged while they lose an item, and
    // Qt 6.4 does not survive that; hence the delay below, too.)
    Layout.rightMargin: -2 * Theme.step
    contentWidth: width
    contentHeight: column.height
    boundsBehavior: Flickable.StopAtBounds
    interactive: contentHeight > height + 0.5
    clip: interactive

    ColumnLayout {
        id: column
        width: root.width - 2 * Theme.step
        spacing: Theme.step
    }
    Binding {
        target: column
        property: "height"
        value: Math.max(column.implicitHeight, root.height)
        delayed: true
    }
    SlideMark {
        parent: root
        view: root
    }
}
