package inspect_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

// bad is a reading of each kind with which nobody should be sent on in silence.
var bad = map[string]string{
	"tested": "2001-01-01", "made": "1990-01", "rated": "0.01 bar(g)", "inlet_rated": "0.01 bar(g)", "set": "900 bar(g)",
	"relief_set": "900 bar(g)", "marked": "none", "locked": "no", "seal": "none", "damage": "cracked", "condition": "kinked",
	"tag": "X", "marks": "none", "readable": "no", "resistance": "9 Gohm", "bend": "1 mm", "restraint": "no", "isolatable": "yes",
	"at_rest": "no", "range": "0.1 bar(g)", "contents": "chlorine", "pressure": "900 bar(g)", "oxygen_clean": "no", "shut": "no",
	"padlocked": "no", "closing_flow": "9 m3/h", "discharge_limit": "0.01 bar(g)", "vent": "closed", "bonded": "no", "filled": "99.9 %",
}

// spared are readings that harm nothing: a bond where nothing burns, a source that is fuller than it need be.
func spared(name, key string) bool {
	return key == "bonded" && name != "butanone-day-tank" || key == "filled" && name != "butanone-day-tank"
}

// TestNothingInSilence: on clean lines every reading that is bad is told, or keeps the line from being cleared.
func TestNothingInSilence(t *testing.T) {
	for _, name := range []string{"butanone-day-tank", "air-tools", "oxygen-furnace", "acid-into-hypochlorite-corrected"} {
		l, _ := listOf(t, engine(t), shipped(name))
		for _, i := range l.Items {
			for _, f := range i.Fields {
				text, known := bad[f.Key]
				require.True(t, known, "a bad reading of %s is wanted here", f.Key)
				if spared(name, f.Key) || f.Expect == text {
					continue
				}
				r := inspected(t, shipped(name), map[string]string{i.ID + "/" + f.Key: text})
				require.True(t, len(r.FromReadings) > 0 || r.Word != report.Conditional, "%s %s/%s reads %s: %s", name, i.ID, f.Key, text, r.Word)
			}
		}
	}
}
