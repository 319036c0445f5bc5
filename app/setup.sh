# SPDX-License-Identifier: GPL-3.0-or-later
#
# Sourced by app/run and tests/run: installs the Debian packages that are
# missing (only those), says what and why, asks nothing; configures, builds, and
# shows how far that is. All that it says goes to stderr.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

# package, then why it is needed; the command line needs these
cli_packages="
g++|the C++20 compiler
cmake|configures the build
ninja-build|runs the build
pkg-config|finds libraries for CMake
ccache|makes the second build quick
libboost-dev|statistics, distributions, monotone interpolation
libeigen3-dev|small matrices of the estimates
libsqlitecpp-dev|the logbook, over SQLite
libsqlite3-dev|the logbook's file format
libexpected-dev|errors as values
nlohmann-json3-dev|the --json answers
libcli11-dev|the command line
libfccp-dev|reading CSV
libpugixml-dev|reading GPX
libhpdf-dev|the fuel card as PDF
fonts-droid-fallback|names in Chinese, Japanese and Korean letters on it
libgeographiclib-dev|distances on the WGS84 ellipsoid
libosmium2-dev|reading OpenStreetMap extracts
libprotozero-dev|their packing
zlib1g-dev|and their compression
nettle-dev|the hash that a photo is known by
"
screen_packages="
qt6-base-dev|the touch screen
qt6-declarative-dev|the touch screen
qt6-declarative-dev-tools|the touch screen's compiler and linter
libgl1-mesa-dev|the touch screen's graphics
qml6-module-qtquick|the touch screen at run time
qml6-module-qtquick-controls|the touch screen at run time
qml6-module-qtquick-templates|the touch screen at run time
qml6-module-qtquick-layouts|the touch screen at run time
qml6-module-qtquick-shapes|the fuel horizon's drawing
qml6-module-qtquick-window|the touch screen at run time
qml6-module-qtqml-workerscript|the touch screen at run time
qt6-tools-dev|finds the translation tools for CMake
qt6-l10n-tools|German and French: the screen's translations are compiled
libfontconfig-dev|finds the typeface's proportional letters
qml6-module-qtqml|the touch screen at run time
qml6-module-qtqml-models|the touch screen at run time
fonts-b612|the typeface of the screen
"
test_packages="
qml6-module-qttest|tests of the touch screen
xvfb|a display for whole ways through the real program
xdotool|touches it there
libglpk-dev|an independent optimiser that plans are compared with
python3-scipy|an independent library that curves are compared with
libkopeninghours-dev|an independent evaluator that opening hours are compared with
qtbase5-dev|which it stands on
osmium-tool|an independent reader that found pumps are compared with
python3-canmatrix|an independent reader that DBC files are compared with
python3-can|a control unit at the other end of an adapter's line
socat|the line between the two
gpsd|a satellite receiver's daemon, played to by gpsfake
gpsd-clients|gpsfake and gpspipe, the other end of an NMEA source
libxml2-utils|checks the GPX that is written
poppler-utils|reads back the PDFs that are written
libbenchmark-dev|the benchmarks
"

# What app/package needs besides
package_packages="
debhelper|the steps of a Debian package
dpkg-dev|builds and describes packages
fakeroot|files of a package belong to root
librsvg2-bin|draws the icon in its sizes
"
# What tests/package needs besides. CI does not install debootstrap: without it there it skips
# the test.
package_test_packages="
debootstrap|a bare Debian to install into
lintian|checks packages against Debian's policy
appstream|checks what software centres read
desktop-file-utils|checks the menu entry
mandoc|checks the manual pages
shared-mime-info|knows a bundle by its first bytes
libglib2.0-bin|tells the type of a file
diffoscope-minimal|tells where two builds differ
"

# recently_changed PATHS…: the files under them (but for those only moved) that the commits of the last day before
# HEAD, or nobody yet, changed; all where there is no history.
recently_changed()
{
    local base
    base=$(git -C "$root" rev-list -1 --before="$(($(git -C "$root" log -1 --format=%ct) - 86400))" HEAD)
    if [ -n "$base" ]; then
        git -C "$root" diff -M90% --name-only --diff-filter=AM "$base" -- "$@"
    else
        git -C "$root" ls-files -- "$@"
    fi
}

