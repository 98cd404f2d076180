#!/usr/bin/env bash
# Shows what the README says of a fleet: two stock engines take the bundle from a service, say when they are ready, find
# what this program finds, log every decision with the revision of the rules, and change to new rules while they answer.
# Ends with 1 if anything differs. Usage: testdata/bench/fleet.sh
# OPA names the stock program; without it the pinned version is built first, which takes minutes.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
running=()
trap 'kill "${running[@]}" 2> /dev/null || true; rm -rf "$work"' EXIT

source testdata/bench/stock_engine.sh
go build -o "$work/lineworthy" ./cmd/lineworthy
go build -o "$work/tool" ./testdata/bench/tool
mkdir "$work/service" "$work/facts"
for line in testdata/lines/*/line.yaml; do
	"$work/lineworthy" facts --as-of 2026-11-25 "$line" > "$work/facts/$(basename "$(dirname "$line")").json"
done
"$work/lineworthy" batch --facts "$work/facts" > "$work/ours" 2> /dev/null || [ $? -ge 3 ]
"$work/tool" serve 127.0.0.1:18190 "$work/service" & running+=($!)
servers="127.0.0.1:18191 127.0.0.1:18192"
for s in $servers; do
	"$OPA" run --server --addr "$s" --config-file testdata/bench/fleet.yaml > "$work/log.$s" 2>&1 & running+=($!)
done

# get SERVER PATH: status, then body.
get() { exec 3<> "/dev/tcp/${1/:/\/}" && printf 'GET %s HTTP/1.0\r\n\r\n' "$2" >&3 && cat <&3; }
healthy() { get "$1" '/health?bundles' 2> /dev/null | grep -q '200 OK'; }
revision() { get "$1" '/v1/data/verdict/findings?provenance=true' | sed -n 's/.*"revision":"\([0-9a-f]*\)".*/\1/p'; }
# publish OPTIONS...: a new bundle; waits until every server has it, and compares what they find with batch.
publish() {
	"$work/lineworthy" bundle --out "$work/next" "$@" 2> "$work/said"
	mv "$work/next" "$work/service/rules.tar.gz"
	local want s
	want=$(tar -xzPOf "$work/service/rules.tar.gz" /.manifest | sed -n 's/.*"revision":"\([0-9a-f]*\)".*/\1/p')
	for s in $servers; do
		for _ in $(seq 150); do
			if healthy "$s" && [ "$(revision "$s")" = "$want" ]; then break; fi
			sleep 0.2
		done
		[ "$(revision "$s")" = "$want" ] || { echo "$s never got revision $want"; cat "$work/log.$s"; exit 1; }
		"$work/tool" post "http://$s/v1/data/verdict/findings" 2 "$work/facts" > "$work/from.$s" 2> /dev/null
		(cd "$work" && ./tool compare ours "from.$s")
	done
	echo "both servers judge by revision ${want:0:12}"
}
sleep 1
for s in $servers; do
	if healthy "$s"; then echo "$s says it is ready without any rules"; exit 1; fi
done
publish
mkdir "$work/site" && echo 'hose_age_days: 1' > "$work/site/limits.yaml"
publish --rules "$work/site"
for s in $servers; do # what a site has added is asked for by its own name
	"$work/tool" post "http://$s/v1/data/site/inspection/hose_older_than_site_allows/report" 1 "$work/facts" 2> /dev/null | grep -q '"need_days":1,'
	printf '%s logged %s decisions\n' "$s" "$(grep -c '"decision_id"' "$work/log.$s")"
done
