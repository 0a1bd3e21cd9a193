#!/usr/bin/env bash
# Runs the tool from a clone: scripts/dryfit.sh build cupboard.dryfit.yaml --out cupboard
# Builds it first, and only when a source file has changed since the last time.
set -euo pipefail

here() {
    local path="$1" target
    while [ -L "$path" ]; do
        target="$(readlink "$path")"
        case "$target" in
            /*) path="$target" ;;
            *) path="$(dirname "$path")/$target" ;;
        esac
    done
    (cd -P "$(dirname "$path")/.." && pwd)
}
ROOT="$(here "${BASH_SOURCE[0]}")"
# shellcheck source=scripts/sdk.sh
. "$ROOT/scripts/sdk.sh"

STATE="$ROOT/artifacts/tool"
TOOL="$STATE/program/dryfit.dll"
SOURCES="$STATE/sources.txt"

# Every file the tool is built from, so that one taken away is noticed as well as one changed.
sources() {
    cd "$ROOT"
    find global.json Directory.Build.props Directory.Packages.props src templates \
        -type d \( -name bin -o -name obj \) -prune -o -type f "$@" -print
}

is_current() {
    [ -f "$TOOL" ] && [ -f "$SOURCES" ] &&
        [ "$(sources)" = "$(cat "$SOURCES")" ] &&
        [ -z "$(sources -newer "$STATE/built")" ]
}

# Compiled beforehand the tool runs in half the time. The compiler for that is a package of its own, which is not to be had
# for every system; without it the tool is compiled while it runs. Lock files stay as they are.
publish_compiled() {
    local rid
    rid="$(dotnet --info | sed -n 's/^ *RID: *//p' | head -n 1)"
    [ -n "$rid" ] && publish -r "$rid" --self-contained false -p:PublishReadyToRun=true \
        -p:NuGetLockFilePath=obj/compiled.lock.json -p:RestoreLockedMode=false
}

publish_plain() { publish; }

publish() {
    (cd "$ROOT" && dotnet publish src/Cli/Dryfit.Cli.csproj -c Release -v quiet -o "$STATE/program" "$@") \
        >"$STATE/build.log" 2>&1
}

build() {
    need_sdk || exit 70
    mkdir -p "$STATE"
    # One build at a time: two would write the same files. A lock older than ten minutes was left by a crash.
    local waited=0
    while ! mkdir "$STATE/lock" 2>/dev/null; do
        if [ -n "$(find "$STATE/lock" -prune -mmin +10 2>/dev/null)" ]; then
            rmdir "$STATE/lock" 2>/dev/null || true
            continue
        fi
        [ "$waited" -gt 0 ] || echo "Waiting for another build of the tool ..." >&2
        waited=$((waited + 1))
        sleep 1
    done
    trap 'rmdir "$STATE/lock" 2>/dev/null || true' EXIT
    if ! is_current; then
        echo "Building the tool ..." >&2
        local listed
        listed="$(sources)"
        # Marked with the time before the build, so that what changes while it runs is built next time.
        touch "$STATE/started"
        if ! publish_compiled && ! publish_plain; then
            cat "$STATE/build.log" >&2
            echo "The tool could not be built; the reason stands above." >&2
            exit 70
        fi
        mv "$STATE/started" "$STATE/built"
        printf '%s\n' "$listed" >"$SOURCES"
    fi
    rmdir "$STATE/lock"
    trap - EXIT
}

is_current || build
exec dotnet exec "$TOOL" "$@"