# changed_sources MOST: those of engine and app which the commits of the last day changed, or the header beside
# them; of more than MOST those that changed last, and how many were left is said.
changed_sources()
{
    local changed newest
    changed=$(recently_changed engine app | sed -n 's/\.\(cpp\|h\)$/.cpp/p' | sort -u | (cd "$root" && xargs -r ls 2> /dev/null) || true)
    newest=$(for source in $changed; do echo "$(git -C "$root" log -1 --format=%ct -- "$source") $source"; done \
        | sort -k1,1nr -k2 | sed -n "1,$1s/^[^ ]* //p")
    [ "$(wc -w <<< "$changed")" -eq "$(wc -w <<< "$newest")" ] \
        || echo "$(basename "$0"): $(($(wc -w <<< "$changed") - $(wc -w <<< "$newest"))) sources changed before those are left to $0 --all" >&2
    [ -z "$newest" ] || echo "$newest"
}

installed()
{
    [ "$(dpkg-query -W -f '${db:Status-Status}' "$1" 2>/dev/null)" = installed ]
}

# missing LIST: the packages of it that are not installed.
missing()
{
    local package why
    while IFS='|' read -r package why; do
        [ -z "$package" ] || installed "$package" || echo "$package"
    done <<< "$1"
}

# install_missing LIST: one apt-get call for all that is missing of it.
install_missing()
{
    local missing
    mapfile -t missing < <(missing "$1")
    [ ${#missing[@]} -eq 0 ] && return 0
    for package in "${missing[@]}"; do
        echo "missing: $package ($(grep "^$package|" <<< "$1" | cut -d'|' -f2))" >&2
    done
    local as_root=()
    if [ "$(id -u)" -ne 0 ]; then
        command -v sudo > /dev/null || {
            echo "These Debian packages are missing and need root: ${missing[*]}" >&2
            return 1
        }
        as_root=(sudo)
    fi
    echo "installing ${#missing[@]} Debian packages" >&2
    local log
    log=$(mktemp)
    if ! { "${as_root[@]}" apt-get update \
        && "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
            apt-get install -y --no-install-recommends "${missing[@]}"; } > "$log" 2>&1; then
        tail -n 30 "$log" >&2
        echo "could not install the packages above (whole log: $log)" >&2
        return 1
    fi
    rm -f "$log"
}

# configure -DNAME=VALUE…: configures build/release, where it is not so already.
configure()
{
    local cache=$root/build/release/CMakeCache.txt option as_asked=1
    [ -f "$root/build/release/build.ninja" ] || as_asked=
    for option in "$@"; do
        grep -qs "^$(sed 's/^-D//; s/=/:[A-Z]*=/' <<< "$option")\$" "$cache" || as_asked=
    done
    [ -n "$as_asked" ] || (cd "$root" && cmake --preset release "$@" > /dev/null)
}

# Reads what ninja prints, "[120/417] Building …": on a terminal one line that is
# written over, elsewhere a line every half minute.
show_progress()
{
    local line last=$SECONDS said=
    while IFS= read -r line; do
        [[ $line =~ ^\[([0-9]+/[0-9]+)\] ]] || continue
        if [ -t 2 ]; then
            printf '\rbuilding %s' "${BASH_REMATCH[1]}" >&2
            said=1
        elif [ $((SECONDS - last)) -ge 30 ]; then
            echo "building ${BASH_REMATCH[1]}" >&2
            last=$SECONDS
        fi
    done
    [ -z "$said" ] || printf '\r\033[K' >&2
}

# build TARGETS…: builds them in build/release, with nothing but its progress when
# all goes well, else with what the compiler said. (Needs pipefail.)
build()
{
    local log ended=0
    log=$(mktemp)
    NINJA_STATUS='[%f/%t] ' ninja -C "$root/build/release" "$@" 2>&1 | tee "$log" | show_progress \
        || ended=1
    [ "$ended" -eq 0 ] || sed '/^\[[0-9]/d' "$log" >&2
    rm -f "$log"
    return "$ended"
}
