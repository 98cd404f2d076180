package main

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// smallSheet is about the least that can be judged, so that each of its bytes can be.
const smallSheet = `line: T-1
fluids: {water: {fluid: water}}
vessels: {tank: {vent: open}}
runs:
  a:
    carries: [water]
    source: {supply: 3 bar(g)}
    to: tank
    parts: [{id: H1, kind: hose}] # 2 m
`

// TestEachByteOfTheSheet changes, takes out and doubles each byte of a signed sheet, and puts bytes around it. Verify calls
// the approval stale and names the sheet, whatever the byte means.
func TestEachByteOfTheSheet(t *testing.T) {
	if testing.Short() {
		t.Skip("judges hundreds of sheets")
	}
	dir := t.TempDir()
	path := filepath.Join(dir, "line.yaml")
	text := []byte(smallSheet)
	require.NoError(t, os.WriteFile(path, text, 0o644))
	code, out := command("new", "key", filepath.Join(dir, "me.pem"))
	require.Zero(t, code, out)
	code, out = command(signArgs(dir, "a.json")...)
	require.Zero(t, code, out)
	require.Empty(t, verified(t, dir, "a.json").Differences)
	stale := func(changed []byte, what string, at int) {
		require.NoError(t, os.WriteFile(path, changed, 0o644))
		a := verified(t, dir, "a.json")
		require.NotEmpty(t, a.Differences, "%s %d", what, at)
		require.Equal(t, "sheet", a.Differences[0].What, "%s %d", what, at)
		require.Equal(t, statusStale, a.Status, "%s %d", what, at)
	}
	for at := range text {
		changed := bytes.Clone(text)
		changed[at] ^= 1
		stale(changed, "changed", at)
		stale(append(bytes.Clone(text[:at]), text[at+1:]...), "without", at)
		stale(append(bytes.Clone(text[:at+1]), text[at:]...), "doubled", at)
	}
	for i, more := range []string{"\n", " ", "#", "\xef\xbb\xbf"} {
		stale(append([]byte(more), text...), "before", i)
		stale(append(bytes.Clone(text), more...), "behind", i)
	}
}
