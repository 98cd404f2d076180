package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// TestKeepersAtOnce starts each command several times at the same moment. Every one ends well, each has its own line, and
// the approval and the register are those that one run alone makes.
func TestKeepersAtOnce(t *testing.T) {
	const writers = 6
	for _, k := range keepers {
		t.Run(k.name, func(t *testing.T) {
			dir := desk(t)
			var all [writers]*exec.Cmd
			var said [writers]bytes.Buffer
			for i := range all {
				all[i] = program(t, dir, k.args...)
				all[i].Stdout, all[i].Stderr = &said[i], &said[i]
				require.NoError(t, all[i].Start())
			}
			for i := range all {
				_ = all[i].Wait()
				require.Equal(t, k.code, all[i].ProcessState.ExitCode(), said[i].String())
			}
			want := writers
			if k.name == "register" {
				want = len(inFolder(t, filepath.Join(dir, "lines")))
			}
			require.Equal(t, want, k.kept(t, dir))
		})
	}
}

// TestRegisterKilled kills the command at every moment of its life. The list is whole or absent, and the next run goes on from what
// was kept. TestInspectKilled and TestSignKilled do the same to the other two.
func TestRegisterKilled(t *testing.T) {
	if testing.Short() {
		t.Skip("kills many processes")
	}
	k := keepers[2]
	dir := desk(t)
	list := filepath.Join(dir, "list.txt")
	begin := time.Now()
	code, out := finished(t, program(t, dir, k.args...))
	whole := time.Since(begin)
	require.Equal(t, k.code, code, out)
	want, err := os.ReadFile(list)
	require.NoError(t, err)
	early := 0
	for i := range 25 {
		require.NoError(t, errors.Join(os.Remove(list), os.Remove(filepath.Join(dir, k.file))))
		cutShort(t, program(t, dir, k.args...), whole*time.Duration(i+1)/22) // some at once, some when all is written
		if got, err := os.ReadFile(list); err == nil {
			require.Equal(t, string(want), string(got))
		} else {
			early++
		}
		kept := k.kept(t, dir)
		code, out := finished(t, program(t, dir, k.args...))
		require.Equal(t, k.code, code, out)
		require.Contains(t, out, fmt.Sprintf("%d taken over", kept))
		got, err := os.ReadFile(list)
		require.NoError(t, err)
		require.Equal(t, string(want), string(got))
	}
	require.Greater(t, early, 0, "every kill came too late")
	t.Logf("25 kills, %d before the list was written", early)
}

// cutShort lets a process go for a while and kills it.
func cutShort(t *testing.T, cmd *exec.Cmd, after time.Duration) {
	t.Helper()
	require.NoError(t, cmd.Start())
	time.Sleep(after)
	_ = cmd.Process.Kill()
	_ = cmd.Wait()
}

// TestClockBackwards: a clock that went back is told and shown, and costs nothing that was recorded.
func TestClockBackwards(t *testing.T) {
	dir := desk(t)
	for _, k := range keepers[:2] {
		for i, at := range []string{"2026-11-25T10:00:00Z", "2026-11-24T10:00:00Z"} {
			code, said := finished(t, program(t, dir, append(append([]string{}, k.args...), "--time", at)...))
			require.Equal(t, k.code, code, said)
			require.Equal(t, i == 1, strings.Contains(said, "a clock went back"), said)
		}
		require.Equal(t, 2, k.kept(t, dir))
	}
	code, said := finished(t, program(t, dir, "register", "verify", "r.jsonl"))
	require.Zero(t, code)
	require.Contains(t, said, "PROVEN")
	require.Contains(t, said, "Line 2: its time is before that of the line above: a clock went back")
}

// TestRegisterClockBackwards: a day before that of the last run gives the register of that day, state file or not.
func TestRegisterClockBackwards(t *testing.T) {
	dir := desk(t)
	undated := filepath.Join(dir, "lines", "undated.yaml")
	text, err := os.ReadFile(filepath.Join(dir, "line.yaml"))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(undated, []byte(strings.Replace(string(text), "as_of: ", "# as_of: ", 1)), 0o644))
	on := func(day, out string, more ...string) string {
		args := append([]string{"register", "lines", "--as-of", day, "--format", "jsonl", "--out", out}, more...)
		code, said := finished(t, program(t, dir, args...))
		require.Contains(t, []int{exitUnproven, exitUnfit}, code, said)
		text, err := os.ReadFile(filepath.Join(dir, out))
		require.NoError(t, err)
		return string(text)
	}
	late := on("2029-11-25", "late.txt", "--state", "state.jsonl")
	early := on("2026-11-25", "early.txt", "--state", "state.jsonl")
	require.NotEqual(t, late, early)
	require.Equal(t, on("2026-11-25", "fresh.txt"), early)
}
