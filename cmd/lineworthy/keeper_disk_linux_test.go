package main

import (
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestKeepersWithFullDisk gives a file ever more room, block by block. Until there is enough the command says so and
// nothing kept before is lost; then the same command goes through.
func TestKeepersWithFullDisk(t *testing.T) {
	for _, k := range keepers {
		t.Run(k.name, func(t *testing.T) {
			dir := desk(t)
			fills, before := 0, 0
			for blocks := 0; ; blocks += 1 + blocks/6 {
				require.Less(t, blocks, 2000)
				limited := program(t, dir, k.args...)
				limited.Args = append([]string{"sh", "-c", `ulimit -f "$0" && exec "$@"`, strconv.Itoa(blocks)}, append([]string{limited.Path}, k.args...)...)
				limited.Path = "/bin/sh"
				code, said := finished(t, limited)
				if code == k.code {
					break
				}
				fills++
				refused(t, code, said, "file too large", k.file, "s.jsonl", "list.txt")
				now := k.kept(t, dir)
				require.GreaterOrEqual(t, now, before, said)
				before = now
			}
			require.Greater(t, fills, 3)
			require.Greater(t, k.kept(t, dir), 0)
			left, err := filepath.Glob(filepath.Join(dir, ".*"))
			require.NoError(t, err)
			require.Empty(t, left, "no half-written file stays")
		})
	}
}

// TestKeepersWithFullFileSystem fills a real file system of 256 kB around what is kept there, and makes room again.
func TestKeepersWithFullFileSystem(t *testing.T) {
	for _, k := range keepers {
		t.Run(k.name, func(t *testing.T) {
			dir := mounted(t, "size=256k")
			code, said := finished(t, program(t, dir, k.args...))
			require.Equal(t, k.code, code, said)
			before := k.kept(t, dir)
			if k.name == "register" { // a sheet that changed has to be judged, and so written, again
				require.NoError(t, os.WriteFile(filepath.Join(dir, "lines", "new.yaml"), changedLine(t, dir), 0o644))
			}
			ballast := filepath.Join(dir, "ballast")
			require.NoError(t, stuff(ballast))
			code, said = finished(t, program(t, dir, again(k)...))
			refused(t, code, said, "no space left on device", k.file, "s.jsonl", "list.txt", "second.json")
			require.GreaterOrEqual(t, k.kept(t, dir), before)
			require.NoError(t, os.Remove(ballast))
			code, said = finished(t, program(t, dir, again(k)...))
			require.Equal(t, k.code, code, said)
			require.Greater(t, k.kept(t, dir), before)
		})
	}
}

// again is the command, told to write something new: a second approval, not the one that is there.
func again(k keeper) []string {
	args := append([]string{}, k.args...)
	for i := range args {
		if args[i] == "a.json" {
			args[i] = "second.json"
		}
	}
	return args
}

func changedLine(t *testing.T, dir string) []byte {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(dir, "line.yaml"))
	require.NoError(t, err)
	return append([]byte("# one more\n"), text...)
}

// mounted is a desk on a file system of its own.
func mounted(t *testing.T, size string) string {
	t.Helper()
	from, dir := desk(t), t.TempDir()
	if err := syscall.Mount("none", dir, "tmpfs", 0, size); err != nil {
		t.Skipf("a small file system needs root: %v", err)
	}
	t.Cleanup(func() { require.NoError(t, syscall.Unmount(dir, 0)) })
	require.NoError(t, os.CopyFS(dir, os.DirFS(from)))
	return dir
}

// stuff writes until nothing more goes in.
func stuff(path string) error {
	file, err := os.Create(path)
	if err != nil {
		return err
	}
	for err == nil {
		_, err = file.Write(make([]byte, 512))
	}
	return file.Close()
}

// TestKeepersInReadOnlyFolder runs as a user who may read the folder and not write to it.
func TestKeepersInReadOnlyFolder(t *testing.T) {
	for _, k := range keepers {
		t.Run(k.name, func(t *testing.T) {
			dir := desk(t)
			path := portable(t, dir)
			require.NoError(t, os.Chmod(filepath.Join(dir, "me.pem"), 0o644))
			require.NoError(t, os.Chmod(filepath.Join(dir, "filled.yaml"), 0o644))
			before := inFolder(t, dir)
			mode := os.FileMode(0o555)
			for _, want := range []int{exitBadInput, k.code} {
				require.NoError(t, os.Chmod(dir, mode))
				if err := asOther(dir, path, "--version").Run(); errors.Is(err, os.ErrPermission) {
					t.Skipf("the folder for temporary files is closed to a user without rights: %v", err)
				}
				code, said := finished(t, asOther(dir, path, k.args...))
				if want == exitBadInput {
					refused(t, code, said, "permission denied", k.file, "s.jsonl", "list.txt")
					require.Equal(t, before, inFolder(t, dir))
				}
				require.Equal(t, want, code, said)
				mode = 0o777
			}
			require.Greater(t, k.kept(t, dir), 0)
		})
	}
}

// asOther runs the program as a user who is not root.
func asOther(dir, path string, args ...string) *exec.Cmd {
	cmd := exec.Command(path, args...)
	cmd.Dir = dir
	if os.Getuid() == 0 {
		cmd.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: 65534, Gid: 65534}}
	}
	return cmd
}

func inFolder(t *testing.T, dir string) (names []string) {
	t.Helper()
	all, err := os.ReadDir(dir)
	require.NoError(t, err)
	for _, f := range all {
		names = append(names, f.Name())
	}
	return names
}

// TestKeepersBelowAFile: a path that leads through a file can be written by nobody, root or not.
func TestKeepersBelowAFile(t *testing.T) {
	for _, k := range keepers {
		dir := desk(t)
		args := append([]string{}, k.args...)
		for i := range args {
			if args[i] == k.file {
				args[i] = "line.yaml/" + k.file
			}
		}
		code, said := finished(t, program(t, dir, args...))
		refused(t, code, said, "not a directory", k.file)
	}
}

// TestNewWithFullDisk: no half of a form or of a pair of keys stays, which would bar the next try.
func TestNewWithFullDisk(t *testing.T) {
	for name, args := range map[string][]string{
		"form":  {"inspect", "nurse.yaml", "--format", "yaml", "--out", "new.yaml"},
		"page":  {"inspect", "nurse.yaml", "--format", "html", "--out", "new.yaml"},
		"sheet": {"new", "sheet", "new.yaml"},
		"key":   {"new", "key", "new.yaml"},
	} {
		dir := desk(t)
		limited := program(t, dir, args...)
		limited.Args = append([]string{"sh", "-c", `ulimit -f 0 && exec "$@"`, limited.Path, limited.Path}, args...)
		limited.Path = "/bin/sh"
		code, said := finished(t, limited)
		refused(t, code, said, "file too large", "new.yaml")
		require.NoFileExists(t, filepath.Join(dir, "new.yaml"), name)
		code, said = finished(t, program(t, dir, args...))
		require.Zero(t, code, said)
	}
}
