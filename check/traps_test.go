package check_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// trap is a fault a person makes or a worked case of a standard: the sheet that has it must draw the rule, and the same
// sheet put right must not. The source of each is named; (published), (restated), (recalled) is how it is known.
type trap struct {
	name, source string
	rule         string
	wrong, right string
}

func tryTraps(t *testing.T, traps []trap) {
	t.Helper()
	for _, c := range traps {
		t.Run(c.name, func(t *testing.T) {
			require.NotEmpty(t, c.source)
			bad := judgeText(t, c.wrong)
			assert.Contains(t, found(bad), c.rule, c.source)
			assert.NotEqual(t, report.Fit, bad.Word)
			assert.NotContains(t, found(judgeText(t, c.right)), c.rule, "the sheet put right")
		})
	}
}

func judgeText(t *testing.T, text string) *report.Verdict {
	t.Helper()
	line, err := sheet.Parse("trap.yaml", []byte(text))
	require.NoError(t, err, text)
	v, err := engine(t).Check(context.Background(), line)
	require.NoError(t, err)
	return v
}

// joint is one joint under test: the end of a supply against the inlet of a fitting.
type joint struct {
	a, b     string // keys of both ends but material, as in a sheet
	material string // of both ends; S31603 if empty
	fluid    string // nitrogen if empty
	bar      string // gauge pressure of the supply; 5 if empty
	hot      string // hottest, in degrees C; 30 if empty
	cylinder bool   // a cylinder outlet and a regulator instead of a supply and a fitting
	seal     string // of end a; a washer if empty
}

const washer = "seal: {kind: flat-washer, material: PTFE, rated: 400 bar(g), evidence: data sheet}"

func or(s, other string) string {
	if s == "" {
		return other
	}
	return s
}

// sheet writes the joint as a whole line.
func (j joint) sheet() string {
	from, kind := "supply", "kind: fitting"
	if j.cylinder {
		from, kind = "volume: 50 L, cylinder", "kind: regulator, set: 2 bar(g), lock_up: 15 %, inlet_rated: 400 bar(g)"
	}
	material := or(j.material, "S31603")
	return fmt.Sprintf(`
line: TR-1
as_of: 2026-11-25
site: {lowest: 5 °C, highest: 25 °C, sun: shaded}
fluids: {product: {fluid: %s, concentration: 100 %%, temperature: {lowest: 5 °C, normal: 20 °C, highest: %s °C}}}
vessels:
  vessel:
    {kind: process-vessel, rated: 400 bar(g), evidence: plate, vent: closed, material: S31603,
     points: {in: {standard: thread-g, size: 1/2 in, gender: male, hand: right, material: S31603, marked: product}}}
runs:
  run:
    carries: [product]
    source: {%s: %s bar(g), end: {%s, material: %s, %s}}
    to: {vessel: vessel, inlet: in}
    parts:
      - {id: F1, %s, material: S31603, rated: 400 bar(g), lowest: -50 °C, highest: 200 °C, evidence: data sheet, oxygen_clean: yes,
         inlet: {%s, material: %s},
         outlet: {standard: thread-g, size: 1/2 in, gender: female, hand: right, material: S31603, %s}}
safeguards: {remote_stop: yes, automatic_stop: yes, attended: yes}
`, or(j.fluid, "nitrogen"), or(j.hot, "30"), from, or(j.bar, "5"), j.a, material, or(j.seal, washer), kind, j.b, material, washer)
}

// variant is a shipped line with some of its text replaced; every old text must be there.
func variant(t *testing.T, name string, oldNew ...string) string {
	t.Helper()
	text := readLine(t, name)
	for i := 0; i < len(oldNew); i += 2 {
		require.Contains(t, text, oldNew[i], name)
		text = strings.Replace(text, oldNew[i], oldNew[i+1], 1)
	}
	return text
}
