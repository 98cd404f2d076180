#!/usr/bin/env bash
# Measures lineworthy batch against the stock rules engine on the exported bundle: the same files of facts in, the same
# findings out, which are compared. All ways take turns in every round, so that what else the machine does hits all alike.
# Usage: testdata/bench/run.sh [LINES] [ROUNDS]; writes testdata/bench/RESULTS.md.
# OPA names the stock program; without it the pinned version is built first, which takes minutes.
set -euo pipefail
cd "$(dirname "$0")/../.."
lines=${1:-5000}
rounds=${2:-3}
work=$(mktemp -d)
server=
trap 'if [ -n "$server" ]; then kill "$server"; fi; rm -rf "$work"' EXIT

source testdata/bench/stock_engine.sh
go build -o "$work/lineworthy" ./cmd/lineworthy
go build -o "$work/tool" ./testdata/bench/tool
"$work/lineworthy" bundle --out "$work/rules.tar.gz" 2> /dev/null
plants="healthy:plant mixed:plant sick:plant mixed:line"
for p in $plants; do
	"$work/tool" make "${p%:*}" "${p#*:}" "$lines" "$work/$p"
done
address=127.0.0.1:18181
"$OPA" run --server --addr "$address" --log-level error -b "$work/rules.tar.gz" > "$work/server.log" 2>&1 &
server=$!
for _ in $(seq 100); do
	if (exec 3<> "/dev/tcp/${address/:/\/}") 2> /dev/null; then break; fi
	sleep 0.2
done

# timed PLANT WAY COMMAND...: wall and processor time; the standard output is kept to be compared.
timed() {
	local plant=$1 way=$2 TIMEFORMAT='%R %U %S'
	shift 2
	{ time { "$@" > "$work/out.$way" 2> "$work/err" || [ $? -ge 2 ] || { cat "$work/err" >&2; exit 1; }; }; } 2> "$work/took"
	awk -v p="$plant" -v w="$way" -v n="$lines" \
		'{ printf "%s\t%s\t%d\t%d\n", p, w, $1 * 1e6 / n, ($2 + $3) * 1e6 / n }' "$work/took" >> "$work/times"
}
ticks() { awk '{ print $14 + $15 }' "/proc/$server/stat"; }
# posted PLANT WAY CONNECTIONS: the processor time is that of the server alone.
posted() {
	local before
	before=$(ticks)
	"$work/tool" post "http://$address/v1/data/verdict/findings" "$3" "$work/$1" > "$work/out.$2" 2> "$work/took"
	printf '%s\t%s\t%d\t%d\n' "$1" "$2" "$(cat "$work/took")" \
		"$((($(ticks) - before) * 1000000 / $(getconf CLK_TCK) / lines))" >> "$work/times"
}
# ours PLANT WAY OPTIONS...
once() { lines=1 timed 'one line, cold start to exit' "$@"; }
ours() {
	local plant=$1 way=$2
	shift 2
	timed "$plant" "$way" "$work/lineworthy" batch --facts "$@" "$work/$plant"
}

: > "$work/times"
for round in $(seq "$rounds"); do
	for p in $plants; do
		timed "$p" 'stock exec' "$OPA" exec -b "$work/rules.tar.gz" --decision verdict/findings "$work/$p"
		ours "$p" 'lineworthy batch'
		posted "$p" 'stock server, 1 connection' 1
		ours "$p" 'lineworthy batch, 1 worker' --workers 1
		posted "$p" 'stock server, 4 connections' 4
		ours "$p" 'lineworthy batch, nothing recalled' --recall=false
		ours "$p" 'lineworthy batch, nothing recalled, 1 worker' --recall=false --workers 1
		ours "$p" 'lineworthy batch, no guards' --guards=false
		if [ "$round" = 1 ]; then
			printf '%s: ' "$p" >> "$work/same"
			(cd "$work" && ./tool compare out.stock\ exec out.lineworthy* out.stock\ server*) >> "$work/same"
		fi
		echo "round $round, $p" >&2
	done
	for f in "$work/mixed:plant"/00000[0-4].json; do
		once 'stock exec' "$OPA" exec -b "$work/rules.tar.gz" --decision verdict/findings "$f"
		once 'lineworthy batch, facts to findings' "$work/lineworthy" batch --facts "$f"
		once 'stock eval' "$OPA" eval -b "$work/rules.tar.gz" -i "$f" data.verdict.findings
		once 'lineworthy check, sheet to report' "$work/lineworthy" check testdata/lines/butanone-day-tank/line.yaml
	done
done
{
	printf '# Measured speed\n\nWritten by `testdata/bench/run.sh %d %d`. Trust the ratios, not the times: the machine is shared.\n\n' "$lines" "$rounds"
	printf '| | |\n|---|---|\n| machine | %s, %s cores |\n| system | %s |\n| Go | %s |\n| rules engine | %s |\n| rules | %s |\n| lines of each plant | %d, %d kB of facts each |\n| rounds | %d, all ways in turn |\n' \
		"$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo 2> /dev/null | head -1)" "$(getconf _NPROCESSORS_ONLN)" "$(uname -sm)" \
		"$(go env GOVERSION)" "$("$OPA" version | sed -n 's/^Version: /OPA /p')" "$(grep -c '"id"' rules/index.json)" \
		"$lines" "$(($(cat "$work/mixed:plant"/*.json | wc -c) / lines / 1000))" "$rounds"
	printf '\nPlants: `healthy` has its papers, keeps its dates and is strong enough; `sick` is not; `mixed` is seven tenths healthy and one\ntenth sick. In `:plant` every part has a name of its own, in `:line` each line calls its first hose H1 as sheets mostly do.\n'
	printf '\nThe findings of all ways, compared:\n\n```\n%s\n```\n' "$(cat "$work/same")"
	"$work/tool" table "$work/times"
} > testdata/bench/RESULTS.md
cat testdata/bench/RESULTS.md
