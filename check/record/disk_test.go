package record

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// failing is a disk with room for some bytes, or that cannot sync or truncate.
type failing struct {
	disk
	room               int
	full               bool
	noSync, noTruncate bool
}

func (f *failing) Write(b []byte) (int, error) {
	if !f.full || len(b) <= f.room {
		return f.disk.Write(b)
	}
	n, err := f.disk.Write(b[:f.room])
	if err == nil {
		err = syscall.ENOSPC
	}
	return n, err
}

func (f *failing) Sync() error {
	if f.noSync {
		return syscall.EIO
	}
	return f.disk.Sync()
}

func (f *failing) Truncate(size int64) error {
	if f.noTruncate {
		return syscall.EIO
	}
	return f.disk.Truncate(size)
}

func on(path string, f failing) *Store {
	s := At(path)
	plain := s.open
	s.open = func(p string) (disk, error) {
		d, err := plain(p)
		f.disk = d
		return &f, err
	}
	return s
}

// TestDiskFullAtEachByte fills the disk after each byte of a write. Nothing is kept of it, and the next one goes on.
func TestDiskFullAtEachByte(t *testing.T) {
	path, before := filled(t, 2)
	line, err := item(3).line(last{seq: 2, sum: proof(t, path).Head})
	require.NoError(t, err)
	for room := range line {
		_, err := on(path, failing{full: true, room: room}).Append(item(3))
		require.ErrorIs(t, err, syscall.ENOSPC)
		require.ErrorContains(t, err, "nothing was recorded")
		after, err := os.ReadFile(path)
		require.NoError(t, err)
		require.Equal(t, before, after, "room for %d bytes", room)
	}
	_, err = on(path, failing{full: true, room: len(line)}).Append(item(3))
	require.NoError(t, err)
	assert.Equal(t, int64(3), proof(t, path).Lines)
}

// A disk that cannot even take a write back leaves a torn end, which the next append looks after.
func TestDiskFullAndStuck(t *testing.T) {
	path, _ := filled(t, 2)
	_, err := on(path, failing{full: true, room: 30, noTruncate: true}).Append(item(3))
	require.ErrorIs(t, err, syscall.ENOSPC)
	require.ErrorContains(t, err, "taking the write back failed too")
	r, err := At(path).Append(item(3))
	require.NoError(t, err)
	assert.NotEmpty(t, r.SetAside)
	assert.True(t, proof(t, path).Clean())
}

func TestSyncFails(t *testing.T) {
	path, before := filled(t, 2)
	_, err := on(path, failing{noSync: true}).Append(item(3))
	require.ErrorIs(t, err, syscall.EIO)
	after, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, before, after)
}

// A folder or file without leave to write, for a user who is not root.
func TestReadOnly(t *testing.T) {
	path, before := filled(t, 2)
	asNobody(t, path)
	folder := filepath.Dir(path)
	require.NoError(t, os.Chmod(path, 0o444))
	_, err := At(path).Append(item(3))
	assert.ErrorIs(t, err, os.ErrPermission)
	assert.ErrorContains(t, err, "nothing was")

	require.NoError(t, os.Chmod(path, 0o644))
	require.NoError(t, os.Remove(path+lockEnding))
	require.NoError(t, os.Chmod(folder, 0o555))
	_, err = At(path).Append(item(3))
	assert.ErrorIs(t, err, os.ErrPermission)
	assert.ErrorContains(t, err, path+lockEnding)
	assert.ErrorIs(t, Replace(filepath.Join(folder, "new"), nil, 0o644), os.ErrPermission)

	after, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, before, after)
	assert.True(t, proof(t, path).Clean(), "reading needs no leave to write")
	require.NoError(t, os.Chmod(folder, 0o755))
}

func TestReplaceKeepsTheOldUntilTheNewIsThere(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "file")
	require.NoError(t, Replace(path, []byte("old"), 0o600))
	require.NoError(t, Replace(path, []byte(strings.Repeat("new", 1000)), 0o600))
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Len(t, text, 3000)
	info, err := os.Stat(path)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o600), info.Mode())
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Len(t, entries, 1, "no temporary file stays")
	assert.Error(t, Replace(filepath.Join(folder, "absent", "file"), nil, 0o600))
}
