#!/usr/bin/env bash
# Shows that a stock rules engine with the exported, signed bundle finds on every shipped line what this program finds: once
# as opa exec, once as a server that verifies the signature, and this program with and without its guards. Ends with 1 if
# anything differs. Usage: testdata/bench/stock.sh
# OPA names the stock program; without it the pinned version is built first, which takes minutes.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
server=
trap 'if [ -n "$server" ]; then kill "$server"; fi; rm -rf "$work"' EXIT

source testdata/bench/stock_engine.sh
go build -o "$work/lineworthy" ./cmd/lineworthy
go build -o "$work/tool" ./testdata/bench/tool
"$work/tool" key "$work/key.pem" "$work/key.pub"
"$work/lineworthy" bundle --out "$work/rules.tar.gz"
"$work/lineworthy" bundle --out "$work/signed.tar.gz" --key "$work/key.pem" --key-id plant
mkdir "$work/facts"
for line in testdata/lines/*/line.yaml; do
	"$work/lineworthy" facts --as-of 2026-11-25 "$line" > "$work/facts/$(basename "$(dirname "$line")").json"
done
"$work/lineworthy" batch --facts "$work/facts" > "$work/ours" 2> /dev/null || [ $? -ge 3 ]
"$work/lineworthy" batch --facts --guards=false "$work/facts" > "$work/unguarded" 2> /dev/null || [ $? -ge 3 ]
"$OPA" exec -b "$work/rules.tar.gz" --decision verdict/findings "$work/facts" > "$work/exec"

address=127.0.0.1:18182
"$OPA" run --server --addr "$address" --log-level error -b "$work/signed.tar.gz" \
	--verification-key "$work/key.pub" --verification-key-id plant --signing-alg ES256 > "$work/server.log" 2>&1 &
server=$!
for _ in $(seq 100); do
	if (exec 3<> "/dev/tcp/${address/:/\/}") 2> /dev/null; then break; fi
	sleep 0.2
done
"$work/tool" post "http://$address/v1/data/verdict/findings" 1 "$work/facts" > "$work/server" 2> /dev/null || { cat "$work/server.log"; exit 1; }
(cd "$work" && ./tool compare ours unguarded exec server)
