// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Undermark.App

// What must be read before the number: the worst first, the rest a touch away.
Rectangle {
    id: root

    required property list<noticeText> notices
    property int shown: 0
    readonly property int count: notices.length
    readonly property string word: count > 0 ? notices[shown].word : ""
    readonly property string message: count > 0 ? notices[shown].text : ""
    readonly property color accent: count === 0 ? Theme.ink
                                  : notices[shown].problem ? Theme.reserve
                                  : notices[shown].caution ? Theme.caution : Theme.ink

    onNoticesChanged: shown = 0

    visible: count > 0
    implicitHeight: count > 1 ? Theme.touch : Math.max(5 * Theme.step, text.implicitHeight + Theme.step)
    radius: Theme.step / 2
    color: Theme.surface
    border.width: 2 * Theme.hairline
    border.color: accent

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.step
        spacing: Theme.step

        Text {
            id: text
            Layout.fillWidth: true
            Layout.fillHeight: true
            text: qsTr("<b>%1:</b> %2").arg(root.word).arg(root.message)
            textFormat: Text.StyledText
            color: root.accent
            font.pixelSize: Theme.small
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.WordWrap
            maximumLineCount: 3
            elide: Text.ElideRight
            Accessible.role: Accessible.AlertMessage
            Accessible.name: root.word + ": " + root.message
        }
        TouchButton {
            visible: root.count > 1
            text: qsTr("%1 of %2").arg(root.shown + 1).arg(root.count)
            textSize: Theme.small
            Accessible.description: qsTr("Shows the next notice")
            onClicked: root.shown = (root.shown + 1) % root.count
        }
    }
}
