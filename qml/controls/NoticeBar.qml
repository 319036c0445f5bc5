// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What must be read before the number: the worst first, the rest a touch away.
Pressable {
    id: root

    required property list<noticeText> notices
    property int shown: 0
    readonly property int count: notices.length
    readonly property bool several: count > 1
    readonly property string word: count > 0 ? notices[shown].word : ""
    readonly property string message: count > 0 ? notices[shown].text : ""
    readonly property color accent: count === 0 ? Theme.ink
                                  : notices[shown].problem ? Theme.reserve
                                  : notices[shown].caution ? Theme.caution : Theme.ink

    onNoticesChanged: shown = 0
    onClicked: shown = (shown + 1) % count

    visible: count > 0
    enabled: several
    Accessible.role: Accessible.AlertMessage
    focusPolicy: several ? Qt.StrongFocus : Qt.NoFocus
    implicitHeight: Math.max(several ? Theme.touch : 5 * Theme.step,
                             implicitContentHeight + Theme.step)
    padding: Theme.step
    topPadding: 0
    bottomPadding: 0
    Accessible.name: word + ": " + message
    Accessible.description: several ? qsTr("Press for the next notice") : ""

    background: Rectangle {
        radius: Theme.step / 2
        color: Theme.surface
        border.width: (root.visualFocus ? 4 : 2) * Theme.hairline
        border.color: root.accent
    }
    contentItem: RowLayout {
        spacing: Theme.step

        Text {
            Layout.fillWidth: true
            text: "<b>" + root.word + ":</b> " + root.message
            textFormat: Text.StyledText
            color: root.accent
            font.pixelSize: Theme.small
            wrapMode: Text.WordWrap
            maximumLineCount: 9
            elide: Text.ElideRight
        }
        Words {
            visible: root.several
            text: qsTr("%1 of %2, next").arg(root.shown + 1).arg(root.count)
            font.pixelSize: Theme.small
        }
    }
}
