package main

import (
	"bytes"
	"context"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"lineworthy/check/record"
)

// TestInspectKilled kills the command at random moments, two at once. What it acknowledged stands in the store, and the
// store is whole afterwards. The store's own tests kill it within a write, hundreds of times.
func TestInspectKilled(t *testing.T) {
	if testing.Short() {
		t.Skip("kills many processes")
	}
	program, err := exec.LookPath("lineworthy")
	require.NoError(t, err)
	dir := t.TempDir()
	store := filepath.Join(dir, "r.jsonl")
	line, err := filepath.Abs("../../testdata/lines/ammonia-nurse/line.yaml")
	require.NoError(t, err)
	args := []string{"inspect", line, "--record", filledRecord(t, dir, line), "--who", "A. Example", "--store", store, "--time", "2026-11-25T09:00:00Z"}
	begin := time.Now()
	require.NoError(t, exec.Command(program, args...).Run())
	whole := time.Since(begin)
	heads := []string{}
	for range 100 {
		var two [2]*exec.Cmd
		var said [2]bytes.Buffer
		for i := range two {
			two[i] = exec.Command(program, args...)
			two[i].Stderr = &said[i]
			require.NoError(t, two[i].Start())
		}
		time.Sleep(time.Duration(float64(whole) * (0.6 + rand.Float64())))
		for i := range two {
			_ = two[i].Process.Kill()
			_ = two[i].Wait()
			for _, m := range acknowledged.FindAllStringSubmatch(said[i].String(), -1) {
				heads = append(heads, m[1])
			}
		}
	}
	require.NoError(t, exec.Command(program, args...).Run()) // sets a torn end aside, if there is one
	require.NotEmpty(t, heads, "no round got as far as an acknowledgement")
	p, err := record.Verify(store, heads...)
	require.NoError(t, err)
	require.True(t, p.Clean(), "%+v", p)
	t.Logf("200 kills, %d acknowledged, %d lines", len(heads), p.Lines)
	require.GreaterOrEqual(t, p.Lines, int64(len(heads)+2))
}

var acknowledged = regexp.MustCompile(`recorded: .* sum ([0-9a-f]{64})`)

// filledRecord is a record in which everything is as the sheet says.
func filledRecord(t *testing.T, dir, line string) string {
	t.Helper()
	var out, fault bytes.Buffer
	require.Zero(t, run(context.Background(), []string{"inspect", line, "--format", "yaml"}, streams{in: strings.NewReader(""), out: &out, err: &fault}), fault.String())
	text := out.String()
	for _, r := range [][2]string{
		{`(?m)^( +[a-z_]+): "" #.*; sheet: (.*)$`, `$1: "$2"`}, {`day: ""`, `day: 2026-11-25`}, {`damage: ""`, `damage: none`},
		{`passed: ""`, `passed: yes`}, {`leaks: ""`, `leaks: no`}, {`fluid: ""`, `fluid: nitrogen`}, {`pressure: "" # planned: (.*)`, `pressure: $1`},
	} {
		text = regexp.MustCompile(r[0]).ReplaceAllString(text, r[1])
	}
	path := filepath.Join(dir, "filled.yaml")
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	return path
}
