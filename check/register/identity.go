package register

import (
	"slices"
	"strings"

	"lineworthy/check/sheet"
)

// alike is the name of a hose or a line as it is compared: letters large or small and blanks around or doubled are how
// people write the same name.
func alike(name string) string { return strings.ToUpper(spaced(name)) }

func spaced(name string) string {
	if !strings.ContainsAny(name, " \t\u00a0") {
		return name
	}
	return strings.Join(strings.Fields(name), " ")
}

// nameless are words that people write where a hose bears no identity.
var nameless = []string{"-", "--", "?", "N/A", "N.A.", "NA", "NIL", "NONE", "NO TAG", "NOT TAGGED", "TBA", "TBC", "TBD", "UNKNOWN", "UNTAGGED", "X", "XXX"}

// identity of a hose is the tag read on it, else the one the line is approved with; empty when it bears none.
func identity(p *sheet.Part) string {
	for _, name := range []string{p.Tag.V, p.Assigned.V} {
		if name = spaced(name); name != "" && !slices.Contains(nameless, strings.ToUpper(name)) {
			return name
		}
	}
	return ""
}
