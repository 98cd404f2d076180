package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

// siteWith writes one site file and lays its folder over the catalog.
func siteWith(t *testing.T, kind, id string, text []byte) error {
	t.Helper()
	dir := t.TempDir()
	require.NoError(t, os.MkdirAll(filepath.Join(dir, kind), 0o755))
	require.NoError(t, os.WriteFile(filepath.Join(dir, kind, id+".yaml"), text, 0o644))
	_, err := catalog.Open().Overlay(dir)
	return err
}

var knownOf = map[string]string{catalog.Fluids: "butanone", catalog.Hoses: "en-12115-sd", catalog.Materials: "NBR",
	catalog.Connections: "flange-asme-b16-5"}

func TestNewEntryIsSoundAsWritten(t *testing.T) {
	for _, kind := range entryKinds {
		for _, id := range []string{"site-thing", knownOf[kind]} {
			b, err := blankFor(kind, id)
			require.NoError(t, err)
			text, err := filled(kind, b)
			require.NoError(t, err)
			assert.NoError(t, siteWith(t, kind, id, text), "%s %s", kind, id)
		}
	}
}

// Every example line of a template is sound too once its comment mark is taken away.
func TestNewEntryExamplesAreSound(t *testing.T) {
	mark := regexp.MustCompile(`(?m)^# `)
	for _, kind := range entryKinds {
		b, err := blankFor(kind, "site-thing")
		require.NoError(t, err)
		text, err := filled(kind, b)
		require.NoError(t, err)
		used := mark.ReplaceAll(text, nil)
		require.GreaterOrEqual(t, strings.Count(string(used), "standing: site"), 5, kind)
		assert.NoError(t, siteWith(t, kind, "site-thing", used), kind)
	}
}

func TestNewEntryRefusesTakenNames(t *testing.T) {
	_, err := blankFor(catalog.Fluids, "MEK")
	assert.ErrorContains(t, err, `"MEK" is a name of fluid butanone already`)
	_, err = blankFor(catalog.Fluids, "LPG")
	assert.ErrorContains(t, err, "may mean butane, isobutane or propane")
	_, err = blankFor(catalog.Fluids, "../up")
	assert.ErrorContains(t, err, "is no id")
}
