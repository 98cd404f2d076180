package main

import (
	"bytes"
	"errors"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/record"
)

// keeper is a command that keeps something on the disk. The tests of keepers run the program itself, in a folder of their
// own, and take the disk, the clock or the life of the process away from it.
type keeper struct {
	name string
	args []string
	code int                                // when all goes well
	file string                             // where it keeps it
	kept func(t *testing.T, dir string) int // proves that what is kept is sound, and counts it
}

var keepers = []keeper{
	{"inspect", []string{"inspect", "nurse.yaml", "--record", "filled.yaml", "--who", "A. Example", "--store", "r.jsonl", "--time", "2026-11-25T09:00:00Z"}, exitFit, "r.jsonl", chained("r.jsonl")},
	{"sign", []string{"sign", "line.yaml", "--key", "me.pem", "--out", "a.json", "--append-to", "s.jsonl", "--as-of", "2026-11-25",
		"--who", "A. Example", "--role", "engineer", "--decision", "refused"}, exitFit, "a.json", signedAndChained},
	{"register", []string{"register", "lines", "--as-of", "2026-11-25", "--state", "state.jsonl", "--out", "list.txt"}, exitUnproven, "state.jsonl", takenOver},
}

// desk is a folder with all that the keepers need, which anybody may read.
func desk(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	for d := dir; d != os.TempDir() && d != "/"; d = filepath.Dir(d) {
		require.NoError(t, os.Chmod(d, 0o755))
	}
	nurse, err := filepath.Abs("../../testdata/lines/ammonia-nurse/line.yaml")
	require.NoError(t, err)
	filledRecord(t, dir, nurse)
	copied(t, nurse, filepath.Join(dir, "nurse.yaml"))
	copied(t, "../../testdata/lines/palm-oil-tanker/line.yaml", filepath.Join(dir, "line.yaml"))
	require.NoError(t, os.Mkdir(filepath.Join(dir, "lines"), 0o755))
	for _, name := range []string{"palm-oil-tanker", "caustic-ibc", "ammonia-nurse", "cip-dairy"} {
		copied(t, "../../testdata/lines/"+name+"/line.yaml", filepath.Join(dir, "lines", name+".yaml"))
	}
	code, out := command("new", "key", filepath.Join(dir, "me.pem"))
	require.Zero(t, code, out)
	return dir
}

func copied(t *testing.T, from, to string) {
	t.Helper()
	text, err := os.ReadFile(from)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(to, text, 0o644))
}

// program is the program itself, started in the folder.
func program(t *testing.T, dir string, args ...string) *exec.Cmd {
	t.Helper()
	path, err := exec.LookPath("lineworthy")
	require.NoError(t, err)
	cmd := exec.Command(path, args...)
	cmd.Dir = dir
	return cmd
}

// finished runs a command to its end and gives its exit code and all it said.
func finished(t *testing.T, cmd *exec.Cmd) (int, string) {
	t.Helper()
	var out bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &out
	err := cmd.Run()
	var exit *exec.ExitError
	if !errors.As(err, &exit) {
		require.NoError(t, err, out.String())
	}
	return cmd.ProcessState.ExitCode(), out.String()
}

// refused wants a plain word to a person, not a fault in the tool, that names the file and the cause.
func refused(t *testing.T, code int, said, cause string, files ...string) {
	t.Helper()
	require.Equal(t, exitBadInput, code, said)
	require.Contains(t, said, cause)
	require.Regexp(t, strings.Join(files, "|"), said)
	require.NotContains(t, said, "fault in the tool")
	require.NotContains(t, said, "goroutine")
	require.NotRegexp(t, `(?m)^recorded: .*(`+strings.Join(files, "|")+`)`, said, "nothing is acknowledged that failed")
}

func chained(file string) func(*testing.T, string) int {
	return func(t *testing.T, dir string) int {
		t.Helper()
		p, err := record.Verify(filepath.Join(dir, file))
		if errors.Is(err, os.ErrNotExist) {
			return 0
		}
		require.NoError(t, err)
		require.Nil(t, p.Broken, "%+v", p)
		require.Nil(t, p.Torn, "%+v", p)
		return int(p.Lines) - len(p.SetAside)
	}
}

// signedAndChained wants an approval that is whole or absent, and counts the lines recorded.
func signedAndChained(t *testing.T, dir string) int {
	t.Helper()
	if _, err := os.Stat(filepath.Join(dir, "a.json")); err == nil {
		require.Equal(t, statusRefused, verified(t, dir, "a.json").Status)
	}
	return chained("s.jsonl")(t, dir)
}

var took = regexp.MustCompile(`(\d+) taken over`)

// takenOver is how many sheets the next run need not judge again, asked on a copy of the state.
func takenOver(t *testing.T, dir string) int {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(dir, "state.jsonl"))
	if errors.Is(err, os.ErrNotExist) {
		return 0
	}
	require.NoError(t, err)
	state := filepath.Join(t.TempDir(), "state.jsonl")
	require.NoError(t, os.WriteFile(state, text, 0o644))
	code, out := command("register", filepath.Join(dir, "lines"), "--as-of", "2026-11-25", "--state", state)
	require.Equal(t, exitUnproven, code, out)
	m := took.FindStringSubmatch(out)
	require.NotNil(t, m, out)
	require.NotContains(t, out, "damaged")
	n, err := strconv.Atoi(m[1])
	require.NoError(t, err)
	return n
}

// portable is a copy of the program that a user without rights can start too.
func portable(t *testing.T, dir string) string {
	t.Helper()
	self, err := os.Executable()
	require.NoError(t, err)
	in, err := os.Open(self)
	require.NoError(t, err)
	defer in.Close()
	path := filepath.Join(dir, "lineworthy")
	out, err := os.OpenFile(path, os.O_CREATE|os.O_WRONLY, 0o755)
	require.NoError(t, err)
	_, err = io.Copy(out, in)
	require.NoError(t, errors.Join(err, out.Close()))
	return path
}
