#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Prints how quick the touch screen starts and scrolls, with the software renderer
# and no display, beside an empty Qt Quick Controls window. Needs screen_frames
# (-DUNDERMARK_BENCH=ON). Ten starts of each, taken in turn.
set -euo pipefail
program=$(dirname "${BASH_SOURCE[0]}")/../../build/release/bin/screen_frames
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
"$program" make "$folder" 2> /dev/null
for round in 1 2 3 4 5 6 7 8 9 10; do
    for what in empty screen; do
        echo "$what $("$program" "$what" "$(date +%s%N)" "$folder" 2> /dev/null)"
    done
done | sort -k1,1 -k2,2n | awk '{ ms[$1] = ms[$1] " " $2; mb[$1] = $4 }
    END { for (what in ms) { n = split(ms[what], all, " ")
              median[what] = all[int((n + 1) / 2)]
              printf "%-7s first frame %d ms (median of %d), %s MB\n", what, median[what], n, mb[what] }
          printf "ratio: first frame %.2f, memory %.2f\n",
                 median["screen"] / median["empty"], mb["screen"] / mb["empty"] }'
"$program" scroll 10000 2> /dev/null
