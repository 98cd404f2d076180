package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// A long file is told in the same words, at the line of the slip and not at the start of its block.
func TestSyntaxFarDown(t *testing.T) {
	remarks := strings.Repeat("# remark\n", 1500)
	for with, want := range map[string]string{
		"    to: @tank": "1513:5: a value cannot start with this sign",
		"   to: tank":   "1513:4: the indent does not fit the lines above",
	} {
		problems := faults(t, []byte(remarks+string(broken(t, "    to: tank", with))))
		assert.Contains(t, problems.Error(), "t.yaml:"+want)
	}
}

func TestSyntax(t *testing.T) {
	checkFaults(t, []faultCase{
		{"tab", "  tank: {}", "\ttank: {}", []string{
			"8:1: a tab is used to indent; indent with spaces",
		}},
		{"tab before key", "    to: tank", "    \tto: tank", []string{
			"13:5: a tab is used to indent; indent with spaces",
		}},
		{"colon in text", "line: T-1", "line: T-1: new", []string{
			"1:1: a colon that cannot stand here; see that the line above has its colon, line up the keys of one block, and put text that holds a colon in quotes",
		}},
		{"bracket open", "carries: [product]", "carries: [product", []string{
			"11:5: a list or mapping in brackets is not closed, or a comma is missing; check the brackets and commas",
		}},
		{"brace open", "{vessel: drum, outlet: bung}", "{vessel: drum, outlet: bung", []string{
			"12:5: a list or mapping in brackets is not closed, or a comma is missing; check the brackets and commas",
		}},
		{"quote open", "line: T-1", `line: "T-1`, []string{
			"1:1: a quote that is opened here is not closed; close the quote",
		}},
		{"indent", "    to: tank", "   to: tank", []string{
			"13:4: the indent does not fit the lines above, or a quote or bracket is out of place; line up the keys of one block with spaces",
		}},
		{"dash", "        kind: hose", "      kind: hose", []string{
			"16:7: the indent does not fit the list above; line up the dashes of one list",
		}},
		{"sign", "line: T-1", "line: @T-1", []string{
			"1:1: a value cannot start with this sign; put the value in quotes, and indent with spaces",
		}},
		{"percent", "line: T-1", "line: %T-1", []string{
			"1:1: a value cannot start with this sign; put the value in quotes, and indent with spaces",
		}},
		{"no colon", "    to: tank\n", "    to tank\n", []string{
			"13:5: a key without its colon; write key: value",
		}},
		{"no colon with next", "    carries: [product]\n", "    carries [product]\n", []string{
			"12:5: a colon that cannot stand here; see that the line above has its colon, line up the keys of one block, and put text that holds a colon in quotes",
		}},
		{"block scalar bad", "line: T-1\n", "title: |9x\n", []string{
			"1:1: not readable as YAML: did not find expected comment or line break; check the indent, colons, quotes and brackets",
		}},
	})
}
