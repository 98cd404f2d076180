package catalog_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

func TestSearchRanks(t *testing.T) {
	for _, test := range []struct {
		typed, kind, id string
		rank            catalog.Rank
	}{
		{"MEK", catalog.Fluids, "butanone", catalog.Exact},
		{"un1193", catalog.Fluids, "butanone", catalog.Exact},
		{"78-93-3", catalog.Fluids, "butanone", catalog.Exact},
		{"ASME B16.5", catalog.Connections, "flange-asme-b16-5", catalog.Exact},
		{"butano", catalog.Fluids, "butan-1-ol", catalog.Prefix},
		{"spiral graphite", catalog.Seals, "spiral-wound-graphite", catalog.Word},
		{"46 CFR Part 150", catalog.Sources, "46-cfr-150", catalog.Prefix},
		{"tolune", catalog.Fluids, "toluene", catalog.Near},
	} {
		found := shipped.Search(test.typed)
		require.NotEmpty(t, found, test.typed)
		assert.Equal(t, test.rank, found[0].Rank, "%s: %v", test.typed, found[0])
		assert.Contains(t, idsIn(found), test.kind+"/"+test.id, test.typed)
	}
}

func idsIn(found []catalog.Match) (ids []string) {
	for _, m := range found {
		ids = append(ids, m.Kind+"/"+m.ID)
	}
	return ids
}

// The rank never falls along the list, and no entry is listed twice.
func TestSearchIsInOrder(t *testing.T) {
	for _, typed := range []string{"acid", "hose", "steel", "316", "en", "o", "water", "chlor"} {
		found := shipped.Search(typed)
		seen := map[string]bool{}
		for i, m := range found {
			assert.False(t, seen[m.Kind+"/"+m.ID], "%s: %v", typed, m)
			seen[m.Kind+"/"+m.ID] = true
			assert.True(t, i == 0 || found[i-1].Rank <= m.Rank, "%s: %v", typed, m)
		}
	}
}

func TestSearchFindsNothing(t *testing.T) {
	for _, typed := range []string{"", "  ", "-", "qwertz", "9999-99-9", strings.Repeat("qwertz ", 10_000)} {
		assert.Empty(t, shipped.Search(typed), typed[:min(len(typed), 9)])
	}
	assert.True(t, catalog.Collective("UN 1993"))
	assert.False(t, catalog.Collective("UN 1193"))
}

// A number one digit off is another substance: it is not offered as a misspelling.
func TestSearchNeverGuessesNumbers(t *testing.T) {
	for _, typed := range []string{"78-93-4", "UN 1194x", "UN 9999"} {
		for _, m := range shipped.Search(typed) {
			assert.NotEqual(t, catalog.Near, m.Rank, "%s: %v", typed, m)
		}
	}
}
