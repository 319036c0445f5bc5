// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

// Parts in columns of one width, `share`, which each part takes as its own. (A bare Grid or
// Column takes its width from its parts. Where these read it, each sets what the other reads:
// hidden, or in a layout, that has no end. So it stands in an Item, whose width is never theirs.)
Item {
    id: root

    default property alias content: grid.data
    property int columns: 1  // as many as a part has room in, up to these
    property real least: 0   // width that a part needs
    property real spacing: Theme.step
    property real columnSpacing: spacing
    property real rowSpacing: spacing
    // (1 at least: a Grid leaves out parts of no width.)
    readonly property real share: Math.max(1, Math.floor((width - (grid.columns - 1) * columnSpacing) / grid.columns))

    implicitHeight: grid.implicitHeight

    Grid {
        id: grid
        columns: root.least > 0 ? Math.max(1, Math.min(root.columns, Math.floor((root.width + root.columnSpacing)
                                                                                / (root.least + root.columnSpacing))))
                                : root.columns
        columnSpacing: root.columnSpacing
        rowSpacing: root.rowSpacing
    }
}
