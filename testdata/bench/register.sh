#!/usr/bin/env bash
# Compares a register of many sheets with a batch of the same, in time and memory, at a tenth of the sheets and at all of
# them; then kills a register at a third of its time, lets it go on from its state file and wants the same bytes.
# Usage: testdata/bench/register.sh [SHEETS]
set -euo pipefail
cd "$(dirname "$0")/../.."
sheets=${1:-100000}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
go build -o "$work/lineworthy" ./cmd/lineworthy
go build -o "$work/tool" ./testdata/bench/tool

# measured NAME COMMAND...: seconds by the clock, processor seconds and peak memory, also as $clock and $cpu.
measured() {
	local name=$1 TIMEFORMAT='%R %U %S' peak=0 now
	shift
	{ time { "$@" > "$work/out.$name" 2> "$work/said" || [ $? -ge 2 ]; }; } 2> "$work/took" &
	while kill -0 $! 2> /dev/null; do
		now=$(ps -C lineworthy -o pid= | xargs -I{} sed -n 's/^VmHWM:[^0-9]*\([0-9]*\) kB/\1/p' /proc/{}/status 2> /dev/null | sort -n | tail -1 || true)
		if [ "${now:-0}" -gt "$peak" ]; then peak=$now; fi
		sleep 0.2
	done
	read -r clock user system < "$work/took"
	cpu=$(awk "BEGIN { print $user + $system }")
	printf '%-10s %8d sheets  %7.1f s by the clock  %7.1f s of the processors  at most %d MB\n' "$name" "$n" "$clock" "$cpu" $((peak / 1024))
}

for n in $((sheets / 10)) "$sheets"; do
	rm -rf "$work/sheets"
	"$work/tool" sheets "$n" "$work/sheets"
	measured batch "$work/lineworthy" batch --as-of 2026-11-25 "$work/sheets"
	alone=$clock alone_cpu=$cpu
	measured register "$work/lineworthy" register --as-of 2026-11-25 "$work/sheets"
	awk "BEGIN { printf \"register takes %.2f times batch by the clock, %.2f times of the processors\n\", $clock / $alone, $cpu / $alone_cpu }"
done

"$work/lineworthy" register --as-of 2026-11-25 --state "$work/state.jsonl" "$work/sheets" > /dev/null 2>&1 &
sleep "$(awk "BEGIN { print $clock / 3 }")"
kill -9 $!
wait $! 2> /dev/null || true
"$work/lineworthy" register --as-of 2026-11-25 --state "$work/state.jsonl" "$work/sheets" > "$work/resumed" 2> "$work/said" || [ $? -ge 2 ]
sed -n '/taken over/p' "$work/said"
cmp "$work/out.register" "$work/resumed"
echo "killed and resumed: the same bytes"
