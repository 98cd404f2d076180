package main

import (
	"bufio"
	"bytes"
	"context"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestRegisterWatchIsInterrupted ends a watch after its first table: the exit code is the usual one, and a pipe gets the
// rows alone.
func TestRegisterWatchIsInterrupted(t *testing.T) {
	for name, want := range map[string]int{"caustic-ibc": exitFit, "ammonia-lpg-hose": exitUnfit, "palm-oil-tanker": exitUnproven, "": exitBadInput} {
		text := []byte("line: [\n")
		if name != "" {
			var err error
			text, err = os.ReadFile(filepath.Join("../../testdata/lines", name, "line.yaml"))
			require.NoError(t, err)
		}
		dir := t.TempDir()
		require.NoError(t, os.WriteFile(filepath.Join(dir, "a.yaml"), text, 0o644))
		ctx, stop := context.WithCancel(t.Context())
		r, w := io.Pipe()
		var faults bytes.Buffer
		code := make(chan int, 1)
		go func() {
			code <- run(ctx, []string{"register", dir, "--watch", "--every", "1s", "--format", "jsonl"}, streams{strings.NewReader(""), w, &faults})
			w.Close()
		}()
		for lines := bufio.NewScanner(r); lines.Scan() && !strings.Contains(lines.Text(), `"totals"`); {
		}
		stop()
		require.Equal(t, want, <-code, name)
		require.Empty(t, faults.String())
	}
}
