package sheet

import "testing"

func TestMissing(t *testing.T) {
	checkFaults(t, []faultCase{
		{"part id missing", "- id: H1\n        kind: hose", "- kind: hose", []string{
			"15:9: runs.main.parts[0].id: missing; write id: H1",
		}},
		{"kind missing", "        kind: hose\n", "", []string{
			"15:9: runs.main.parts[0].kind: missing; write kind: hose",
		}},
		{"line missing", "line: T-1\n", "", []string{
			"1:1: line: missing; write line: KD-104",
		}},
		{"fluids missing", "fluids:\n  product: {fluid: butanone}\n", "", []string{
			"1:1: fluids: missing; write fluids: {product: {fluid: butanone}}",
		}},
		{"fluid missing", "{fluid: butanone}", "{role: pad}", []string{
			"3:3: fluids.product.fluid: missing; write fluid: butanone",
		}},
		{"source missing", "    source: {vessel: drum, outlet: bung}\n", "", []string{
			"10:3: runs.main.source: missing; write source: {vessel: drum}",
		}},
		{"to missing", "    to: tank\n", "", []string{
			"10:3: runs.main.to: missing; write to: {vessel: day-tank}",
		}},
		{"carries missing", "    carries: [product]\n", "", []string{
			"10:3: runs.main.carries: missing; write carries: [product]",
		}},
		{"parts missing", "    parts:\n      - id: H1\n        kind: hose\n        size: DN 25\n", "", []string{
			"10:3: runs.main.parts: missing; write parts: [{id: H1, kind: hose}]",
		}},
		{"nearby incomplete", "line: T-1\n", "line: T-1\nnearby: [{vessel: drum}]\n", []string{
			"2:10: nearby[0].point: missing; write point: inlet",
		}},
		{"relief set missing", "tank: {}", "tank: {relief: {kdr: 0.7}}", []string{
			"8:10: vessels.tank.relief.set: missing; write set: 6 bar(g)",
		}},
		{"change what missing", "line: T-1\n", "line: T-1\nchange: {in_kind: yes}\n", []string{
			"2:1: change.what: missing; write what: gasket changed from FKM to FFKM",
		}},
		{"evidence incomplete", "line: T-1\n", "line: T-1\nevidence:\n  - material: PTFE\n", []string{
			"3:5: evidence[0].fluid: missing; write fluid: butanone",
			"3:5: evidence[0].rating: missing; write rating: suitable",
			"3:5: evidence[0].highest: missing; write highest: 20 °C",
			"3:5: evidence[0].document: missing; write document: supplier letter of 2026-03-02",
		}},
		{"seal without kind", "size: DN 25\n", "inlet: {seal: {material: PTFE}}\n", []string{
			"17:17: runs.main.parts[0].inlet.seal.kind: missing; write kind: o-ring",
		}},
		{"seal list second", "size: DN 25\n", "inlet: {seal: [{kind: o-ring}, {material: PTFE}]}\n", []string{
			"17:40: runs.main.parts[0].inlet.seal[1].kind: missing; write kind: o-ring",
		}},
	})
}
