#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
#
# live_load.py SECONDS PROGRAM ARGS…: runs the program with --source slcan:LINE,j1939 behind ARGS,
# says to it what a busy bus does (level, speed and distance ten times a second among 4,000
# frames a second), and prints what it takes of a core, its largest memory, how it kept up, and
# how soon it ends when it is asked to.
#     live_load.py 20 build/release/bin/undermark-cli watch --json --calibration POINTS.csv
#     QT_QPA_PLATFORM=offscreen live_load.py 20 build/release/bin/undermark --logbook FILE
#     xvfb-run live_load.py 20 build/release/bin/undermark --logbook FILE
# Processor time is what the kernel's scheduler counted of all its threads, in ns (schedstat of
# proc(5)); beside it what the clock's ticks say of it (utime and stime of stat), and the same
# of a loop that does nothing else, 2 s after it.
import os, subprocess, sys, termios, time, tty


def scheduled(pid):
    """s on a core, of all threads that live."""
    tasks = f"/proc/{pid}/task"
    return sum(int(open(f"{tasks}/{task}/schedstat").read().split()[0]) for task in os.listdir(tasks)) / 1e9


def ticked(pid):
    fields = open(f"/proc/{pid}/stat").read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def memory(pid, what):
    for line in open(f"/proc/{pid}/status"):
        if line.startswith(what):
            return int(line.split()[1]) / 1024
    return 0.0


class Used:
    """What a process has used of a core since."""

    def __init__(self, pid):
        self.pid, self.begin = pid, time.monotonic()
        self.scheduled, self.ticked = scheduled(pid), ticked(pid)

    def shares(self):
        took = time.monotonic() - self.begin
        return (100 * (scheduled(self.pid) - self.scheduled) / took, 100 * (ticked(self.pid) - self.ticked) / took)


class Bus:
    """A line that says 4,000 frames a second."""

    def __init__(self):
        self.ours, theirs = os.openpty()
        tty.setraw(theirs)
        self.name = os.ttyname(theirs)
        self.noise = "".join(f"T18FF{i % 256:02X}{i % 200:02X}80011223344556677\r" for i in range(37))

    def say(self, tick, kmh=90.0, level=200):
        """40 frames; at each tenth tick level, speed and distance among them."""
        block = self.noise + self.noise[:3 * 27]
        if tick % 10 == 0:
            count = int(kmh * tick * 0.01 / 3600 / 0.005).to_bytes(4, "little").hex().upper()
            speed = int(kmh * 256).to_bytes(2, "little").hex().upper()
            block = self.noise + (f"T18FEFC318FF{level:02X}FFFFFFFFFFFF\r" f"T18FEF1008FF{speed}FFFFFFFFFF\r"
                                  f"T18FEC1178{count}FFFFFFFF\r")
        os.write(self.ours, block.encode())


def main():
    seconds, program = float(sys.argv[1]), sys.argv[2:]
    bus = Bus()
    child = subprocess.Popen(program + ["--source", f"slcan:{bus.name},j1939"], stdout=subprocess.DEVNULL)
    time.sleep(3)  # it starts
    used, begin, sent, late, tick = Used(child.pid), time.monotonic(), 0, 0.0, 0
    while time.monotonic() - begin < seconds:
        tick += 1
        due = begin + tick * 0.01
        bus.say(tick, level=int(200 - tick * 0.001) & 0xFF)
        sent += 40
        now = time.monotonic()
        late = max(late, now - due)
        time.sleep(max(0.0, due - now))
    took = time.monotonic() - begin
    exact, ticks = used.shares()
    print(f"{sent / took:.0f} frames/s over {took:.0f} s: {exact:.2f} % of a core ({ticks:.1f} % by ticks), "
          f"{memory(child.pid, 'VmHWM'):.1f} MiB at most ({memory(child.pid, 'RssAnon'):.1f} of its own), "
          f"writer late by {1000 * late:.0f} ms at most")
    asked = time.monotonic()
    child.terminate()
    child.wait(10)
    print(f"ended {1000 * (time.monotonic() - asked):.0f} ms after SIGTERM")
    loop = subprocess.Popen([sys.executable, "-c", "while True: pass"])
    time.sleep(0.5)
    used = Used(loop.pid)
    time.sleep(2)
    loop_exact, loop_ticks = used.shares()
    loop.kill()
    loop.wait()
    print(f"a loop that does nothing else: {loop_exact:.0f} % of a core ({loop_ticks:.0f} % by ticks); "
          f"of the same share the program has {100 * exact / loop_exact:.2f} %")


if __name__ == "__main__":
    main()
