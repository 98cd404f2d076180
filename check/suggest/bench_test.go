package suggest_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
	"lineworthy/check/suggest"
)

// tenParts is a line of ten parts in which every hose, every second body and most joints are wrong: hot water and caustic
// soda in rubber hoses good to 65 °C with aluminium ends.
func tenParts() []byte {
	var b strings.Builder
	b.WriteString(`line: TEN
as_of: 2026-11-25
site: {lowest: 10 °C, highest: 45 °C, sun: indoors}
fluids:
  product: {fluid: caustic soda, concentration: 50 %, temperature: {lowest: 20 °C, highest: 50 °C}}
  flush: {fluid: water, role: flush, temperature: {lowest: 10 °C, highest: 75 °C}}
vessels:
  from: {vent: open, material: PE-HD, points: {out: {standard: cam-groove-en-14420-7, size: DN 50, gender: male, material: S31603, seal: {kind: coupling-gasket, material: EPDM, rated: 10 bar(g), evidence: data sheet}}}}
  into: {vent: open, material: S31603, points: {in: {standard: cam-groove-en-14420-7, size: DN 50, gender: male, material: S31603, marked: caustic soda, entry: bottom}}}
runs:
  liquid:
    carries: [product, flush]
    source: {vessel: from, outlet: out, head: 1 m}
    to: {vessel: into, inlet: in}
    flow: 4 m3/h
    drained: yes
    parts:
`)
	end := "{standard: cam-groove-en-14420-7, size: DN 50, gender: %s, material: %s, locked: yes%s}"
	seal := ", seal: {kind: coupling-gasket, material: EPDM, rated: 10 bar(g), evidence: data sheet}"
	for i := range 10 {
		metal := []string{"A03560", "S31603"}[i/2%2]
		in, out := fmt.Sprintf(end, "female", metal, ""), fmt.Sprintf(end, "male", metal, seal)
		if i == 9 {
			out = fmt.Sprintf(end, "female", metal, seal)
		}
		if i%2 == 0 {
			fmt.Fprintf(&b, `      - {id: H%d, kind: hose, class: en-12115-sd, edition: "2021", size: DN 50, length: 3 m, bend: 400 mm, rated: 10 bar(g), burst: 40 bar(g), evidence: certificate,
         layers: {liner: NBR, reinforcement: PET-FIBRE, cover: NBR}, tag: a, assigned: a, marks: [EN 12115, 10 bar, maker, 2024], readable: yes, made: 2024-04, tested: 2026-06-30,
         test_interval: 12 months, inspected: 2026-11-24, electrical: Ohm, resistance: 40 kohm, resistance_tested: 2026-06-30, condition: [sound],
         inlet: %s, outlet: %s}
`, i, in, out)
			continue
		}
		fmt.Fprintf(&b, `      - {id: F%d, kind: fitting, material: %s, size: DN 50, rated: 10 bar(g), lowest: 0 °C, highest: 90 °C, evidence: plate, inlet: %s, outlet: %s}
`, i, metal, in, out)
	}
	b.WriteString("safeguards: {remote_stop: yes, automatic_stop: no, attended: yes}\n")
	return []byte(b.String())
}

func TestTenParts(t *testing.T) {
	r := suggestions(t, "ten.yaml", tenParts(), suggest.Options{})
	require.Equal(t, report.Unfit, r.Now)
	require.True(t, r.AnyCured)
	require.GreaterOrEqual(t, r.Offers[0].Parts, 10)
	require.Contains(t, []report.Word{report.Fit, report.Conditional}, judged(t, r.Offers[0].Text).Word)
}

// BenchmarkTenParts is the whole search over the full catalog: to stay under two seconds on two cores.
func BenchmarkTenParts(b *testing.B) {
	text := tenParts()
	suggestions(b, "ten.yaml", text, suggest.Options{})
	for b.Loop() {
		suggestions(b, "ten.yaml", text, suggest.Options{})
	}
}
