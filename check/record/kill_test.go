package record

import (
	"bufio"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const childEnv = "RECORD_TEST_CHILD"

func TestMain(m *testing.M) {
	if os.Getenv(childEnv) != "" {
		child(strings.Fields(os.Getenv(childEnv)))
	}
	os.Exit(m.Run())
}

// child appends to a record until it is killed or has written its share, and says each acknowledged line on stdout.
func child(args []string) {
	path, name, share, slow := args[0], args[1], args[2], args[3] == "slow"
	s := At(path)
	if slow {
		plain := s.open
		s.open = func(p string) (disk, error) {
			d, err := plain(p)
			return crawling{d}, err
		}
	}
	for i := 1; share == "endless" || strconv.Itoa(i-1) != share; i++ {
		r, err := s.Append(Item{noon, "note", map[string]any{"writer": name, "n": i, "pad": strings.Repeat("x", 300*(i%4))}})
		if err != nil {
			fmt.Println("error", err)
			os.Exit(1)
		}
		fmt.Println(r.Last, r.Head)
	}
	os.Exit(0)
}

// crawling writes a few bytes at a time, so that a kill lands within a write.
type crawling struct{ disk }

func (c crawling) Write(b []byte) (n int, err error) {
	for len(b) > 0 && err == nil {
		var k int
		k, err = c.disk.Write(b[:min(len(b), 150)])
		n, b = n+k, b[k:]
		time.Sleep(20 * time.Microsecond)
	}
	return n, err
}

func writer(t *testing.T, args ...string) (*exec.Cmd, io.Reader) {
	self, err := os.Executable()
	require.NoError(t, err)
	cmd := exec.Command(self)
	cmd.Env = append(os.Environ(), childEnv+"="+strings.Join(args, " "))
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	return cmd, out
}

// TestKilled kills writers at random moments, in half of the rounds two at once. Whatever was acknowledged is there
// with its sum, the chain holds up to a torn end at most, and the next writer goes on.
func TestKilled(t *testing.T) {
	rounds, path := 200, filepath.Join(t.TempDir(), "record.jsonl")
	if testing.Short() {
		rounds = 30
	}
	chance := rand.New(rand.NewPCG(7, 11))
	told, tornEnds := map[int64]string{}, 0
	for round := range rounds {
		speed := []string{"fast", "slow"}[round%2]
		for line, head := range killed(t, chance, path, speed, 1+round/2%2) {
			told[line] = head
		}
		p := soundUpToTorn(t, path)
		if p.Torn != nil {
			tornEnds++
		}
		if round%10 == 9 {
			keptAll(t, path, told)
		}
	}
	_, err := At(path).Append(item(1))
	require.NoError(t, err)
	p := keptAll(t, path, told)
	require.True(t, p.Clean())
	assert.Len(t, p.SetAside, tornEnds, "each torn end is named in the record")
	assert.Greater(t, len(told), rounds, "the writers hardly wrote")
	assert.Greater(t, tornEnds, rounds/30, "the kills hardly ever fell within a write")
	t.Logf("%d kills, %d lines acknowledged, %d torn ends set aside", rounds, len(told), tornEnds)
}

// killed lets writers run for a random while and returns what they were told before the kill.
func killed(t *testing.T, chance *rand.Rand, path, speed string, writers int) map[int64]string {
	told := map[int64]string{}
	var cmds []*exec.Cmd
	var outs []io.Reader
	for i := range writers {
		cmd, out := writer(t, path, fmt.Sprint("w", i), "endless", speed)
		cmds, outs = append(cmds, cmd), append(outs, out)
	}
	first := bufio.NewReader(outs[0])
	line, _ := first.ReadString('\n') // it is past its start
	outs[0] = io.MultiReader(strings.NewReader(line), first)
	time.Sleep(time.Duration(chance.IntN(6000)) * time.Microsecond)
	for _, cmd := range cmds {
		require.NoError(t, cmd.Process.Kill())
	}
	for i, out := range outs {
		text, err := io.ReadAll(out)
		require.NoError(t, err)
		_ = cmds[i].Wait()
		for _, l := range strings.SplitAfter(string(text), "\n") {
			var n int64
			var head string
			if strings.HasSuffix(l, "\n") {
				_, err := fmt.Sscan(l, &n, &head)
				require.NoError(t, err, l)
				told[n] = head
			}
		}
	}
	return told
}

func soundUpToTorn(t *testing.T, path string) Proof {
	p := proof(t, path)
	require.Nil(t, p.Broken)
	return p
}

func keptAll(t *testing.T, path string, told map[int64]string) Proof {
	p := soundUpToTorn(t, path)
	found := map[int64]string{}
	for e, err := range walk(path) {
		if err == nil {
			found[e.Seq] = e.sum
		}
	}
	for line, head := range told {
		require.Equal(t, head, found[line], "line %d was acknowledged", line)
	}
	return p
}

// TestTwoWriters lets two processes append at once: every line is there, each writer's in its order.
func TestTwoWriters(t *testing.T) {
	path := filepath.Join(t.TempDir(), "record.jsonl")
	const share = 150
	a, outA := writer(t, path, "a", strconv.Itoa(share), "fast")
	b, outB := writer(t, path, "b", strconv.Itoa(share), "slow")
	textA, err := io.ReadAll(outA)
	require.NoError(t, err)
	textB, err := io.ReadAll(outB)
	require.NoError(t, err)
	require.NoError(t, a.Wait(), string(textA))
	require.NoError(t, b.Wait(), string(textB))

	p := proof(t, path)
	require.True(t, p.Clean())
	assert.Equal(t, int64(2*share), p.Lines)
	next := map[string]int{"a": 1, "b": 1}
	for e, err := range Entries(path) {
		require.NoError(t, err)
		var w struct {
			Writer string
			N      int
		}
		require.NoError(t, unmarshal(e, &w))
		require.Equal(t, next[w.Writer], w.N)
		next[w.Writer]++
	}
	assert.Equal(t, map[string]int{"a": share + 1, "b": share + 1}, next)
}
