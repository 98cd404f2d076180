package sheet

import "testing"

func TestReferences(t *testing.T) {
	checkFaults(t, []faultCase{
		{"carries unknown", "carries: [product]", "carries: [prodct]", []string{
			`11:15: runs.main.carries[0]: "prodct" is not described under fluids; did you mean product?`,
		}},
		{"carries far", "carries: [product]", "carries: [steam]", []string{
			`11:15: runs.main.carries[0]: "steam" is not described under fluids; describe it there, or use one of product`,
		}},
		{"vessel unknown", "to: tank", "to: tonk", []string{
			`13:9: runs.main.to.vessel: "tonk" is not described under vessels; did you mean tank?`,
		}},
		{"vessel unknown mapping", "to: tank", "to: {vessel: tonk}", []string{
			`13:18: runs.main.to.vessel: "tonk" is not described under vessels; did you mean tank?`,
		}},
		{"no vessels", "vessels:\n  drum:\n    points:\n      bung: {size: DN 25}\n  tank: {}\n", "", []string{
			`7:22: runs.main.source.vessel: "drum" is not described under vessels; describe it there`,
			`8:9: runs.main.to.vessel: "tank" is not described under vessels; describe it there`,
		}},
		{"point unknown", "outlet: bung", "outlet: bong", []string{
			`12:36: runs.main.source.outlet: "bong" is not described under vessels.drum.points; did you mean bung?`,
		}},
		{"point without vessel", "{vessel: drum, outlet: bung}", "{cylinder: 200 bar(g), outlet: bung}", []string{
			"12:44: runs.main.source.outlet: names a point of no vessel; write the vessel too",
		}},
		{"inlet unknown, no points", "to: tank", "to: {vessel: tank, inlet: top}", []string{
			`13:31: runs.main.to.inlet: "top" is not described under vessels.tank.points; describe it there`,
		}},
		{"two sources", "{vessel: drum, outlet: bung}", "{vessel: drum, cylinder: 200 bar(g)}", []string{
			"12:5: runs.main.source: names more than one of vessel, cylinder and supply; write {vessel: drum}, {cylinder: 200 bar(g)} or {supply: 6 bar(g)}",
		}},
		{"no source", "{vessel: drum, outlet: bung}", "{volume: 50 L}", []string{
			"12:5: runs.main.source: names no vessel, cylinder or supply; write {vessel: drum}, {cylinder: 200 bar(g)} or {supply: 6 bar(g)}",
		}},
		{"source of wrong value", "{vessel: drum, outlet: bung}", "{supply: 5 bar}", []string{
			`12:22: runs.main.source.supply: "5 bar" does not say gauge or absolute: write 5 bar(g) (= 6.0133 bar(a) at sea level) or 5 bar(a) (= 3.9867 bar(g))`,
		}},
		{"target names nothing", "to: tank", "to: {}", []string{
			"13:5: runs.main.to: names neither a vessel nor an end; write to: day-tank, or describe the end",
		}},
		{"id twice", "size: DN 25\n", "size: DN 25\n      - {id: H1, kind: pipe}\n", []string{
			`18:14: runs.main.parts[1].id: "H1" is the id of the part on line 15 too; give each part of the line its own id`,
		}},
		{"nearby vessel", "line: T-1\n", "line: T-1\nnearby: [{vessel: tnak, point: top}]\n", []string{
			`2:19: nearby[0].vessel: "tnak" is not described under vessels; did you mean tank?`,
		}},
		{"nearby point", "line: T-1\n", "line: T-1\nnearby: [{vessel: drum, point: top}]\n", []string{
			`2:32: nearby[0].point: "top" is not described under vessels.drum.points; describe it there, or use one of bung`,
		}},
	})
}
