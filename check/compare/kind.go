package compare

import (
	"slices"
	"strings"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// The answers to whether the change is a replacement in kind.
const (
	NoChange  = "no change of the design"
	InKind    = "in kind"
	NotInKind = "not in kind"
	NotShown  = "not shown to be in kind"
)

// Kind answers 29 CFR 1910.119(l)(1) as far as the sheets can. The decision is the site's.
type Kind struct {
	Answer   string       `json:"answer"`
	Because  []string     `json:"because"`  // aspects that differ, or values that stand on one sheet only
	Stated   string       `json:"stated"`   // what the new sheet says of itself: yes, no or nothing
	Conflict string       `json:"conflict"` // where the sheet and the comparison disagree
	Basis    report.Basis `json:"basis"`
	Decides  string       `json:"decides"`
}

// The paragraph was read in the yearly edition the rules cite too.
const (
	lawDocument = "29 CFR 1910.119"
	lawEdition  = "CFR 2015 annual edition"
)

func law(clause string) report.Basis {
	return report.Basis{Document: lawDocument, Edition: lawEdition, Clause: clause, Standing: "published"}
}

// kindOf weighs the changes; bare are decisive values of swapped parts that neither sheet states.
func kindOf(changes []Change, bare []string, said *sheet.Change) *Kind {
	k := &Kind{Because: []string{}, Basis: law("(l)(1)"), Decides: "the site decides, by its written procedure; whether the law covers the process depends on its quantities"}
	var differ []string
	open := slices.Clone(bare)
	swapped := false
	for _, c := range changes {
		swapped = swapped || c.Aspect == aIdentity
		switch {
		case !c.Design:
		case c.Open():
			open = append(open, c.about()+" stands on one sheet only")
		case !slices.Contains(differ, c.Aspect):
			differ = append(differ, c.Aspect)
		}
	}
	switch {
	case len(differ) > 0:
		k.Answer, k.Because = NotInKind, differ
	case len(open) > 0:
		k.Answer, k.Because = NotShown, open
	case swapped:
		k.Answer = InKind
	default:
		k.Answer = NoChange
	}
	k.compareWith(said)
	return k
}

// compareWith holds the answer against what the new sheet says of itself.
func (k *Kind) compareWith(said *sheet.Change) {
	switch {
	case said == nil:
		if k.Answer == NotInKind {
			k.Conflict = "the new sheet records no change: write it under change"
		}
	case !said.InKind.Set:
		k.Conflict = "the new sheet does not say whether its change is in kind"
	default:
		k.Stated = said.InKind.Text
		if said.InKind.V && k.Answer != InKind && k.Answer != NoChange {
			k.Conflict = "the new sheet calls the change in kind, but: " + strings.Join(k.Because, ", ")
		}
	}
}

func (c Change) about() string {
	if c.Key == "" {
		return c.Thing
	}
	return c.Key + " of " + c.Thing
}

// swapped says whether another piece stands in the part's place: another id, or another identity read on it.
func swapped(o, n thing) bool {
	was, hadOld := leafAt(o.leaves, "tag")
	now, hasNew := leafAt(n.leaves, "tag")
	return o.label != n.label || hadOld && hasNew && was.norm != now.norm
}

// bare are the values without which nobody can say that a swapped part is like the one before it.
func bare(o, n thing) []string {
	keys, ok := decisive[n.kind]
	if !ok {
		keys = decisive["other"]
	}
	var out []string
	for _, key := range keys {
		_, was := leafAt(o.leaves, key)
		_, now := leafAt(n.leaves, key)
		if !was && !now {
			out = append(out, key+" of "+n.label+" stands on neither sheet")
		}
	}
	return out
}
