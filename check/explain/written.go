package explain

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"lineworthy/check/report"
	"lineworthy/rules"
)

// Written is one value of the sheet and where it stands.
type Written struct {
	Key      string `json:"key"`
	Text     string `json:"text"`
	Position string `json:"position"`
}

func (in Input) at(line int) string { return fmt.Sprintf("%s:%d", in.Verdict.Sheet, line) }

// keysOf are the keys a rule's answer comes from, by what it judges; those of the things it is about come first, the rest
// are looked up on the whole sheet.
var keysOf = map[string]struct{ own, line []string }{
	"capacities": {[]string{"rated", "class", "edition", "size", "evidence", "standard", "liner", "reinforcement", "range"},
		[]string{"cylinder", "supply", "head", "set", "lock_up", "shutoff", "highest", "filled", "volume", "vent", "area", "kdr", "flow_coefficient"}},
	"limits":       {[]string{"lowest", "highest", "class", "liner", "reinforcement", "material", "standard", "kind"}, []string{"lowest", "highest"}},
	"pairs":        {[]string{"material", "wetted", "liner", "reinforcement", "class", "kind"}, []string{"fluid", "concentration", "highest"}},
	"bars":         {[]string{"material", "wetted", "liner", "reinforcement"}, []string{"fluid", "regimes"}},
	"hoses":        {[]string{"class", "edition", "size", "rated", "burst", "evidence"}, []string{"fluid"}},
	"services":     {[]string{"class", "specified_for"}, []string{"fluid", "concentration"}},
	"joints":       {[]string{"standard", "size", "class", "number", "gender", "hand", "facing", "locked", "seal", "kind", "bolts"}, nil},
	"seals":        {[]string{"kind", "size", "material", "standard", "rated", "evidence"}, []string{"set", "supply", "highest"}},
	"points":       {[]string{"standard", "size", "gender", "keyed", "padlocked", "marked", "open", "entry", "fluid"}, []string{"vessel", "point", "distance", "fluid"}},
	"line":         {nil, []string{"regimes", "remote_stop", "automatic_stop", "attended", "stop_tested", "record", "what", "in_kind", "authorised", "until", "basis", "effects", "procedures", "trained", "fluid"}},
	"parts":        {[]string{"kind", "material", "bonded", "oxygen_clean", "acts_on"}, []string{"fluid", "open"}},
	"regulators":   {[]string{"set", "inlet_rated", "stages", "lock_up"}, []string{"cylinder", "supply"}},
	"meetings":     {nil, []string{"fluid", "role", "concentration"}},
	"fluids":       {[]string{"fluid", "role", "dryness", "oil_free", "concentration"}, []string{"cylinder", "supply", "set"}},
	"sections":     {[]string{"kind", "rated", "closing", "set"}, []string{"drained", "lowest", "highest", "fluid"}},
	"reliefs":      {[]string{"set", "area", "kdr", "isolatable", "tested", "test_interval", "rated"}, []string{"rated"}},
	"surges":       {[]string{"closing", "acts_on", "rated"}, []string{"flow", "length", "size", "fluid"}},
	"flows":        {nil, []string{"flow", "quantity", "size", "length", "fluid", "conductivity", "volume"}},
	"vessels":      {[]string{"kind", "volume", "filled", "rated", "test_pressure", "discharge_limit", "vent", "vacuum", "bonded", "highest", "set"}, []string{"quantity", "set", "fluid"}},
	"gauges":       {[]string{"range"}, []string{"set", "cylinder", "supply"}},
	"labels":       {[]string{"marked", "keyed", "tag", "assigned", "standard", "size", "gender"}, []string{"fluid", "vessel", "point"}},
	"closures":     {[]string{"closed_by", "form", "rated"}, []string{"vent", "fluid", "set"}},
	"tails":        {[]string{"tail", "size", "outside", "clamp_least", "clamp_most", "retention"}, nil},
	"excess_flows": {[]string{"closing_flow", "broken_flow", "bypass", "acts_on", "size", "evidence"}, []string{"flow", "length", "size", "fluid"}},
	"releases":     {[]string{"size", "restraint"}, []string{"room", "volume", "cylinder", "fluid"}},
	"tests":        {nil, []string{"test", "pressure", "isolated", "relief", "distance", "dried", "fluid", "dryness", "lowest", "length", "size", "volume"}},
	"test_items":   {[]string{"rated", "class", "size", "set", "range", "test_pressure", "evidence"}, []string{"pressure", "isolated", "fluid"}},
	"steams":       {nil, []string{"supply", "vapour_pressure", "highest", "fluid"}},
}

