#!/usr/bin/env bash
# Wall time of one cold `lineworthy check` against the stock `opa exec` on the same rules and the facts of the same line,
# interleaved in one run; medians and their ratio. Usage: testdata/bench/cold.sh [ROUNDS] [LINE]
# OPA names the stock program; without it the pinned version is built first, which takes minutes.
set -euo pipefail
cd "$(dirname "$0")/../.."
rounds=${1:-21}
line=${2:-testdata/lines/butanone-day-tank/line.yaml}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

if [ -z "${OPA:-}" ]; then
	version=$(go list -m -f '{{.Version}}' github.com/open-policy-agent/opa)
	GOBIN=$work go install "github.com/open-policy-agent/opa@$version"
	OPA=$work/opa
fi
go build -o "$work/lineworthy" ./cmd/lineworthy
"$work/lineworthy" facts "$line" > "$work/facts.json"
mkdir "$work/rules"
cp -r rules/* "$work/rules/"
find "$work/rules" -type f ! -name '*.rego' -delete
find "$work/rules" -name '*_test.rego' -delete
(cd "$work/rules" && "$OPA" build -b . -o "$work/bundle.tar.gz" 2> /dev/null)

now() { date +%s%N; }
timed() { local start; start=$(now); "$@" > /dev/null 2>&1 || true; echo $((($(now) - start) / 1000)); }
for _ in $(seq "$rounds"); do
	timed "$work/lineworthy" check "$line" >> "$work/ours"
	timed "$OPA" exec -b "$work/bundle.tar.gz" --decision verdict/findings "$work/facts.json" >> "$work/stock"
done
median() { sort -n "$1" | sed -n "$(((rounds + 1) / 2))p"; }
ours=$(median "$work/ours")
stock=$(median "$work/stock")
printf 'rounds %d   lineworthy check %d us   opa exec %d us   ratio %s\n' "$rounds" "$ours" "$stock" \
	"$(awk "BEGIN { printf \"%.2f\", $ours / $stock }")"
