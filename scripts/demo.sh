#!/usr/bin/env bash
# Builds the tool and runs it on every starter recipe, then on one made wrong on purpose. The files come to out/.
set -uo pipefail
ROOT="$(cd -P "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
cd "$ROOT" || exit 1
FAILED=0

# Says the command as a maker would type it, then runs it.
dryfit() {
    echo "\$ dryfit $*"
    "$ROOT/scripts/dryfit.sh" "$@"
}

# $1: the recipe, $2: the folder, $3: the exit code that it should leave with.
build() {
    dryfit build "$1" --out "$2" --quiet
    local code=$?
    if [ "$code" -ne "$3" ]; then
        echo "It left with $code; $3 was expected." >&2
        FAILED=1
    elif [ "$code" -eq 0 ]; then
        echo "Nothing stops the saw. In $2:"
        ls "$2" | sed 's/^/    /'
    fi
    echo
}

echo "== The starters"
for recipe in templates/starters/*.dryfit.yaml; do
    build "$recipe" "out/$(basename "$recipe" .dryfit.yaml)" 0
done

echo "== One made wrong on purpose: a door cut too narrow, a rail cut too short, a panel cut too small"
WRONG="out/made-wrong.dryfit.yaml"
{
    cat templates/starters/studio-cupboard.dryfit.yaml
    echo "as cut:"
    echo "  upper right door: { width: 11 1/2 }"
    echo "  upper left door top rail: { length: 7 3/4 }"
    echo "  base right door panel: { width: 11 3/8 }"
} >"$WRONG"
build "$WRONG" out/made-wrong 1
for slip in front-gap-too-wide joint-open panel-falls-out; do
    if ! grep -q "\"$slip\"" out/made-wrong/findings.json; then
        echo "It should have been told of: $slip." >&2
        FAILED=1
    fi
done

echo "== The sum behind a number"
dryfit why templates/starters/studio-cupboard.dryfit.yaml base/left-door/panel.width || FAILED=1
echo
echo "== Where to look"
echo "Drawings with real gaps:  $ROOT/out/*/front.svg (any browser)"
echo "Cut lists to print:       $ROOT/out/*/cutlist.html (any browser)"
echo "In 3D:                    $ROOT/out/*/piece.glb (any glTF viewer)"
exit "$FAILED"
