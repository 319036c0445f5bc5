# SPDX-License-Identifier: GPL-3.0-or-later
#
# A control unit behind an adapter, by python3-can (its slcan bus), for
# tests/app/cli/outside_sources_test.cpp: answers OBD at 7E8, what is longer than a frame by
# ISO-TP and only after the flow control. obd_unit.py DEVICE; prints what it was asked.
import sys
import can

bus = can.Bus(interface="slcan", channel=sys.argv[1], bitrate=500000, sleep_after_open=0.1)
rest = None


def send(*data):
    bus.send(can.Message(arbitration_id=0x7E8, is_extended_id=False, data=bytes(data).ljust(8, b"\0")))


print("ready", flush=True)
for message in bus:
    data = bytes(message.data)
    if message.arbitration_id == 0x7E0 and data[0] == 0x30 and rest:
        print("flow control", flush=True)
        send(0x21, *rest)
        rest = None
    if message.arbitration_id not in (0x7DF, 0x7E0) or data[:2] != b"\x02\x01":
        continue
    pid = data[2]
    print(f"asked {pid:02X}", flush=True)
    if pid == 0x00:
        send(0x06, 0x41, 0x00, 0x00, 0x08, 0x00, 0x01)  # 0D, and there is more
    elif pid == 0x20:
        send(0x06, 0x41, 0x20, 0x00, 0x02, 0x00, 0x01)  # 2F
    elif pid in (0x40, 0x60):
        send(0x06, 0x41, pid, 0x00, 0x00, 0x00, 0x01)
    elif pid == 0x80:
        send(0x06, 0x41, 0x80, 0x00, 0x00, 0x00, 0x01)
    elif pid == 0xA0:
        send(0x06, 0x41, 0xA0, 0x04, 0x00, 0x00, 0x00)  # A6
    elif pid == 0x0D:
        send(0x03, 0x7F, 0x01, 0x78)  # wait
        send(0x03, 0x41, 0x0D, 0x3C)
    elif pid == 0xA6:
        send(0x06, 0x41, 0xA6, 0x00, 0x12, 0xD6, 0x87)
    elif pid == 0x2F:  # with speed and odometer behind it: ten bytes
        send(0x10, 0x0A, 0x41, 0x2F, 0x80, 0x0D, 0x3C, 0xA6)
        rest = [0x00, 0x12, 0xD6, 0x87]
