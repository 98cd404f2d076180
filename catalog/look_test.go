package catalog

import (
	"crypto/sha256"
	"fmt"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestIDFindsEveryWayOfWriting(t *testing.T) {
	c := small(t, nil)
	for _, test := range []struct{ kind, name, want string }{
		{Fluids, "butanone", "butanone"},
		{Fluids, "BUTANONE", "butanone"},
		{Fluids, "mek", "butanone"},
		{Fluids, "Ethyl-Methyl  Ketone", "butanone"},
		{Fluids, "78-93-3", "butanone"},
		{Fluids, "UN 1193", "butanone"},
		{Fluids, "un1193", "butanone"},
		{Fluids, "UN-1193", "butanone"},
		{Hoses, "STD 1 A", "std-1-a"},
		{Hoses, "class a hose", "std-1-a"},
		{Connections, "Plain Flange", "plain"},
		{Seals, "flat gasket", "flat"},
		{Sources, "DOC A", "doc-a"},
		{Materials, "fkm", "FKM"},
		{Materials, "S31600", "S31600"}, // also another name of S31603: the exact id wins
		{Materials, "s31600", "S31600"},
	} {
		got, err := c.ID(test.kind, test.name)
		require.NoError(t, err, test.name)
		assert.Equal(t, test.want, got, test.name)
	}
}

func TestIDNeverPicks(t *testing.T) {
	_, err := small(t, nil).Material("stainless 316")
	var ambiguous *Ambiguous
	require.ErrorAs(t, err, &ambiguous)
	assert.Equal(t, []string{"S31600", "S31603"}, ambiguous.Choices)
	assert.EqualError(t, err, `"stainless 316" may mean S31600 or S31603: write one of them`)

	three := &Ambiguous{Materials, "x", []string{"A", "B", "C"}}
	assert.EqualError(t, three, `"x" may mean A, B or C: write one of them`)
}

func TestNotFoundNamesTheNearest(t *testing.T) {
	c := small(t, nil)
	for _, test := range []struct {
		kind, name string
		near       []string
		says       string
	}{
		{Hoses, "std-1-c", []string{"std-1-a", "std-1-b"},
			"no hose \"std-1-c\" in the catalog; nearest: std-1-a, std-1-b; `lineworthy catalog list hoses` shows all"},
		{Fluids, "butan", []string{"butanone"}, ""},
		{Fluids, "xenon tetroxide", nil, "no fluid \"xenon tetroxide\" in the catalog; `lineworthy catalog list fluids` shows all"},
		{Materials, "FKN", []string{"FKM"}, ""},
		{Sources, "../hoses/std-1-a", nil, ""},
		{Sources, "", nil, ""},
		{Fluids, "UN 1194", nil, ""},
		{Fluids, "78-93-4", nil, ""},
	} {
		_, err := c.ID(test.kind, test.name)
		var missing *NotFound
		require.ErrorAs(t, err, &missing, test.name)
		assert.ElementsMatch(t, test.near, missing.Nearest, test.name)
		if test.says != "" {
			assert.EqualError(t, err, test.says)
		}
	}
}

// Published examples: kitten/sitting 3 and saturday/sunday 3 are the textbook cases of Wagner & Fischer's
// algorithm (J. ACM 21 (1974) 168); recalled.
func TestDistance(t *testing.T) {
	for _, test := range []struct {
		a, b string
		want int
	}{
		{"kitten", "sitting", 3}, {"saturday", "sunday", 3}, {"", "abc", 3}, {"abc", "", 3}, {"same", "same", 0}, {"é", "e", 1},
	} {
		assert.Equal(t, test.want, distance(test.a, test.b), test.a)
	}
}

func TestLookUpsDecodeEachKind(t *testing.T) {
	c := small(t, nil)
	fluid, err := c.Fluid("MEK")
	require.NoError(t, err)
	assert.Equal(t, "liquid", fluid.Form)
	material, err := c.Material("FKM")
	require.NoError(t, err)
	assert.Equal(t, 200.0, material.HighestC.Value)
	hose, err := c.Hose("std-1-a")
	require.NoError(t, err)
	assert.Equal(t, 16.0, hose.Rating.Bar)
	connection, err := c.Connection("plain")
	require.NoError(t, err)
	assert.Len(t, connection.Mates, 2)
	seal, err := c.Seal("flat")
	require.NoError(t, err)
	assert.Equal(t, "gasket", seal.Kind)
	source, err := c.Source("doc-a")
	require.NoError(t, err)
	assert.Equal(t, "report", source.Via)
}

func TestLookUpsReadOnlyOneFile(t *testing.T) {
	c := small(t, map[string]string{"fluids/broken.yaml": "id: [", "hoses/broken.yaml": "\tno yaml"})
	_, err := c.Fluid("butanone")
	assert.NoError(t, err)
	_, err = c.Fluid("broken")
	assert.ErrorContains(t, err, "catalog fluids/broken.yaml:1: ")
}

func TestLookUpsTogether(t *testing.T) {
	c := small(t, nil)
	var all sync.WaitGroup
	got := make([]*Fluid, 50)
	for i := range got {
		all.Go(func() {
			got[i], _ = c.Fluid([]string{"butanone", "MEK", "78-93-3"}[i%3])
			rows, err := got[i].Rows("S31600")
			assert.NoError(t, err)
			assert.Len(t, rows, 2)
		})
	}
	all.Wait()
	for _, f := range got {
		assert.Same(t, got[0], f)
	}
}

func TestRawAndDigest(t *testing.T) {
	c := small(t, nil)
	text := fixture["hoses/std-1-b.yaml"]
	assert.Equal(t, text, string(c.Raw(Hoses, "std-1-b")))
	assert.Equal(t, fmt.Sprintf("%x", sha256.Sum256([]byte(text))), c.Digest(Hoses, "std-1-b"))
	assert.Nil(t, c.Raw(Hoses, "none"))
	assert.Empty(t, c.Digest(Hoses, "none"))
	assert.Nil(t, c.IDs("none"))
	assert.Equal(t, []string{"std-1-a", "std-1-b"}, c.IDs(Hoses))
}
