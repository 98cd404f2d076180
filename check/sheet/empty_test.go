package sheet

import "testing"

func TestEmpty(t *testing.T) {
	checkFaults(t, []faultCase{
		{"empty value", "size: DN 25\n", "size:\n", []string{
			"17:9: runs.main.parts[0].size: nothing written after size; leave the key out if it is not known",
		}},
		{"empty value null", "size: DN 25\n", "size: ~\n", []string{
			"17:9: runs.main.parts[0].size: nothing written after size; leave the key out if it is not known",
		}},
		{"empty quotes", "size: DN 25\n", "size: ''\n", []string{
			"17:9: runs.main.parts[0].size: nothing written after size; leave the key out if it is not known",
		}},
		{"empty mapping key", "vessels:\n  drum:\n    points:\n      bung: {size: DN 25}\n  tank: {}", "vessels:", []string{
			"4:1: vessels: nothing written after vessels; leave the key out if it is not known",
		}},
		{"empty list item", "carries: [product]", "carries:\n      -", []string{
			"12:8: runs.main.carries[0]: nothing written after carries; leave the key out if it is not known",
		}},
		{"empty root", base, "---\n", []string{
			"1:1: nothing is written in the file; start from the commented template",
		}},
		{"required empty", "line: T-1", "line:", []string{
			"1:1: line: nothing written after line; write line: KD-104",
		}},
		{"shorthand empty", "to: tank", "to:", []string{
			"13:5: runs.main.to: nothing written after to; write to: {vessel: day-tank}",
		}},
		{"seal item empty", "size: DN 25\n", "inlet:\n          seal:\n            - kind: o-ring\n            -\n", []string{
			"20:14: runs.main.parts[0].inlet.seal[1]: nothing written after seal; leave the key out if it is not known",
		}},
		{"bang", "T-1", "!", []string{
			"1:1: line: nothing written after line; write line: KD-104",
		}},
	})
}
