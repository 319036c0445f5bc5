#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
#
# live_load.py SECONDS PROGRAM ARGS…: runs the program with --source slcan:LINE,j1939 behind ARGS,
# says to it what a busy bus does (level, speed and distance ten times a second among 4,000
# frames a second), and prints what it takes of a core, its largest memory, and how it kept up.
#     live_load.py 30 build/release/bin/undermark-cli watch --json --calibration POINTS.csv
#     QT_QPA_PLATFORM=offscreen live_load.py 30 build/release/bin/undermark --logbook FILE
import os, subprocess, sys, termios, time, tty

seconds, program = float(sys.argv[1]), sys.argv[2:]
ours, theirs = os.openpty()
tty.setraw(theirs)
name = os.ttyname(theirs)
child = subprocess.Popen(program + ["--source", f"slcan:{name},j1939"], stdout=subprocess.DEVNULL)


def processor():
    fields = open(f"/proc/{child.pid}/stat").read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def memory(what):
    for line in open(f"/proc/{child.pid}/status"):
        if line.startswith(what):
            return int(line.split()[1]) / 1024
    return 0.0


time.sleep(3)  # it starts
begin, used, sent, late, km = time.monotonic(), processor(), 0, 0.0, 0.0
noise = "".join(f"T18FF{i % 256:02X}{i % 200:02X}80011223344556677\r" for i in range(37))
tick = 0
while time.monotonic() - begin < seconds:
    tick += 1
    due = begin + tick * 0.01  # 40 frames each
    km += 0.09 * 0.01 / 3.6
    block = noise + noise[:3 * 27]
    if tick % 10 == 0:
        level = int(200 - tick * 0.001) & 0xFF
        block = noise + (f"T18FEFC318FF{level:02X}FFFFFFFFFFFF\r" "T18FEF1008FF005AFFFFFFFFFF\r"
                         f"T18FEC1178{int(km / 0.005).to_bytes(4, 'little').hex().upper()}FFFFFFFF\r")
    os.write(ours, block.encode())
    sent += 40
    now = time.monotonic()
    late = max(late, now - due)
    time.sleep(max(0.0, due - now))
took = time.monotonic() - begin
share = (processor() - used) / took
print(f"{sent / took:.0f} frames/s, {100 * share:.1f} % of a core, "
      f"{memory('VmHWM'):.1f} MiB at most ({memory('RssAnon'):.1f} of its own), writer late by {1000 * late:.0f} ms at most")
child.terminate()
child.wait(10)
