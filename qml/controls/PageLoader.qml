// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

// A page, and the sizes that it was made for.
Loader {
    property string sizes
}
