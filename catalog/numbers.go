package catalog

import (
	"regexp"
	"slices"
	"strings"
)

var (
	// glued is a UN number typed without its space.
	glued = regexp.MustCompile(`^un(\d{4})$`)
	// gluedStandard is the number of a standard typed without its space, like EN12115.
	gluedStandard = regexp.MustCompile(`^(en|iso|din|sae|astm|asme|bs|jis)(\d)`)
	// bareNumber is a normalised CAS or UN number, whole or in part.
	bareNumber = regexp.MustCompile(`^(un-)?[\d-]*$`)
)

// collective are UN numbers that stand for many substances, "not otherwise specified". None of them names a
// fluid, even if the catalog happens to hold only one that travels under it.
// UN Model Regulations, Dangerous Goods List; recalled.
var collective = []string{"1078", "1224", "1268", "1719", "1760", "1953", "1954", "1955", "1956", "1964", "1965", "1986", "1987", "1988",
	"1989", "1992", "1993", "2319", "2733", "2734", "2735", "2810", "2920", "2922", "2924", "2927", "2929", "3077", "3082", "3156", "3157",
	"3160", "3161", "3162", "3163", "3256", "3257", "3264", "3265", "3266", "3267", "3271", "3272", "3286", "3287", "3289", "3295"}

// numbers returns the CAS and UN numbers by which a fluid may be found, as people type them.
func numbers(f *Fluid) []string {
	var found []string
	if f.CAS != nil {
		found = append(found, separate(f.CAS.Value)...)
	}
	if f.UN != nil {
		for _, un := range separate(f.UN.Value) {
			if un = strings.TrimSpace(strings.TrimPrefix(un, "UN")); !slices.Contains(collective, un) {
				found = append(found, "UN "+un)
			}
		}
	}
	return found
}

func separate(text string) []string {
	return strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(",;/", r) })
}
