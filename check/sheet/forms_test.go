package sheet

import "testing"

func TestForms(t *testing.T) {
	checkFaults(t, []faultCase{
		{"list as text", "carries: [product]", "carries: product", []string{
			`11:5: runs.main.carries: "product" stands where a list is wanted; write carries: [product]`,
		}},
		{"list empty", "carries: [product]", "carries: []", []string{
			"11:5: runs.main.carries: nothing is listed where a list is wanted; write carries: [product]",
		}},
		{"fluids empty", "fluids:\n  product: {fluid: butanone}", "fluids: {}", []string{
			"2:1: fluids: nothing is listed where a mapping of names is wanted; write fluids: {product: {fluid: butanone}}",
		}},
		{"mapping as list", "{fluid: butanone}", "[butanone]", []string{
			"3:3: fluids.product: a list stands where a mapping is wanted; write product: {fluid: butanone}",
		}},
		{"mapping as text", "{fluid: butanone}", "butanone", []string{
			`3:3: fluids.product: "butanone" stands where a mapping is wanted; write product: {fluid: butanone}`,
		}},
		{"names as list", "  drum:\n    points:\n      bung: {size: DN 25}\n  tank: {}\n", "  - drum\n  - tank\n", []string{
			"4:1: vessels: a list stands where a mapping of names is wanted; write vessels: {day-tank: {kind: tank, volume: 5 m3}}",
		}},
		{"leaf as list", "size: DN 25\n", "size: [DN 25]\n", []string{
			"17:9: runs.main.parts[0].size: a list stands where a single value is wanted; write size: DN 25",
		}},
		{"leaf as mapping", "- id: H1", "- id: {tag: H1}", []string{
			"15:9: runs.main.parts[0].id: a mapping stands where a single value is wanted; write id: H1",
		}},
		{"end as text", "size: DN 25\n", "size: DN 25\n        inlet: flange\n", []string{
			`18:9: runs.main.parts[0].inlet: "flange" stands where a mapping is wanted; write inlet: {standard: flange-en-1092-1, size: DN 25}`,
		}},
		{"sheet as list", base, "- a\n", []string{
			"1:1: a list stands where a mapping is wanted; start from the commented template",
		}},
		{"sheet as text", base, "hello\n", []string{
			`1:1: "hello" stands where a mapping is wanted; start from the commented template`,
		}},
		{"part as text", "- id: H1\n        kind: hose\n        size: DN 25", "- H1", []string{
			`15:9: runs.main.parts[0]: "H1" stands where a mapping is wanted; write {id: H1, kind: hose}`,
		}},
		{"target as list", "to: tank", "to: [tank]", []string{
			"13:5: runs.main.to: a list stands where a mapping is wanted; write to: {vessel: day-tank}",
		}},
		{"kind as list", "kind: hose", "kind: [hose]", []string{
			"16:9: runs.main.parts[0].kind: a list stands where a single value is wanted; write kind: hose",
		}},
		{"seal word", "size: DN 25\n", "inlet: {seal: nothing}\n", []string{
			`17:17: runs.main.parts[0].inlet.seal: "nothing" stands where a mapping, a list or the word none is wanted; write seal: {kind: o-ring, material: FFKM}`,
		}},
		{"seal list of words", "size: DN 25\n", "inlet: {seal: [none]}\n", []string{
			`17:24: runs.main.parts[0].inlet.seal[0]: "none" stands where a mapping is wanted; write {kind: o-ring, material: FFKM}`,
		}},
	})
}
