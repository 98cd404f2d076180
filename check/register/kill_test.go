package register

import (
	"bufio"
	"context"
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

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

const childEnv = "REGISTER_TEST_CHILD"

func TestMain(m *testing.M) {
	if args := os.Getenv(childEnv); args != "" {
		child(strings.Split(args, "|"))
	}
	os.Exit(m.Run())
}

// child runs a register over a folder with a state file. It tells the number of each sheet that is in the state, then the
// whole register.
func child(args []string) {
	t := &testing.T{}
	o := options(t, args[0])
	o.State = args[1]
	o.Judge = func(ctx context.Context, l *sheet.Line) (*report.Verdict, error) {
		time.Sleep(time.Millisecond)
		return madeUp(ctx, l)
	}
	o.Progress = func(done, _ int) { fmt.Println(done) }
	r, err := Run(context.Background(), o)
	if err != nil {
		fmt.Println("error:", err)
		os.Exit(1)
	}
	fmt.Println("judged", r.Judged())
	if err := r.Write(os.Stdout, "jsonl", ""); err != nil {
		os.Exit(1)
	}
	os.Exit(0)
}

func started(t *testing.T, dir, state string) (*exec.Cmd, io.Reader) {
	self, err := os.Executable()
	require.NoError(t, err)
	cmd := exec.Command(self)
	cmd.Env = append(os.Environ(), childEnv+"="+dir+"|"+state)
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	return cmd, out
}

// TestKilled kills runs at random moments. What was told to be kept is kept, and in the end the register is the one that
// an undisturbed run gives.
func TestKilled(t *testing.T) {
	kills := 60
	if testing.Short() {
		kills = 15
	}
	dir := generated(t, many)
	want := written(t, run(t, options(t, dir)), "jsonl")
	chance := rand.New(rand.NewPCG(3, 9))
	rounds, within := 0, 0
	for rounds < kills {
		state := filepath.Join(t.TempDir(), "state.jsonl")
		for whole := false; !whole && rounds < kills; rounds++ {
			if whole = killed(t, chance, dir, state); !whole {
				within++
			}
		}
		o := options(t, dir)
		o.State = state
		got, _ := once(t, o)
		require.Equal(t, want, got)
	}
	assert.Greater(t, within, kills/4, "the kills hardly ever fell within a run")
	t.Logf("%d kills, %d within a run", rounds, within)
}

// killed lets a run go for a while, and says whether it came to its end before the kill.
func killed(t *testing.T, chance *rand.Rand, dir, state string) (whole bool) {
	cmd, out := started(t, dir, state)
	r := bufio.NewReader(out)
	first, _ := r.ReadString('\n')
	time.Sleep(time.Duration(chance.IntN(40_000)) * time.Microsecond)
	require.NoError(t, cmd.Process.Kill())
	rest, err := io.ReadAll(r)
	require.NoError(t, err)
	_ = cmd.Wait()
	told := 0
	for line := range strings.Lines(first + string(rest)) {
		var n int
		if _, err := fmt.Sscanf(line, "%d\n", &n); err == nil && strings.HasSuffix(line, "\n") {
			told = max(told, n)
		}
		whole = whole || strings.HasPrefix(line, "judged")
	}
	s, err := readState(state)
	require.NoError(t, err)
	defer s.close()
	require.GreaterOrEqual(t, len(s.index.last), told, "sheets that were told to be kept")
	require.Zero(t, s.Damaged)
	return whole
}

// TestTwoAtOnce lets two runs share a state file: one waits for the other, and both give the whole register.
func TestTwoAtOnce(t *testing.T) {
	dir, state := generated(t, many), filepath.Join(t.TempDir(), "state.jsonl")
	want := written(t, run(t, options(t, dir)), "jsonl")
	a, outA := started(t, dir, state)
	b, outB := started(t, dir, state)
	texts := make(chan string, 2)
	for _, out := range []io.Reader{outA, outB} {
		go func() { text, _ := io.ReadAll(out); texts <- string(text) }()
	}
	for range 2 {
		_, text, _ := strings.Cut(<-texts, "judged ")
		_, text, _ = strings.Cut(text, "\n")
		assert.Equal(t, want, text)
	}
	require.NoError(t, a.Wait())
	require.NoError(t, b.Wait())
	s, err := readState(state)
	require.NoError(t, err)
	defer s.close()
	assert.Len(t, s.index.last, many+1)
	assert.Zero(t, s.Damaged)
}
