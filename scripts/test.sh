#!/usr/bin/env bash
# Restores, builds and runs all tests. Needs the .NET 10 SDK alone; tests that need node are skipped where there is
# none. The last line is always "N passed, N failed", with ", N skipped" where some were.
set -uo pipefail
ROOT="$(cd -P "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
# shellcheck source=scripts/sdk.sh
. "$ROOT/scripts/sdk.sh"
cd "$ROOT" || exit 1

# Says what went wrong and still ends with the line that readers of the log look for.
give_up() {
    echo "$1" >&2
    echo "0 passed, 1 failed"
    exit 1
}

# Packages of the tests that run in node, installed once and again when their lock file changes.
install_node_packages() {
    local lock folder
    for lock in tests/*/package-lock.json tests/*/*/package-lock.json; do
        [ -e "$lock" ] || continue
        folder="$(dirname "$lock")"
        if ! command -v node >/dev/null 2>&1 || ! command -v npm >/dev/null 2>&1; then
            echo "There is no node here: the tests of $folder that need it are skipped."
            continue
        fi
        if [ -e "$folder/node_modules/.installed" ] && cmp -s "$lock" "$folder/node_modules/.installed"; then
            continue
        fi
        echo "Installing the node packages of $folder ..."
        if (cd "$folder" && npm ci --no-audit --no-fund --loglevel=error); then
            cp "$lock" "$folder/node_modules/.installed"
        else
            rm -rf "$folder/node_modules"
            echo "They could not be installed: the tests of $folder that need them are skipped." >&2
        fi
    done
}

need_sdk || give_up "Without the SDK nothing can be tested."
dotnet restore Dryfit.slnx -v quiet || give_up "The packages could not be restored."
dotnet build Dryfit.slnx -c Release --no-restore -v quiet || give_up "It does not build."
install_node_packages

mkdir -p artifacts
LOG="artifacts/tests.log"
dotnet test --solution Dryfit.slnx -c Release --no-build --no-ansi --no-progress 2>&1 | tee "$LOG"
STATUS="${PIPESTATUS[0]}"

# The run ends with a summary of all projects: "total: 12", "failed: 0", "succeeded: 12", "skipped: 0".
count() {
    sed -n '/^Test run summary/,$p' "$LOG" | sed -n "s/^ *$1: *\([0-9][0-9]*\).*/\1/p" | tail -n 1
}
PASSED="$(count succeeded)"
FAILED="$(count failed)"
SKIPPED="$(count skipped)"
if [ -z "$PASSED" ] || [ -z "$FAILED" ]; then
    give_up "The tests ended without a summary (dotnet test left with $STATUS)."
fi
# A test program that crashed has no failed test to show, but it has not passed either.
if [ "$STATUS" -ne 0 ] && [ "$FAILED" -eq 0 ]; then
    echo "dotnet test left with $STATUS although no test failed." >&2
    FAILED=1
fi

LINE="$PASSED passed, $FAILED failed"
if [ -n "$SKIPPED" ] && [ "$SKIPPED" -gt 0 ]; then
    LINE="$LINE, $SKIPPED skipped"
fi
echo "$LINE"
[ "$FAILED" -eq 0 ]
