package batch

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"iter"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/decide"
	"lineworthy/check/sheet"
	"lineworthy/rules"
)

// numbered are items whose text is their number.
func numbered(n int) iter.Seq[Item] {
	return func(yield func(Item) bool) {
		for i := range n {
			if !yield(Item{Name: fmt.Sprintf("f:%d", i+1), Text: fmt.Appendf(nil, "%d", i)}) {
				return
			}
		}
	}
}

// echo answers with the text; every third number takes a while, every tenth is broken and every 25th a fault.
func echo() Judge {
	return func(ctx context.Context, i Item) Answer {
		var n int
		fmt.Sscan(string(i.Text), &n)
		switch {
		case n%25 == 24:
			panic("no such number")
		case n%10 == 9:
			return Answer{Err: errors.New("broken")}
		case n%3 == 0:
			time.Sleep(time.Microsecond)
		}
		return Answer{Word: "fit", Text: fmt.Appendf(nil, "%d", n)}
	}
}

// TestOrder: the answers come in the order of the lines, whoever gave them, and nothing stops at a broken one.
func TestOrder(t *testing.T) {
	for _, workers := range []int{1, 2, 7} {
		for _, n := range []int{0, 1, 63, 64, 65, 1000} {
			var out bytes.Buffer
			var broken []string
			last := 0
			sum, err := Run(context.Background(), numbered(n), echo, &out, Options{
				Workers: workers, Progress: func(n int) { assert.Greater(t, n, last); last = n },
				Broken: func(name string, err error) { broken = append(broken, name+" "+err.Error()) },
			})
			require.NoError(t, err)
			lines := strings.Split(strings.TrimSuffix(out.String(), "\n"), "\n")
			if n == 0 {
				lines = nil
			}
			require.Len(t, lines, n)
			var wrong []string
			for i, line := range lines {
				switch {
				case i%25 == 24:
					assert.Contains(t, line, `fault in the tool, no verdict: no such number`)
				case i%10 == 9:
					assert.Equal(t, fmt.Sprintf(`{"at":"f:%d","error":"broken"}`, i+1), line)
				default:
					assert.Equal(t, fmt.Sprint(i), line)
					continue
				}
				wrong = append(wrong, fmt.Sprintf("f:%d ", i+1))
			}
			assert.Equal(t, Summary{Lines: n, Broken: len(wrong), Words: sum.Words}, sum)
			assert.Equal(t, n-len(wrong), sum.Words["fit"])
			assert.Equal(t, n, last)
			require.Len(t, broken, len(wrong))
			for i := range wrong {
				assert.True(t, strings.HasPrefix(broken[i], wrong[i]))
			}
		}
	}
}

// TestNoMoreUnderWay: the source is not drawn faster than the answers are taken.
func TestNoMoreUnderWay(t *testing.T) {
	var drawn, taken, most atomic.Int64
	source := func(yield func(Item) bool) {
		for i := range numbered(100 * chunkLines) {
			most.Store(max(most.Load(), drawn.Add(1)-taken.Load()))
			if !yield(i) {
				return
			}
		}
	}
	slow := func() Judge {
		return func(context.Context, Item) Answer { taken.Add(1); return Answer{Word: "fit"} }
	}
	const workers = 2
	_, err := Run(context.Background(), source, slow, io.Discard, Options{Workers: workers})
	require.NoError(t, err)
	assert.LessOrEqual(t, most.Load(), int64((2*workers+workers+2)*chunkLines))
}

// endsEarly takes some writes and then no more.
type endsEarly struct{ left int }

func (w *endsEarly) Write(b []byte) (int, error) {
	if w.left--; w.left < 0 {
		return 0, errors.New("disk full")
	}
	return len(b), nil
}

func TestWriterFails(t *testing.T) {
	drawn := 0
	endless := func(yield func(Item) bool) {
		for yield(Item{Name: "x", Text: []byte("1")}) {
			drawn++
		}
	}
	_, err := Run(context.Background(), endless, echo, &endsEarly{left: 3}, Options{Workers: 2})
	require.ErrorContains(t, err, "disk full")
}

func TestRunIsCancelled(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	endless := func(yield func(Item) bool) {
		for n := 0; yield(Item{Name: "x", Text: []byte("1")}); n++ {
			if n == 500 {
				stop()
			}
		}
	}
	_, err := Run(ctx, endless, echo, io.Discard, Options{Workers: 2})
	require.ErrorIs(t, err, context.Canceled)
}

// TestDeadline: a line that takes too long is given up, and the next one has its own time.
func TestDeadline(t *testing.T) {
	judge := func() Judge {
		return func(ctx context.Context, i Item) Answer {
			if string(i.Text) != "1" {
				return Answer{Word: "fit", Text: i.Text}
			}
			<-ctx.Done()
			return Answer{Err: ctx.Err()}
		}
	}
	var out bytes.Buffer
	_, err := Run(context.Background(), numbered(3), judge, &out, Options{Workers: 1, Deadline: 10 * time.Millisecond})
	require.NoError(t, err)
	assert.Equal(t, "0\n{\"at\":\"f:2\",\"error\":\"context deadline exceeded\"}\n2\n", out.String())
}

