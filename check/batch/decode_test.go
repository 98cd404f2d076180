package batch

import (
	"bytes"
	"encoding/json"
	"math/rand/v2"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
)

func texts(t testing.TB) [][]byte {
	files, _ := filepath.Glob("/tmp/lw/perf/*.json")
	var out [][]byte
	for _, p := range files {
		b, err := os.ReadFile(p)
		require.NoError(t, err)
		out = append(out, bytes.TrimSpace(b))
	}
	return out
}

func TestZZSame(t *testing.T) {
	r := newReader()
	chance := rand.New(rand.NewPCG(3, 4))
	all := texts(t)
	for range 300 {
		f := facts.Any(chance.IntN, []string{"a", "é\u2028", "\"\\", "<>", "\x01"})
		x, err := f.JSON()
		require.NoError(t, err)
		all = append(all, x)
		var y bytes.Buffer
		json.Indent(&y, x, "", " ")
		all = append(all, y.Bytes())
	}
	for _, x := range all {
		f := &facts.Facts{}
		r.text, r.at = string(x), 0
		require.True(t, r.whole(f))
		want, err := facts.Read(x)
		require.NoError(t, err)
		require.Equal(t, want, f)
	}
}

func BenchmarkRead(b *testing.B) {
	r := newReader()
	all := texts(b)
	b.ReportAllocs()
	n := 0
	for b.Loop() {
		x := all[n%len(all)]
		n++
		b.SetBytes(int64(len(x)))
		if _, err := r.read(x); err != nil {
			b.Fatal(err)
		}
	}
}
