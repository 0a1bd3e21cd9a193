#!/usr/bin/env bash
# Measures the solids on a workload file and prints one line a part (id, volume in mm3, surface in mm2, triangles), then the
# times and the peak memory as lines that start with "#":
#
#     scripts/bench.sh solids FILE [--peer] [--pairs FILE]
#
# With --peer the general-purpose kernel manifold-3d (npm, through node) does the same work in between, and the ratio is
# printed. With --pairs the overlaps and gaps of the pairs listed (two ids a line) are measured as well.
#
#     scripts/bench.sh starters
#
# times every starter from the text of its recipe to the bytes of all its files.
#
#     scripts/bench.sh checks
#
# times all checks on every starter, and on rows of carcases of up to 5,000 parts, the most a recipe may ask for.
#
#     scripts/bench.sh slips
#
# makes a maker's slips on sound pieces and prints by kind how many were made and found.
set -euo pipefail
ROOT="$(cd -P "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
# shellcheck source=scripts/sdk.sh
. "$ROOT/scripts/sdk.sh"
need_sdk

if [ "${1:-}" = "starters" ] || [ "${1:-}" = "checks" ]; then
    dotnet build "$ROOT/tests/Bench" -c Release -v quiet --nologo >&2
    exec dotnet "$ROOT/tests/Bench/bin/Release/net10.0/Dryfit.Bench.dll" "$1" "$ROOT"/templates/starters/*.dryfit.yaml
fi
if [ "${1:-}" = "slips" ]; then
    dotnet build "$ROOT/tests/Bench" -c Release -v quiet --nologo >&2
    exec dotnet "$ROOT/tests/Bench/bin/Release/net10.0/Dryfit.Bench.dll" slips
fi
if [ "${1:-}" != "solids" ] || [ $# -lt 2 ]; then
    sed -n '2,21s/^# \{0,1\}//p' "$0" >&2
    exit 2
fi
shift

for argument in "$@"; do
    if [ "$argument" = "--peer" ] && [ ! -d "$ROOT/tests/Solids/peer/node_modules/manifold-3d" ]; then
        (cd "$ROOT/tests/Solids/peer" && npm ci --no-audit --no-fund >&2)
    fi
done

dotnet build "$ROOT/tests/Bench" -c Release -v quiet --nologo >&2
exec dotnet "$ROOT/tests/Bench/bin/Release/net10.0/Dryfit.Bench.dll" "$ROOT/tests/Solids/peer" "$@"
