// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes

// A Shape that is not drawn where it is slid out of its page: the software renderer
// of Qt 6.4 takes an empty clip for none, and draws it over what is there.
Shape {
    id: root

    property bool wanted: true
    property Flickable page: null
    readonly property bool seen: {
        if (!root.page || root.page.contentHeight <= root.page.height)
            return true;
        let top = root.y;  // (by each y, so that it is worked out anew when one of them moves)
        for (let item = root.parent; item && item !== root.page.contentItem; item = item.parent)
            top += item.y;
        return top < root.page.contentY + root.page.height && top + root.height > root.page.contentY;
    }

    visible: wanted && seen
    Component.onCompleted: {
        for (let item = parent; item && !page; item = item.parent)
            page = item as Flickable;
    }
}