func TestStream(t *testing.T) {
	long := strings.Repeat("x", 200<<10)
	var got []string
	for i := range Stream("f", strings.NewReader("a\r\n\n  b  \n"+long+"\nend")) {
		require.NoError(t, i.Err)
		got = append(got, i.Name+" "+string(i.Text))
	}
	assert.Equal(t, []string{"f:1 a", "f:3 b", "f:4 " + long, "f:5 end"}, got)
}

func TestStreamOfEndlessLines(t *testing.T) {
	var names []string
	var errs []error
	for i := range Stream("f", io.MultiReader(strings.NewReader("a\n"), io.LimitReader(zeroes{}, mostLine+1), strings.NewReader("\nb\n"))) {
		names, errs = append(names, i.Name), append(errs, i.Err)
	}
	assert.Equal(t, []string{"f:1", "f:2", "f:3"}, names)
	assert.ErrorContains(t, errs[1], "longer than")
	assert.NoError(t, errs[2])
}

type zeroes struct{}

func (zeroes) Read(b []byte) (int, error) {
	for i := range b {
		b[i] = '0'
	}
	return len(b), nil
}

func TestFiles(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"b.yaml", "a/x.yaml", "a/x.txt", "c.yml"} {
		require.NoError(t, os.MkdirAll(filepath.Dir(filepath.Join(dir, name)), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(name), 0o644))
	}
	var got []string
	for i := range Files(dir, ".yaml", ".yml") {
		require.NoError(t, i.Err)
		got = append(got, string(i.Text))
	}
	assert.Equal(t, []string{"a/x.yaml", "b.yaml", "c.yml"}, got)
	for i := range Files(filepath.Join(dir, "absent"), ".yaml") {
		assert.ErrorIs(t, i.Err, os.ErrNotExist)
	}
}

// judges are those of facts and of sheets on one engine, and the set they judge by.
func judges(t testing.TB) (*decide.Engine, rules.Set) {
	t.Helper()
	set, err := rules.Load()
	require.NoError(t, err)
	e, err := decide.New(context.Background(), set)
	require.NoError(t, err)
	return e, set
}

// TestWordIsTheVerdict: a batch says of every shipped line what the check of that line says.
func TestWordIsTheVerdict(t *testing.T) {
	e, set := judges(t)
	c, err := engine()
	require.NoError(t, err)
	byFacts, bySheet := Facts(e.Remembering(), set.Index())(), Sheets(c, e, set.Index())()
	all := shipped(t)
	for name, f := range all {
		path := filepath.Join("../../testdata/lines", name, "line.yaml")
		line, err := sheet.Read(path)
		require.NoError(t, err)
		v, err := c.Check(context.Background(), line)
		require.NoError(t, err)
		for i, a := range []Answer{
			byFacts(context.Background(), Item{Name: "x", Text: text(t, f)}), bySheet(context.Background(), File(path)),
		} {
			require.NoError(t, a.Err)
			assert.Equal(t, string(v.Word), a.Word, "%s %d", name, i)
			var got struct {
				Verdict           string
				Findings, Missing []struct{ Rule, Subject, Fact string }
			}
			require.NoError(t, json.Unmarshal(a.Text, &got))
			assert.Equal(t, a.Word, got.Verdict)
			assert.Len(t, got.Findings, len(v.Findings)+len(v.Confirm), name)
			assert.Len(t, got.Missing, len(v.Unjudged), name)
		}
	}
}

// TestSheetInAString: a sheet may come inside a JSON string, or by the name of its file.
func TestSheetInAString(t *testing.T) {
	e, set := judges(t)
	c, err := engine()
	require.NoError(t, err)
	j := Sheets(c, e, set.Index())()
	path := "../../testdata/lines/butanone-day-tank/line.yaml"
	plain := j(context.Background(), File(path))
	require.NoError(t, plain.Err)
	quoted, err := json.Marshal(string(File(path).Text))
	require.NoError(t, err)
	for _, text := range []string{string(quoted), `"` + path + `"`} {
		got := j(context.Background(), Item{Name: path, Text: []byte(text)})
		require.NoError(t, got.Err)
		assert.Equal(t, string(plain.Text), string(got.Text))
	}
	assert.Error(t, j(context.Background(), Item{Name: "x", Text: []byte(`"open`)}).Err)
}

// TestManyAtOnce: workers share an engine and its memory, and answer as one alone does. Run with -race.
func TestManyAtOnce(t *testing.T) {
	e, set := judges(t)
	var texts [][]byte
	for _, f := range shipped(t) {
		texts = append(texts, text(t, f))
	}
	slices.SortFunc(texts, bytes.Compare)
	source := func(yield func(Item) bool) {
		for i := range 400 {
			if !yield(Item{Name: fmt.Sprint(i), Text: texts[i%len(texts)]}) {
				return
			}
		}
	}
	var alone, together bytes.Buffer
	_, err := Run(context.Background(), source, Facts(e, set.Index()), &alone, Options{Workers: 1})
	require.NoError(t, err)
	_, err = Run(context.Background(), source, Facts(e.Remembering(), set.Index()), &together, Options{Workers: 4, Deadline: time.Minute})
	require.NoError(t, err)
	assert.Equal(t, alone.String(), together.String())
}
