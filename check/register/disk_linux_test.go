package register

import (
	"os"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const nobody = 65534

// TestReadOnlyFolder wants a plain word about a state file that cannot be made, and a register without one.
func TestReadOnlyFolder(t *testing.T) {
	dir := generated(t, 4)
	require.NoError(t, os.Chmod(dir, 0o555))
	t.Cleanup(func() { _ = os.Chmod(dir, 0o755) })
	for d := dir; d != os.TempDir() && d != "/"; d = filepath.Dir(d) {
		if d != dir {
			require.NoError(t, os.Chmod(d, 0o755))
		}
	}
	if os.Getuid() == 0 {
		runtime.LockOSThread()
		require.NoError(t, syscall.Setfsuid(nobody))
		t.Cleanup(func() { _ = syscall.Setfsuid(0); runtime.UnlockOSThread() })
	}
	o := options(t, dir)
	o.State = filepath.Join(dir, "state.jsonl")
	_, err := Run(t.Context(), o)
	require.ErrorIs(t, err, os.ErrPermission)
	_, err = os.Stat(o.State)
	assert.ErrorIs(t, err, os.ErrNotExist)
	o.State = ""
	r := run(t, o)
	assert.Equal(t, 4, r.Sheets())
}
