#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
#
# A whole `range` on a logbook of 2,000 fills and 20,000 trips against the sqlite3
# shell printing the same rows (fills, trips, and the entries table that holds
# their ids and recording times). Prints both medians of 31 runs, and their ratio.
#     tests/bench/range_process.sh [build/release]
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
build=${1:-$root/build/release}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
"$build/bin/fill_logbook" "$work/big.sqlite" 2000 20000

median()
{
    for _ in $(seq 31); do
        local start=$EPOCHREALTIME
        "$@" > /dev/null
        echo "$start $EPOCHREALTIME"
    done | awk '{print ($2 - $1) * 1000}' | sort -n | sed -n 16p
}

ours=$(median "$build/bin/undermark-cli" --logbook "$work/big.sqlite" range --json)
shell=$(median sqlite3 -readonly "$work/big.sqlite" \
    "select * from entries; select * from fills; select * from trips;")
echo "range $ours ms, sqlite3 $shell ms, ratio $(awk "BEGIN {print $ours / $shell}")"
