package sheet

import (
	"strings"
	"testing"
)

func TestStructure(t *testing.T) {
	checkFaults(t, []faultCase{
		{"anchor and alias", "{fluid: butanone}", "&a {fluid: butanone}\n  pad: *a", []string{
			"3:12: the anchor &a is not read in a sheet; write the values out where they belong",
			"4:8: the alias *a is not read in a sheet; write the values out where they belong",
		}},
		{"merge", "{fluid: butanone}", "&a {fluid: butanone}\n  pad: {<<: *a}", []string{
			"3:12: the anchor &a is not read in a sheet; write the values out where they belong",
			"4:9: the merge key << is not read in a sheet; write the values out where they belong",
		}},
		{"merge among names", "  tank: {}", "  tank: &t {}\n  <<: *t", []string{
			"8:9: the anchor &t is not read in a sheet; write the values out where they belong",
			"9:3: the merge key << is not read in a sheet; write the values out where they belong",
		}},
		{"alias as key", "  tank: {}", "  tank: {}\n  ? *x\n  : {}", []string{
			"9:3: a value cannot start with *; write the value out, or put it in quotes",
		}},
		{"tag", "line: T-1", "line: !!binary aGVsbG8=", []string{
			"1:7: the tag !!binary is not read in a sheet; write the value alone; put text that starts with ! in quotes",
		}},
		{"custom tag", "line: T-1", "line: !pump T-1", []string{
			"1:7: the tag !pump is not read in a sheet; write the value alone; put text that starts with ! in quotes",
		}},
		{"unknown alias", "line: T-1", "line: *T-1", []string{
			"1:1: a value cannot start with *; write the value out, or put it in quotes",
		}},
		{"second document", "line: T-1\n", "line: T-1\n---\n", []string{
			"2:1: a second document starts here; write one sheet a file, without --- between parts of it",
		}},
		{"deep", "line: T-1\n", "line: T-1\nx: " + strings.Repeat("[", 20) + strings.Repeat("]", 20) + "\n", []string{
			"2:1: x: unknown key; " + sheetTakes,
			"2:23: nested more than 20 deep; check the indent",
		}},
		{"alias inside a list", "carries: [product]", "carries: [&p product, *p]", []string{
			"11:15: the anchor &p is not read in a sheet; write the values out where they belong",
			"11:27: the alias *p is not read in a sheet; write the values out where they belong",
		}},
	})
}