// relevant are the values of the sheet that a finding comes from.
func (in Input) relevant(f report.Finding, r rules.Rule) []Written {
	keys := keysOf[r.Subject]
	own := append(slices.Clone(keys.own), asked(r)...)
	about := in.about(f)
	out := []Written{}
	for _, w := range in.Sheet.Values() {
		mine := slices.ContainsFunc(about, func(t thing) bool { return strings.HasPrefix(w.Path, t.path+".") })
		if mine && slices.Contains(own, last(w.Path)) && side(f, r, w.Path) || !inThing(w.Path) && slices.Contains(keys.line, last(w.Path)) ||
			mine && slices.Contains(keys.line, last(w.Path)) || drives(w.Path) && slices.Contains(keys.line, last(w.Path)) {
			out = append(out, Written{in.key(w.Path), w.Text, in.at(w.Pos.Line)})
		}
	}
	return out
}

// key is a path with the id of its part instead of the place in a list.
func (in Input) key(path string) string {
	for _, t := range in.things() {
		if rest, ok := strings.CutPrefix(path, t.path+"."); ok {
			return t.name + " " + rest
		}
	}
	return path
}

// drives says whether a path is a source, a device or a fluid of the line, which work on every part.
func drives(path string) bool {
	return strings.HasPrefix(path, "fluids.") || strings.HasSuffix(path, ".set") || strings.HasSuffix(path, ".lock_up") || strings.HasSuffix(path, ".shutoff")
}

func inThing(path string) bool {
	return strings.Contains(path, ".parts[") || strings.HasPrefix(path, "vessels.") || strings.HasPrefix(path, "fluids.")
}

// about are the parts, vessels and fluids that a finding names.
func (in Input) about(f report.Finding) []thing {
	text := f.Subject + " " + f.Part + " " + f.Words["a"] + " " + f.Words["b"] + " " + f.Words["hose"] + " " + f.Words["vessel"]
	return slices.DeleteFunc(in.things(), func(t thing) bool { return !names(text, t.name) })
}

// side keeps the values of another end of a part out: a finding about the inlet does not come from the outlet, and one
// about a joint comes from its two ends alone.
func side(f report.Finding, r rules.Rule, path string) bool {
	words := strings.ReplaceAll(f.Subject, ".", " ")
	for _, end := range []string{"inlet", "outlet", "mount"} {
		if strings.Contains(path, ".parts[") && strings.Contains(path, "."+end+".") {
			return names(words, end)
		}
	}
	if _, rest, ok := strings.Cut(path, ".points."); ok {
		point, _, _ := strings.Cut(rest, ".")
		return r.Subject != "joints" && r.Subject != "seals" || names(words, point)
	}
	return r.Subject != "joints" && r.Subject != "seals"
}

func last(path string) string {
	path = path[strings.LastIndexByte(path, '.')+1:]
	key, _, _ := strings.Cut(path, "[")
	return key
}

var pathIn = regexp.MustCompile(`^(?:parts|fluids|points|vessels|nearby|inlet|outlet|safeguards|change|layers|site)\.[*a-z_.]+`)

// asked are the keys that the rule's questions name.
func asked(r rules.Rule) []string {
	var out []string
	for _, n := range r.Asks() {
		if path := pathIn.FindString(n.Ask); path != "" {
			out = append(out, last(path))
		}
	}
	return out
}

func (in Input) writtenBelow(t thing) []Written {
	out := []Written{}
	for _, w := range in.Sheet.Values() {
		if rest, ok := strings.CutPrefix(w.Path, t.path+"."); ok {
			out = append(out, Written{rest, w.Text, in.at(w.Pos.Line)})
		}
	}
	return out
}
