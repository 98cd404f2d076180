package facts_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// Screwed ferrules to EN 14424 (published scope): 25 bar to DN 25, 16 bar to DN 40; beyond that nothing is known. Clamp
// shells 25 bar (recalled). Bands and worm drives are practice.
func TestRetentionLimitsTheHose(t *testing.T) {
	for name, tc := range map[string]struct {
		size, retention string
		want            facts.Int
	}{
		"not stated":                  {"DN 25", "", facts.Know(4000)},
		"crimped":                     {"DN 25", "crimped", facts.Know(4000)},
		"screwed ferrule DN 25":       {"DN 25", "screwed-ferrule", facts.Know(2500)},
		"screwed ferrule 1 in":        {"1 in", "screwed-ferrule", facts.Know(2500)},
		"screwed ferrule DN 32":       {"DN 32", "screwed-ferrule", facts.Know(1600)},
		"screwed ferrule DN 40":       {"DN 40", "screwed-ferrule", facts.Know(1600)},
		"screwed ferrule past its DN": {"DN 50", "screwed-ferrule", facts.Int{}},
		"clamp shells":                {"DN 50", "clamp-shells", facts.Know(2500)},
		"band":                        {"DN 50", "band", facts.Know(1000)},
		"worm drive":                  {"DN 50", "worm-drive", facts.Know(300)},
		"nothing":                     {"DN 50", "none", facts.Know(0)},
	} {
		t.Run(name, func(t *testing.T) {
			head := "        class: en-12115-sd\n        size: " + tc.size + "\n        rated: 40 bar(g)\n        evidence: e\n"
			if tc.retention != "" {
				head += "        retention: " + tc.retention + "\n"
			}
			h := hose(t, build(t, hoseHead, head), "H1")
			assert.Equal(t, tc.want, h.RatedKPa)
			assert.Equal(t, tc.retention, h.Retention)
		})
	}
}

// What rules out a band, at the line and one past it (common practice, no source).
func TestBandBarred(t *testing.T) {
	product := "product: {fluid: butanone, concentration: 100 %, temperature: {lowest: 10 °C, highest: 40 °C}}"
	fluid := func(name, top string) []string {
		return []string{product, "product: {fluid: " + name + ", temperature: {lowest: 10 °C, highest: " + top + "}}", "carries: [product, pad]", "carries: [product]"}
	}
	for name, tc := range map[string]struct {
		edits []string
		want  string
	}{
		"flammable liquid, pushed":      {nil, "Butanone"},
		"water at 65 °C":                {fluid("water", "65 °C"), ""},
		"water at 66 °C":                {fluid("water", "66 °C"), "hot water"},
		"liquefied gas":                 {fluid("ammonia", "30 °C"), "liquefied"},
		"corrosive":                     {fluid("phosphoric-acid", "30 °C"), "corrosive"},
		"nitrogen pushed at over 2 bar": {[]string{"carries: [product, pad]", "carries: [pad]"}, "2 bar(g)"},
	} {
		t.Run(name, func(t *testing.T) {
			h := hose(t, build(t, tc.edits...), "H1")
			assert.Equal(t, tc.want != "", h.BandBarred)
			assert.True(t, strings.Contains(h.BandBarredBy, tc.want), h.BandBarredBy)
		})
	}
}
