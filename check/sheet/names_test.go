package sheet

import (
	"strings"
	"testing"
)

func TestNames(t *testing.T) {
	checkFaults(t, []faultCase{
		{"key is a list", "line: T-1\n", "line: T-1\n? [a, b]\n: x\n", []string{
			"2:3: a list or mapping stands where a key is wanted; " + sheetTakes,
		}},
		{"name is a list", "  tank: {}\n", "  tank: {}\n  ? [a, b]\n  : {}\n", []string{
			"9:5: vessels: a list or mapping stands where a name is wanted; write a short name such as day-tank",
		}},
		{"name missing", "  tank: {}\n", "  tank: {}\n  '': {}\n", []string{
			"9:3: vessels: a name is missing before the colon; write a short name such as day-tank",
		}},
		{"name too long", "  tank: {}\n", "  tank: {}\n  " + strings.Repeat("a", 61) + ": {}\n", []string{
			`9:3: vessels: "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa..." is longer than 60 characters; write a short name such as day-tank`,
		}},
		{"name over two lines", "  tank: {}\n", "  tank: {}\n  \"a\\nb\": {}\n", []string{
			`9:3: vessels: "a b" holds line breaks, tabs or hidden characters, or spaces at an end; write a short name such as day-tank`,
		}},
		{"hidden in quotes", "line: T-1", `line: "T\e[31m"`, []string{
			`1:7: line: "T [31m" holds a hidden control character; write plain text`,
		}},
	})
}
