// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Undermark.Ui

// Contrast as WCAG 2.1 defines it (relative luminance, 1.4.3).
TestCase {
    id: root

    name: "Theme"

    function luminance(c: color): real {
        const part = v => v <= 0.03928 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        return 0.2126 * part(c.r) + 0.7152 * part(c.g) + 0.0722 * part(c.b);
    }
    function contrast(a: color, b: color): real {
        const la = luminance(a);
        const lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }
    function atLeast(wanted: real, front: string, back: string) {
        const found = contrast(Theme[front], Theme[back]);
        verify(found >= wanted, front + " on " + back + (Theme.night ? " by night" : " by day")
               + ": " + found.toFixed(2) + ", wanted " + wanted);
    }

    function test_contrastItselfIsMeasuredRight() {
        compare(contrast(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1)), 21);
        // WCAG's well-known limit grey on white (from memory): 4.54
        fuzzyCompare(contrast(Qt.rgba(0x76 / 255, 0x76 / 255, 0x76 / 255, 1), Qt.rgba(1, 1, 1, 1)), 4.54, 0.01);
    }

    function test_everyTextCanBeRead_data() {
        return [{tag: "day", night: false}, {tag: "night", night: true}];
    }
    function test_everyTextCanBeRead(data) {
        Theme.night = data.night;
        for (const ground of ["paper", "surface"]) {
            atLeast(7, "ink", ground);        // the big numbers
            for (const ink of ["quietInk", "reserve", "caution", "sure"])
                atLeast(4.5, ink, ground);
        }
        atLeast(4.5, "inkOnSure", "sure");
        atLeast(4.5, "ink", "track");
        Theme.night = false;
    }

    function test_whatCanBeTouchedHasAVisibleEdge_data() {
        return [{tag: "day", night: false}, {tag: "night", night: true}];
    }
    function test_whatCanBeTouchedHasAVisibleEdge(data) {
        Theme.night = data.night;  // WCAG 2.1, 1.4.11: 3 to 1
        for (const ground of ["paper", "surface", "track"])
            atLeast(3, "edge", ground);
        atLeast(3, "sure", "track");
        atLeast(3, "reserve", "track");
        Theme.night = false;
    }

    function test_touchTargetsAre64Pixels() {
        compare(Theme.scale, 1);
        compare(Theme.touch, 64);
    }
}
