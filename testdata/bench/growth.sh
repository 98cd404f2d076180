#!/usr/bin/env bash
# Wall time of one cold check with the whole catalog against one whose catalog holds only what the line names, interleaved
# in one run: start-up must not grow with the catalog. Usage: testdata/bench/growth.sh [ROUNDS]
set -euo pipefail
cd "$(dirname "$0")/../.."
rounds=${1:-31}
line=testdata/lines/butanone-day-tank/line.yaml
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

go build -o "$work/full" ./cmd/lineworthy
git ls-files -z | xargs -0 cp --parents -t "$work/" 2> /dev/null || true
"$work/full" check --format json "$line" | grep -oE '"(fluids|materials|hoses|connections|seals)/[^"]+"' | tr -d '"' | sort -u > "$work/used"
for kind in fluids materials hoses connections seals; do
	for file in "$work/catalog/$kind"/*.yaml; do
		id=$(basename "$file" .yaml)
		grep -qx "$kind/$id" "$work/used" || rm "$file"
	done
done
awk -F '\t' 'NR == FNR { used[$1]; next } $1 == "sources" || ($1 "/" $3) in used' "$work/used" catalog/index.txt > "$work/catalog/index.txt"
(cd "$work" && go build -o small ./cmd/lineworthy)
now() { date +%s%N; }
for _ in $(seq "$rounds"); do
	for size in small full; do
		start=$(now)
		"$work/$size" check "$line" > /dev/null
		echo $((($(now) - start) / 1000)) >> "$work/$size.times"
	done
done
median() { sort -n "$work/$1.times" | sed -n "$(((rounds + 1) / 2))p"; }
printf 'rounds %d   %d of the catalog: %d us   whole catalog: %d us   ratio %s\n' "$rounds" "$(wc -l < "$work/used")" \
	"$(median small)" "$(median full)" "$(awk "BEGIN { printf \"%.2f\", $(median full) / $(median small) }")"
