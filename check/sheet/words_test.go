package sheet

import "testing"

func TestWords(t *testing.T) {
	checkFaults(t, []faultCase{
		{"unknown kind", "kind: hose", "kind: hoze", []string{
			`16:15: runs.main.parts[0].kind: "hoze" is not a word for kind; did you mean hose? the words are hose, pipe, fitting, valve, regulator, relief, check-valve, excess-flow, strainer, gauge, pump, coupling, breakaway, nozzle, weight, closure`,
		}},
		{"word far from all", "size: DN 25\n", "size: DN 25\n        electrical: braided\n", []string{
			`18:21: runs.main.parts[0].electrical: "braided" is not a word for electrical; the words are M, Ohm, M/T, Ohm/T, discontinuous, none`,
		}},
		{"word in capitals", "size: DN 25\n", "size: DN 25\n        electrical: m/t\n", []string{
			`18:21: runs.main.parts[0].electrical: "m/t" is not a word for electrical; did you mean M/T? the words are M, Ohm, M/T, Ohm/T, discontinuous, none`,
		}},
		{"word in a list", "size: DN 25\n", "size: DN 25\n        condition: [sound, blisterd]\n", []string{
			`18:28: runs.main.parts[0].condition[1]: "blisterd" is not a word for condition; did you mean blistered? the words are sound, kinked, crushed, cover-damaged, reinforcement-exposed, blistered, soft-spot, leaking, coupling-damaged, coupling-slipped, braid-damaged, cover-pricked`,
		}},
		{"NO is no word", "size: DN 25\n", "size: DN 25\n        electrical: NO\n", []string{
			`18:21: runs.main.parts[0].electrical: "NO" is not a word for electrical; the words are M, Ohm, M/T, Ohm/T, discontinuous, none`,
		}},
	})
}
