package sheet

import "testing"

func TestBounds(t *testing.T) {
	checkFaults(t, []faultCase{
		{"site order", "line: T-1\n", "line: T-1\nsite: {lowest: 20 °C, highest: 59 °F}\n", []string{
			`2:32: site.highest: "59 °F" is colder than lowest (20 °C); check both`,
		}},
		{"fluid order", "{fluid: butanone}", "{fluid: butanone, temperature: {lowest: 30 °C, normal: 20 °C, highest: 10 °C}}", []string{
			`3:67: fluids.product.temperature.normal: "20 °C" is colder than lowest (30 °C); check both`,
			`3:83: fluids.product.temperature.highest: "10 °C" is colder than normal (20 °C); check both`,
		}},
		{"fluid order without normal", "{fluid: butanone}", "{fluid: butanone, temperature: {lowest: 30 °C, highest: 10 °C}}", []string{
			`3:68: fluids.product.temperature.highest: "10 °C" is colder than lowest (30 °C); check both`,
		}},
		{"part order", "size: DN 25\n", "lowest: 1 °C\n        highest: 0 °C\n", []string{
			`18:18: runs.main.parts[0].highest: "0 °C" is colder than lowest (1 °C); check both`,
		}},
		{"vessel order", "tank: {}", "tank: {lowest: 1 °C, highest: 0 °C}", []string{
			`8:33: vessels.tank.highest: "0 °C" is colder than lowest (1 °C); check both`,
		}},
		{"as_of before", "line: T-1\n", "line: T-1\nas_of: 1989-12-31\n", []string{
			`2:8: as_of: "1989-12-31" is outside 1990 to 2100; check the year`,
		}},
		{"as_of after", "line: T-1\n", "line: T-1\nas_of: 2101-01-01\n", []string{
			`2:8: as_of: "2101-01-01" is outside 1990 to 2100; check the year`,
		}},
		{"as_of month", "line: T-1\n", "line: T-1\nas_of: 2026-11\n", []string{
			`2:8: as_of: "2026-11" does not say the day; write it like 2026-11-25`,
		}},
		{"kdr zero", "tank: {}", "tank: {relief: {set: 1 bar(g), kdr: 0}}", []string{
			`8:39: vessels.tank.relief.kdr: "0" is not above 0 and at most 1; write the certified coefficient, like 0.7`,
		}},
		{"kdr above one", "kind: hose\n        size: DN 25\n", "kind: relief\n        kdr: 1.01\n", []string{
			`17:14: runs.main.parts[0].kdr: "1.01" is not above 0 and at most 1; write the certified coefficient, like 0.7`,
		}},
		{"stages none", "kind: hose\n        size: DN 25\n", "kind: regulator\n        stages: 0\n", []string{
			`17:17: runs.main.parts[0].stages: "0" is outside 1 to 3; count the stages on the regulator's plate`,
		}},
		{"stages many", "kind: hose\n        size: DN 25\n", "kind: regulator\n        stages: 4\n", []string{
			`17:17: runs.main.parts[0].stages: "4" is outside 1 to 3; count the stages on the regulator's plate`,
		}},
	})
}
