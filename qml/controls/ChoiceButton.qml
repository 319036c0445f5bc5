// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

// A button that stands for one of several things, `chosen` saying whether for the one that
// is on. Whoever owns the choice says so, never the touch: a choice may be refused.
TouchButton {
    id: root

    Accessible.role: tab ? Accessible.PageTab : Accessible.RadioButton
    checkable: true
    checked: chosen
    onToggled: checked = Qt.binding(() => root.chosen)
    Accessible.onToggleAction: root.clicked()
}
