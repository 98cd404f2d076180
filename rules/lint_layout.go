package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// areas are the permitted first folders of a rule.
var areas = []string{
	"material", "temperature", "pressure", "connection", "seal", "static", "marking", "identity", "inspection",
	"record", "service", "isolation", "relief", "expansion", "surge", "flow",
}

// layout checks the outside of the module: its package, imports and rule names.
func (l *lint) layout() {
	want := refOf(l.id).String()
	if got := l.mod.Package.Path.String(); got != want {
		l.add(l.mod.Package.Location.Row, "package is %s: the folder wants %s", got[5:], want[5:])
	}
	area, _, _ := strings.Cut(l.id, "/")
	if !slices.Contains(areas, area) && !l.ofSite() {
		l.add(0, "%q is not an area: use one of %s", area, strings.Join(areas, ", "))
	}
	for _, i := range l.mod.Imports {
		l.add(i.Location.Row, "import %s: a rule reads input in its own bodies and nothing else", i.Path)
	}
	reports := 0
	for _, r := range l.mod.Rules {
		if l.named(r) {
			reports++
		}
	}
	if reports == 0 {
		l.add(0, "no rule report: write report contains {...} if {...}")
	}
}

// named checks one rule's name, and says whether it is a report.
func (l *lint) named(r *ast.Rule) bool {
	name := r.Head.Name.String()
	if ref := r.Head.Ref(); name == "" && len(ref) > 0 {
		name = ref[0].String()
	}
	if r.Default {
		l.add(r.Location.Row, "default %s: what is not known stays undefined, needs speaks for it", name)
	}
	switch {
	case name == "report" && r.Head.RuleKind() == ast.MultiValue && len(r.Head.Ref()) == 1:
		return true
	case name == "report":
		l.add(r.Location.Row, "report is a set: write report contains {...} if {...}")
	case !strings.HasPrefix(name, "_"):
		l.add(r.Location.Row, "%s is public: only report is, name it _%s", name, name)
	}
	return false
}
