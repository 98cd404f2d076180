package main

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"lineworthy/check/record"
)

// command runs one command line within the test and gives its exit code and output.
func command(args ...string) (int, string) {
	var out bytes.Buffer
	code := run(context.Background(), args, streams{strings.NewReader(""), &out, &out})
	return code, out.String()
}

// refusal is a folder with a key, a sheet and a signed refusal of it.
func refusal(t *testing.T) string {
	dir := t.TempDir()
	text, err := os.ReadFile("../../testdata/lines/palm-oil-tanker/line.yaml")
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(dir, "line.yaml"), text, 0o644))
	code, out := command("new", "key", filepath.Join(dir, "me.pem"))
	require.Zero(t, code, out)
	code, out = command(signArgs(dir, "a.json")...)
	require.Zero(t, code, out)
	return dir
}

func signArgs(dir, file string, more ...string) []string {
	return append([]string{"sign", filepath.Join(dir, "line.yaml"), "--key", filepath.Join(dir, "me.pem"), "--out", filepath.Join(dir, file),
		"--as-of", "2026-11-25", "--who", "A. Example", "--role", "engineer", "--decision", "refused"}, more...)
}

func verified(t require.TestingT, dir, file string) answer {
	_, out := command("verify", filepath.Join(dir, file), filepath.Join(dir, "line.yaml"), "--key", filepath.Join(dir, "me.pem.pub"),
		"--as-of", "2026-11-25", "--format", "json")
	var a answer
	require.NoError(t, json.Unmarshal([]byte(out), &a), out)
	return a
}

// Any changed stretch of the sheet is named, whether or not it means anything, and whether or not it can still be read.
func TestChangedSheetIsStale(t *testing.T) {
	dir := refusal(t)
	path := filepath.Join(dir, "line.yaml")
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, statusRefused, verified(t, dir, "a.json").Status)
	rapid.Check(t, func(r *rapid.T) {
		at := rapid.IntRange(0, len(text)-1).Draw(r, "at")
		changed := bytes.Clone(text)
		changed[at] ^= rapid.ByteRange(1, 255).Draw(r, "mask")
		require.NoError(r, os.WriteFile(path, changed, 0o644))
		a := verified(r, dir, "a.json")
		require.Equal(r, statusStale, a.Status)
		require.Equal(r, "sheet", a.Differences[0].What)
	})
	require.NoError(t, os.WriteFile(path, append([]byte("\uFEFF"), text...), 0o644))
	require.Equal(t, "sheet", verified(t, dir, "a.json").Differences[0].What)
}

// TestSignKilled kills sign at random moments. What it said is done is done; a file is whole or not there.
func TestSignKilled(t *testing.T) {
	rounds := 80
	if testing.Short() {
		rounds = 12
	}
	dir, chance := refusal(t), rand.New(rand.NewPCG(3, 5))
	register := filepath.Join(dir, "record.jsonl")
	told, cut, whole := 0, 0, time.Hour
	for i := range 3 {
		begin := time.Now()
		killed(t, whole, signArgs(dir, fmt.Sprintf("whole%d.json", i)))
		whole = min(whole, time.Since(begin))
	}
	for round := range rounds {
		file := fmt.Sprintf("%d.json", round)
		said := killed(t, time.Duration(chance.Float64()*2*float64(whole)), signArgs(dir, file, "--append-to", register))
		_, err := os.Stat(filepath.Join(dir, file))
		if strings.Contains(said, "signed: ") {
			require.NoError(t, err)
		}
		if err == nil {
			require.Equal(t, statusRefused, verified(t, dir, file).Status)
		}
		if strings.Contains(said, "recorded: ") {
			told++
		} else {
			cut++
		}
		p, err := record.Verify(register)
		if !os.IsNotExist(err) {
			require.NoError(t, err)
			require.Nil(t, p.Broken)
			require.GreaterOrEqual(t, p.Lines, int64(told))
		}
	}
	code, out := command(signArgs(dir, "last.json", "--append-to", register)...)
	require.Zero(t, code, out)
	code, out = command("register", "verify", register)
	require.Zero(t, code, out)
	assert.Greater(t, told, rounds/12, "the kills came too early")
	assert.Greater(t, cut, rounds/12, "the kills came too late")
	t.Logf("%d of %d were recorded before the kill", told, rounds)
}

// killed starts the command, kills it after a while, and gives what it said until then.
func killed(t *testing.T, after time.Duration, args []string) string {
	self, err := os.Executable()
	require.NoError(t, err)
	cmd := &exec.Cmd{Path: self, Args: append([]string{"lineworthy"}, args...)}
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	timer := time.AfterFunc(after, func() { _ = cmd.Process.Kill() })
	defer timer.Stop()
	said, err := io.ReadAll(bufio.NewReader(out))
	require.NoError(t, err)
	_ = cmd.Wait()
	return string(said)
}

// Two who sign the same file at once both end up in it.
func TestTwoSignAtOnce(t *testing.T) {
	dir := refusal(t)
	done := make(chan int)
	for i := range 6 {
		key := filepath.Join(dir, fmt.Sprintf("k%d.pem", i))
		code, out := command("new", "key", key)
		require.Zero(t, code, out)
		go func() {
			code, _ := command("sign", filepath.Join(dir, "line.yaml"), "--key", key, "--out", filepath.Join(dir, "a.json"), "--as-of", "2026-11-25",
				"--append-to", filepath.Join(dir, "record.jsonl"))
			done <- code
		}()
	}
	for range 6 {
		assert.Zero(t, <-done)
	}
	assert.Equal(t, 7, verified(t, dir, "a.json").Signatures)
	p, err := record.Verify(filepath.Join(dir, "record.jsonl"))
	require.NoError(t, err)
	assert.True(t, p.Clean())
	assert.Equal(t, int64(6), p.Lines)
}
