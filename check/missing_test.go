package check_test

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// TestMissingKnowledgeNeverClears takes every key out of every shipped line, one at a time. A sheet that says less may be
// refused, or judged worse; it must never turn unfit or unproven into fit or conditional, but for the keys that state a
// fault itself.
func TestMissingKnowledgeNeverClears(t *testing.T) {
	paths, err := filepath.Glob(linePath("*"))
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		t.Run(filepath.Base(filepath.Dir(path)), func(t *testing.T) {
			t.Parallel()
			was := judge(t, path).Word
			data, err := os.ReadFile(path)
			require.NoError(t, err)
			var root yaml.Node
			require.NoError(t, yaml.Unmarshal(data, &root))
			n := 0
			eachKey(&root, "", func(at string, without func() func()) {
				if strings.HasPrefix(at, "runs.") && strings.Count(at, ".") == 1 {
					return // without one of its runs it is another line
				}
				back := without()
				defer back()
				n++
				checkLess(t, path, was, at, &root)
			})
			require.Greater(t, n, 40)
		})
	}
}

func checkLess(t *testing.T, path string, was report.Word, at string, root *yaml.Node) {
	var text bytes.Buffer
	require.NoError(t, yaml.NewEncoder(&text).Encode(root))
	line, err := sheet.Parse(path, text.Bytes())
	if err != nil {
		return // refused
	}
	v, err := engine(t).Check(context.Background(), line)
	if err != nil {
		return
	}
	require.Falsef(t, better(v.Word, was), "without %s the line is %s, with it %s", at, v.Word, was)
}

var rank = map[report.Word]int{report.Fit: 0, report.Conditional: 1, report.Unproven: 2, report.Unfit: 3}

// better says whether taking something away turned a line that may not be used into one that may.
func better(now, was report.Word) bool {
	return rank[was] >= rank[report.Unproven] && rank[now] < rank[report.Unproven]
}

// eachKey visits every mapping entry below n with a way to take it out and put it back.
func eachKey(n *yaml.Node, path string, visit func(string, func() func())) {
	switch n.Kind {
	case yaml.DocumentNode:
		eachKey(n.Content[0], path, visit)
	case yaml.SequenceNode:
		for i, c := range n.Content {
			eachKey(c, path+"["+strconv.Itoa(i)+"]", visit)
		}
	case yaml.MappingNode:
		for i := 0; i < len(n.Content); i += 2 {
			at := strings.TrimPrefix(path+"."+n.Content[i].Value, ".")
			all := n.Content
			visit(at, func() func() {
				n.Content = append(append([]*yaml.Node{}, all[:i]...), all[i+2:]...)
				return func() { n.Content = all }
			})
			eachKey(n.Content[i+1], at, visit)
		}
	}
}
