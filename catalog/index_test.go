package catalog

import (
	"flag"
	"io/fs"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const indexHeading = "# kind, name, id; written by go generate ./catalog"

var update = flag.Bool("update", false, "write index.txt anew")

// indexOf builds the index of names from every file; files that cannot be read are the business of Lint.
func indexOf(files fs.FS) string {
	var lines []string
	c := open(files, "")
	for _, kind := range Kinds {
		for _, id := range c.IDs(kind) {
			value := reflect.New(fluidOr(shapes[kind])).Interface()
			if decode(kind+"/"+id+".yaml", c.Raw(kind, id), value) != nil {
				continue
			}
			for _, n := range namesOf(kind, value) {
				lines = append(lines, n.line())
			}
		}
	}
	slices.Sort(lines)
	return indexHeading + "\n" + strings.Join(append(slices.Compact(lines), ""), "\n")
}

func TestIndexFresh(t *testing.T) {
	want := indexOf(builtIn)
	if *update {
		require.NoError(t, os.WriteFile("index.txt", []byte(want), 0o644))
		return
	}
	assert.True(t, want == builtInIndex, "index.txt is stale: run `go generate ./catalog`")
}

func TestIndexHasEveryID(t *testing.T) {
	c := Open()
	for _, kind := range Kinds {
		seen := map[string]string{}
		for _, id := range c.IDs(kind) {
			assert.Contains(t, c.idsNamed(kind, normal(id)), id)
			assert.Empty(t, seen[normal(id)], "%s %s differs from another id only in case or hyphens", kind, id)
			seen[normal(id)] = id
		}
	}
}
