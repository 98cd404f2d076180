#!/usr/bin/env bash
# Measures lineworthy batch against an oracle: the same decisions written out in Go, with the standard JSON decoder. It is
# the least that judging takes. Both read the same file of facts, one line each, and must write the same bytes; they take
# turns in every round. Usage: testdata/bench/oracle.sh [LINES] [ROUNDS]
set -euo pipefail
cd "$(dirname "$0")/../.."
lines=${1:-5000}
rounds=${2:-5}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

go build -o "$work/lineworthy" ./cmd/lineworthy
go build -o "$work/tool" ./testdata/bench/tool
for plant in healthy mixed sick; do
	"$work/tool" make "$plant" plant "$lines" "$work/$plant"
	find "$work/$plant" -name '*.json' | sort | xargs awk 1 > "$work/$plant.jsonl"
done

# timed PLANT WORKERS WAY COMMAND...: wall and processor time.
timed() {
	local plant=$1 workers=$2 way=$3 TIMEFORMAT='%R %U %S'
	shift 3
	{ time { "$@" > "$work/out.$way" 2> "$work/err" || [ $? -ge 3 ] || { cat "$work/err" >&2; exit 1; }; }; } 2> "$work/took"
	awk -v p="$plant" -v k="$workers" -v w="$way" '{ print p, k, w, $1, $2 + $3 }' "$work/took" >> "$work/times"
}
for round in $(seq "$rounds"); do
	for plant in healthy mixed sick; do
		for workers in 1 2; do
			facts=$work/$plant.jsonl
			timed "$plant" "$workers" oracle "$work/tool" oracle "$workers" "$facts"
			timed "$plant" "$workers" batch "$work/lineworthy" batch --facts --workers "$workers" "$facts"
			timed "$plant" "$workers" forgetful "$work/lineworthy" batch --facts --recall=false --workers "$workers" "$facts"
			cmp "$work/out.oracle" "$work/out.batch"
			cmp "$work/out.oracle" "$work/out.forgetful"
		done
	done
	echo "round $round" >&2
done
median() { sort -n | awk '{ t[NR] = $1 } END { print t[int((NR + 1) / 2)] }'; }
printf '%d lines, %d rounds, medians; the answers are the same, byte for byte\n\n' "$lines" "$rounds"
printf '| plant, workers | way | µs a line | processor µs | times the oracle, by the clock | of the processor |\n|---|---|---:|---:|---:|---:|\n'
for plant in healthy mixed sick; do
	for workers in 1 2; do
		for way in oracle batch forgetful; do
			wall=$(awk -v p=$plant -v k=$workers -v w=$way '$1 == p && $2 == k && $3 == w { print $4 }' "$work/times" | median)
			cpu=$(awk -v p=$plant -v k=$workers -v w=$way '$1 == p && $2 == k && $3 == w { print $5 }' "$work/times" | median)
			if [ "$way" = oracle ]; then first_wall=$wall first_cpu=$cpu; fi
			awk -v p="$plant, $workers" -v w="$way" -v n="$lines" -v a="$wall" -v b="$cpu" -v fa="$first_wall" -v fb="$first_cpu" \
				'BEGIN { printf "| %s | %s | %.0f | %.0f | %.2f | %.2f |\n", p, w, a * 1e6 / n, b * 1e6 / n, a / fa, b / fb }'
		done
	done
done
