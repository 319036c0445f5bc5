// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Templates as T
import QtTest
import Undermark.App
import Undermark.Fixture
import Undermark.Ui

// The whole screen over the demo car, touched and looked at.
TestCase {
    id: root

    property Main window: null

    when: windowShown

    Component {
        id: mainComponent
        Main {
            model: Fixture.model
        }
    }

    function open(size: size, state: string, page: string, language = "en", percent = 100) {
        Fixture.reset(state);
        if (language !== "en")
            Fixture.speak(language);
        Fixture.settings.choose(ScreenSettings.TextSize, [100, 125, 150, 175, 200].indexOf(percent));
        show(size, page);
    }
    function show(size: size, page: string) {
        tryVerify(() => !Fixture.ahead.planning);
        root.window = createTemporaryObject(mainComponent, root,
                                            {width: size.width, height: size.height, page: page});
        verify(root.window);
        waitForRendering(root.window.contentItem);
        wait(50);
    }

    // Every visible item below `item`, in a flat list.
    function visibleItems(item: Item): var {
        const all = [];
        const collect = above => {
            for (const child of Array.from(above.children)) {
                if (!child.visible)
                    continue;
                all.push(child);
                collect(child);
            }
        };
        collect(item);
        return all;
    }

    // Whether a view that slides has it wholly in sight.
    function inSight(item: Item): bool {
        for (let above = item.parent; above; above = above.parent) {
            if (!(above instanceof Flickable))
                continue;
            const r = item.mapToItem(above, 0, 0, item.width, item.height);
            if (above.contentHeight + above.topMargin + above.bottomMargin > above.height && (r.y < 0 || r.y + r.height > above.height))
                return false;
            if (above.contentWidth > above.width && (r.x < 0 || r.x + r.width > above.width))
                return false;
        }
        return true;
    }

    function visibleTexts(): var {
        return visibleItems(root.window.contentItem).filter(i => i instanceof Text && i.text !== ""
                                                                 && inSight(i));
    }
    function visibleButtons(): var {
        return visibleItems(root.window.contentItem).filter(i => i instanceof T.AbstractButton
                                                                 && i.enabled && inSight(i));
    }

    function describe(item: Item): string {
        return item + " '" + (item.text ?? "") + "' in " + root.window.width + "x"
            + root.window.height;
    }

    // Inside the window, and inside whatever carries it.
    function verifyInside(item: Item) {
        const r = item.mapToItem(null, 0, 0, item.width, item.height);
        if (!(r.x >= -0.5 && r.y >= -0.5 && r.x + r.width <= root.window.width + 0.5
              && r.y + r.height <= root.window.height + 0.5))
            fail(describe(item) + " is outside: " + r);
    }

    function buttonNamed(text: string): Item {
        return visibleButtons().find(button => !(button instanceof FieldButton) && button.text === text) ?? null;
    }
    function touch(text: string) {
        tryVerify(() => buttonNamed(text) !== null, 2000, "no button " + text);
        wait(30);  // until layouts are at rest
        const button = buttonNamed(text);
        const event = touchEvent(button);
        event.press(0, button).commit();
        event.release(0, button).commit();
    }
}
