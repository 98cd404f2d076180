#!/usr/bin/env bash
# Judges a stream of lines that is made on the fly and says how much memory that took at most, at a tenth of the lines and
# at all of them: it must be flat, and the time in step. Usage: testdata/bench/million.sh [LINES] [KIND]
set -euo pipefail
cd "$(dirname "$0")/../.."
lines=${1:-1000000}
kind=${2:-mixed}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
go build -o "$work/lineworthy" ./cmd/lineworthy
go build -o "$work/tool" ./testdata/bench/tool
mkfifo "$work/stream"

for n in $((lines / 10)) "$lines"; do
	"$work/tool" stream "$kind" "$n" > "$work/stream" &
	start=$(date +%s%N)
	"$work/lineworthy" batch --facts - < "$work/stream" > /dev/null 2> "$work/said" &
	judge=$!
	peak=0
	while kill -0 "$judge" 2> /dev/null; do
		now=$(sed -n 's/^VmHWM:[^0-9]*\([0-9]*\) kB/\1/p' "/proc/$judge/status" 2> /dev/null || true)
		peak=${now:-$peak}
		sleep 0.2
	done
	wait "$judge" || true
	took=$((($(date +%s%N) - start) / 1000))
	printf '%d lines of %s: %d us a line, at most %d MB; %s\n' "$n" "$kind" $((took / n)) $((peak / 1024)) "$(tail -1 "$work/said")"
done
