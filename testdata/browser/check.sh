#!/usr/bin/env bash
# Looks at the HTML report as people will: prints every shipped line on A4, takes pictures of it on a wide and a narrow
# screen, and runs an accessibility check. It needs Debian, Node and the network for packages, so the ordinary checks leave
# it out. Usage: testdata/browser/check.sh [FOLDER FOR PICTURES]
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
out=${1:-$(mktemp -d)}
mkdir -p "$out"
out=$(cd "$out" && pwd)

if ! command -v chromium > /dev/null || ! command -v pdftoppm > /dev/null; then
  apt-get update && apt-get install -y --no-install-recommends chromium poppler-utils fonts-liberation
fi
mkdir -p "$out/node"
cp "$root/testdata/browser/look.mjs" "$out/node/"
(cd "$out/node" && npm init -y > /dev/null && npm install --silent --no-fund --no-audit -E axe-core@4.14.1 playwright-core@1.65.1)

cd "$root"
go build -o "$out/lineworthy" ./cmd/lineworthy
pages=()
for sheet in testdata/lines/*/line.yaml; do
  name=$(basename "$(dirname "$sheet")")
  code=0
  "$out/lineworthy" check --format json "$sheet" > "$out/$name.json" || code=$?
  case $code in 0 | 3 | 4) ;; *) echo "$sheet: exit $code"; exit 1 ;; esac
  "$out/lineworthy" report "$out/$name.json" --format html --out "$out/$name.html"
  pages+=("$out/$name.html")
done

cd "$out/node"
node look.mjs "${pages[@]}"
for page in "${pages[@]}"; do pdftoppm -r 70 -png "${page%.html}.pdf" "${page%.html}-page"; done
echo "pictures and pages are in $out"
