#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
#
# live_delay.py CHANGES UNDERMARK: from a frame on the bus to a pixel of the real program in a
# window of its own (Xvfb), among 4,000 frames a second. The car starts and stops, so the page
# Pump is covered and uncovered; from the frame with the speed written to the first changed
# pixel of the display's memory. Prints median, 99th percentile and the longest, in ms. (The
# level itself is averaged over 30 s before it is shown, so a figure of it would say nothing.)
#     live_delay.py 120 build/release/bin/undermark
import mmap, os, random, subprocess, sys, tempfile, time

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from live_load import Bus

HEIGHT, WIDTH = 480, 800


def display(folder):
    """Xvfb, its number and its picture."""
    server = subprocess.Popen(["Xvfb", "-displayfd", "1", "-screen", "0", f"{WIDTH}x{HEIGHT}x24", "-fbdir", folder],
                              stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    number = server.stdout.readline().decode().strip()
    with open(f"{folder}/Xvfb_screen0", "rb") as dump:
        return server, f":{number}", mmap.mmap(dump.fileno(), 0, access=mmap.ACCESS_READ)


def main():
    changes, program = int(sys.argv[1]), sys.argv[2]
    bus, delays, missed = Bus(), [], 0
    with tempfile.TemporaryDirectory() as folder:
        server, number, picture = display(folder)
        environment = dict(os.environ, DISPLAY=number, XDG_CONFIG_HOME=folder, XDG_RUNTIME_DIR=folder, LC_ALL="C")
        environment.pop("QT_QPA_PLATFORM", None)
        child = subprocess.Popen([program, "--demo", "--page", "pump", "--size", f"{WIDTH}x{HEIGHT}",
                                  "--source", f"slcan:{bus.name},j1939"], env=environment)
        body = slice(len(picture) - 4 * WIDTH * HEIGHT, len(picture))
        begin, tick, kmh, phase = time.monotonic(), 0, 0.0, 0
        drawn, said, next_at = picture[body], None, begin + 8
        while len(delays) + missed < changes:
            now = time.monotonic()
            if said is not None and picture[body] != drawn:
                delays.append(1000 * (time.monotonic() - said))
                said, next_at = None, now + random.uniform(0.6, 1.1)
            elif said is not None and now - said > 5:
                said, next_at, missed = None, now, missed + 1
            if now < begin + tick * 0.01:
                time.sleep(0.0005)
                continue
            tick += 1
            if said is None and now > next_at:
                drawn, kmh, phase = picture[body], 30.0 - kmh, tick % 10  # whenever it may be
                bus.say(0, kmh)
                said = time.monotonic()
            else:
                bus.say(tick - phase, kmh)
        for process in (child, server):
            process.terminate()
            process.wait(10)
    delays.sort()
    at = lambda share: delays[min(len(delays) - 1, int(share * len(delays)))]
    print(f"{len(delays)} changes ({missed} not seen): median {at(0.5):.0f} ms, 99th percentile {at(0.99):.0f} ms, "
          f"longest {delays[-1]:.0f} ms from frame to pixel")


if __name__ == "__main__":
    main()
