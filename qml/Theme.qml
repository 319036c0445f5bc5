// SPDX-License-Identifier: GPL-3.0-or-later
pragma Singleton
import QtQuick

// Paper and ink of a road book. Sizes are steps of 8 px on an 800 x 480 screen
// and grow with the window.
QtObject {
    id: root

    property bool night: false
    property real scale: 1
    property real textScale: 1  // 1 to 2, chosen by the user; grows the letters only

    readonly property color paper: night ? "#0f1211" : "#f4efe4"
    readonly property color ink: night ? "#e8dcc4" : "#1c2226"
    readonly property color quietInk: night ? "#9c9482" : "#64645a"
    readonly property color sure: night ? "#4f9f93" : "#0b5c62"
    readonly property color inkOnSure: night ? "#0f1211" : "#fbf8f0"
    readonly property color reserve: night ? "#d0705f" : "#9c2f2a"
    readonly property color track: night ? "#1f2422" : "#e2dac8"
    readonly property color edge: night ? "#6f756f" : "#7c7768"
    readonly property color surface: night ? "#171b1a" : "#fbf8f0"
    readonly property color caution: night ? "#d79a3d" : "#8a5200"

    readonly property real step: Math.floor(8 * scale)
    readonly property real hairline: Math.max(1, Math.round(scale))
    readonly property real touch: 8 * step
    readonly property real plainBody: 2.25 * step // at 100 %
    readonly property int small: Math.floor(2 * step * textScale)
    readonly property int body: Math.floor(plainBody * textScale)
    readonly property int large: Math.floor(3.5 * step * (1 + (textScale - 1) / 2))
    // Letters so large that what stands side by side goes one below the other.
    readonly property bool stacked: textScale > 1.3
    // The big number is big already.
    readonly property int huge: Math.floor(13 * step * (1 + (textScale - 1) / 4))
    // Room for one line of text, in steps of the layout.
    function line(size: int): real {
        return Math.ceil(1.35 * size / step * 2) / 2 * step;
    }
}
