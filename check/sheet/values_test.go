package sheet

import "testing"

func TestValues(t *testing.T) {
	checkFaults(t, []faultCase{
		{"bool", "size: DN 25\n", "bonded: on\n", []string{
			`17:17: runs.main.parts[0].bonded: "on" is neither yes nor no; write yes or no, in small letters`,
		}},
		{"bool capitals", "size: DN 25\n", "bonded: NO\n", []string{
			`17:17: runs.main.parts[0].bonded: "NO" is neither yes nor no; write yes or no, in small letters`,
		}},
		{"int octal", "kind: hose\n        size: DN 25\n", "kind: regulator\n        stages: 012\n", []string{
			`17:17: runs.main.parts[0].stages: "012" is not a plain whole number; write it like 2`,
		}},
		{"int exponent", "kind: hose\n        size: DN 25\n", "kind: regulator\n        stages: 1e3\n", []string{
			`17:17: runs.main.parts[0].stages: "1e3" is not a plain whole number; write it like 2`,
		}},
		{"int fraction", "kind: hose\n        size: DN 25\n", "kind: regulator\n        stages: 1.5\n", []string{
			`17:17: runs.main.parts[0].stages: "1.5" is not a plain whole number; write it like 2`,
		}},
		{"float comma", "kind: hose\n        size: DN 25\n", "kind: relief\n        kdr: 0,7\n", []string{
			`17:14: runs.main.parts[0].kdr: "0,7" is not a plain number; write it like 0.7`,
		}},
		{"float exponent", "tank: {}", "tank: {relief: {set: 1 bar(g), kdr: 7e-1}}", []string{
			`8:39: vessels.tank.relief.kdr: "7e-1" is not a plain number; write it like 0.7`,
		}},
	})
}
