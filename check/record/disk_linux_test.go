package record

import (
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const nobody = 65534

// asNobody gives the file and its folder to a user without rights and lets this thread act on files as that user.
func asNobody(t *testing.T, path string) {
	if os.Getuid() != 0 {
		return
	}
	for dir := filepath.Dir(path); dir != os.TempDir() && dir != "/"; dir = filepath.Dir(dir) {
		require.NoError(t, os.Chmod(dir, 0o755))
	}
	for _, p := range []string{filepath.Dir(path), path, path + lockEnding} {
		require.NoError(t, os.Chown(p, nobody, nobody))
	}
	runtime.LockOSThread()
	require.NoError(t, syscall.Setfsuid(nobody))
	t.Cleanup(func() {
		_ = syscall.Setfsuid(0)
		runtime.UnlockOSThread()
	})
}

// TestFullFileSystem appends to a real file system of 64 kB until it is full, and goes on once there is room again.
func TestFullFileSystem(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mount("none", dir, "tmpfs", 0, "size=64k"); err != nil {
		t.Skipf("a small file system needs root: %v", err)
	}
	t.Cleanup(func() { assert.NoError(t, syscall.Unmount(dir, 0)) })
	ballast := filepath.Join(dir, "ballast")
	require.NoError(t, os.WriteFile(ballast, make([]byte, 20<<10), 0o644))
	path := filepath.Join(dir, "record.jsonl")
	var told int64
	var err error
	for err == nil {
		var r Receipt
		if r, err = At(path).Append(Item{noon, "note", strings.Repeat("x", 1000)}); err == nil {
			told = r.Last
		}
	}
	require.ErrorIs(t, err, syscall.ENOSPC)
	require.Greater(t, told, int64(10))
	p := proof(t, path)
	require.True(t, p.Clean())
	require.Equal(t, told, p.Lines)

	require.NoError(t, os.Remove(ballast))
	r, err := At(path).Append(item(1))
	require.NoError(t, err)
	assert.Equal(t, told+1, r.Last)
	assert.Equal(t, Proof{Lines: told + 1, Head: r.Head}, proof(t, path))
}

// A file system mounted for reading alone refuses root too.
func TestReadOnlyFileSystem(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mount("none", dir, "tmpfs", 0, "size=64k"); err != nil {
		t.Skipf("mounting needs root: %v", err)
	}
	t.Cleanup(func() { assert.NoError(t, syscall.Unmount(dir, 0)) })
	path := filepath.Join(dir, "record.jsonl")
	_, err := At(path).Append(item(1))
	require.NoError(t, err)
	require.NoError(t, syscall.Mount("none", dir, "tmpfs", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""))
	_, err = At(path).Append(item(2))
	assert.ErrorIs(t, err, syscall.EROFS)
	assert.True(t, proof(t, path).Clean())
	assert.Equal(t, int64(1), proof(t, path).Lines)
}
