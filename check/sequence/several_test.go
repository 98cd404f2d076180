package sequence_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// relay are two runs of water, the one that empties the vessel between them written first.
const relay = `line: SQ-RL
as_of: 2026-11-25
site: {lowest: 5 °C, highest: 40 °C}
fluids:
  product: {fluid: water}
vessels:
  high: {kind: tank, volume: 5 m3, filled: 60 %, vent: open}
  between: {kind: tank, volume: 1 m3, filled: 10 %, vent: open}
  low: {kind: tank, volume: 5 m3, filled: 10 %, vent: open}
runs:
  out:
    carries: [product]
    source: {vessel: between, head: 1 m}
    to: low
    flow: 4 m3/h
    quantity: 500 L
    parts:
      - {id: V1, kind: valve}
      - {id: P1, kind: pump, shutoff: 2 bar(g)}
      - {id: H1, kind: hose, size: DN 25, length: 4 m}
  in:
    carries: [product]
    source: {vessel: high, head: 1 m}
    to: between
    flow: 4 m3/h
    quantity: 500 L
    parts:
      - {id: V2, kind: valve}
      - {id: H2, kind: hose, size: DN 25, length: 4 m}
`

func sheetOf(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "line.yaml")
	require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
	return path
}

// TestRelay: what fills a vessel comes before what empties it, each transfer is stopped before the next begins, and the
// levels of the second count on the first.
func TestRelay(t *testing.T) {
	path := sheetOf(t, relay)
	m := model(t, path)
	figures := ""
	for _, f := range m.Figures() {
		figures += f.Run + " " + f.What + ": " + f.Says + "\n"
	}
	require.Contains(t, figures, "in stop level: between from 10 % to 60 %")
	require.Contains(t, figures, "out source: between from 60 % to 10 %")
	steps := m.Derive().Steps
	out, err := m.Play(steps)
	require.NoError(t, err)
	require.Empty(t, out.Faults)
	require.Empty(t, out.Open)
	closing := slices.IndexFunc(steps, func(s sequence.Step) bool { return s.Do == "close" && s.Item == "V2" })
	next := slices.IndexFunc(steps, func(s sequence.Step) bool { return s.Do == "open" && s.Item == "V1" })
	require.Less(t, closing, next)
	late := slices.Insert(slices.Delete(slices.Clone(steps), closing, closing+1), next+2, steps[closing])
	out, err = model(t, path).Play(late)
	require.NoError(t, err)
	require.Equal(t, []string{sequence.GoesOn}, names(out))
}

// TestVapourNotKnown: a liquefied gas whose pressure does not follow from the sheet is asked for, and neither a backflow nor
// a lack of drive is made up of it.
func TestVapourNotKnown(t *testing.T) {
	m := model(t, without(t, "toxic/line.yaml", ", head: 1 m"))
	out, err := m.Play(m.Derive().Steps)
	require.NoError(t, err)
	require.Empty(t, out.Faults)
	require.Contains(t, strings.Join(out.Open, "\n"), "the pressure that stands in store by itself: write runs.liquid.source.head in the sheet")
}

// TestHeadNotStated: how high the liquid stands is asked for, and until it is known it counts as running out.
func TestHeadNotStated(t *testing.T) {
	path := without(t, "pump/line.yaml", ", head: 1.2 m")
	steps := []sequence.Step{{Do: "connect", Item: "H1"}, {Do: "open", Item: "V2"}, {Do: "open", Item: "V1"}, {Do: "transfer"}, {Do: "close", Item: "V1"}, {Do: "close", Item: "V2"}, {Do: "disconnect", Item: "H1"}}
	out, err := model(t, path).Play(steps)
	require.NoError(t, err)
	require.ElementsMatch(t, []string{sequence.BlockedIn, sequence.WithLiquid}, names(out))
	require.Contains(t, strings.Join(out.Open, ""), "write runs.liquid.source.head")
	out, err = model(t, path).Play([]sequence.Step{{Do: "open", Item: "V1"}})
	require.NoError(t, err)
	require.Contains(t, names(out), sequence.NotConnected)
}

// vapourReturn is a truck of ammonia whose vapour is taken back from the store.
const vapourReturn = `line: SQ-VR
as_of: 2026-11-25
site: {lowest: 5 °C, highest: 40 °C}
fluids:
  product: {fluid: ammonia, temperature: {lowest: 5 °C, normal: 15 °C, highest: 40 °C}}
vessels:
  truck: {kind: tanker, volume: 20 m3, filled: 80 %, rated: 20 bar(g), vent: closed}
  store: {kind: pressure-vessel, volume: 60 m3, filled: 30 %, rated: 20 bar(g), vent: closed}
runs:
  liquid:
    carries: [product]
    source: {vessel: truck, head: 1 m}
    to: store
    flow: 8 m3/h
    quantity: 10 m3
    parts:
      - {id: V1, kind: valve}
      - {id: P1, kind: pump, shutoff: 3 bar(g)}
      - {id: H1, kind: hose, size: DN 50, length: 4 m}
      - {id: V2, kind: valve}
  back:
    carries: [product]
    source: {vessel: store, head: 0 m}
    to: truck
    parts:
      - {id: V3, kind: valve}
      - {id: H2, kind: hose, size: DN 25, length: 4 m}
      - {id: V4, kind: valve}
`

// TestVapourReturn: the vapour goes back while the liquid runs, and a vessel with pressure by itself is shut off, not vented.
func TestVapourReturn(t *testing.T) {
	m := model(t, sheetOf(t, vapourReturn))
	steps, order := m.Derive().Steps, []string{}
	for _, s := range steps {
		order = append(order, strings.TrimSpace(s.Do+" "+s.Item))
	}
	at := func(step string) int {
		i := slices.Index(order, step)
		require.GreaterOrEqual(t, i, 0, step)
		return i
	}
	require.Less(t, at("open V3"), at("transfer"))
	require.Less(t, at("transfer"), at("close V3"))
	require.Less(t, at("close V4"), at("vent H2"))
	require.NotContains(t, order, "vent truck")
	out, err := m.Play(steps)
	require.NoError(t, err)
	require.Empty(t, out.Faults)
	require.Empty(t, out.Open)
}
