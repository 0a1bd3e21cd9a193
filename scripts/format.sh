#!/usr/bin/env bash
# Checks the formatting of all C# and project files; with --write it mends it.
set -euo pipefail
ROOT="$(cd -P "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
# shellcheck source=scripts/sdk.sh
. "$ROOT/scripts/sdk.sh"
cd "$ROOT"
need_sdk
dotnet tool restore >/dev/null
case "${1:-}" in
    "") dotnet csharpier check src tests ;;
    --write) dotnet csharpier format src tests ;;
    *)
        echo "usage: scripts/format.sh [--write]" >&2
        exit 2
        ;;
esac
