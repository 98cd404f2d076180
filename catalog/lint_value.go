package catalog

import (
	"reflect"
	"slices"
	"strconv"
	"strings"
)

// standings are the words a value may carry.
var standings = []Standing{Site, Published, Restated, Computed, Recalled, Practice}

// origin checks the provenance of one value.
func (l *linter) origin(s spot) {
	o := read[Origin](s)
	l.used[o.Source] = true
	switch {
	case o.Standing == "":
		l.fault(s, "no standing: say how the value is known")
	case !slices.Contains(standings, o.Standing):
		l.fault(s, "standing %q; want one of %v", o.Standing, standings)
	case s.file.site:
		l.evidence(s, o)
	case o.Standing == Site:
		l.fault(s, "standing site is for site catalogs, not for the built-in one")
	case o.Source == "" && o.Standing != Practice:
		l.fault(s, "no source: only practice may go without")
	case o.Source != "":
		l.refer(s, Sources, o.Source)
	}
	if !slices.Contains([]string{"", "high", "medium", "low"}, o.Sure) {
		l.fault(s, "sure %q; want high, medium or low", o.Sure)
	}
}

// evidence is what a site value must bring: its source may be any document the site can show.
func (l *linter) evidence(s spot, o Origin) {
	if o.Standing != Site {
		l.fault(s, "standing %s; a value of a site catalog has the standing site", o.Standing)
	}
	if o.Source == "" && o.Note == "" {
		l.fault(s, "no evidence: name the certificate, nameplate or letter in source or note")
	}
}

// bound is what a figure may plausibly be, by the ending of its key. The bounds catch wrong units and
// lost signs, not wrong figures (practice, no source).
type bound struct {
	ending    string
	low, high float64
}

var bounds = []bound{
	{"vacuum_bar", -1.014, 0},
	{"bar", 0, 7000},
	{"_c", -273.15, 2000},
	{"_k", 0, 2300},
	{"length_change_pct", -100, 100},
	{"_pct", 0, 100},
	{"_pa", 0, 1e9},
	{"_mm", 0, 1e5},
	{"_months", 0, 600},
	{"_years", 0, 100},
	{"_ratio", 1, 20},
	{"_g_mol", 1, 2000},
	{"_ps_m", 0, 1e16},
	{"_deg", 0, 90},
}

func (l *linter) plausible(s spot) {
	v, err := strconv.ParseFloat(s.node.Value, 64)
	i := slices.IndexFunc(bounds, func(b bound) bool { return strings.HasSuffix(s.key, b.ending) })
	if err == nil && i >= 0 && (v < bounds[i].low || v > bounds[i].high) {
		l.fault(s, "%s is %v; want %v to %v", s.key, v, bounds[i].low, bounds[i].high)
	}
}

// read decodes the node of a check into its type; the file as a whole has been decoded already.
func read[T any](s spot) T {
	var v T
	_ = s.node.Decode(&v)
	return v
}

// on binds a check to the type it reads.
func on[T any](check func(*linter, spot, T)) func(*linter, spot) {
	return func(l *linter, s spot) { check(l, s, read[T](s)) }
}

// checks are the checks of one type each, beyond those every value gets.
var checks map[reflect.Type]func(*linter, spot)

func init() {
	checks = map[reflect.Type]func(*linter, spot){
		reflect.TypeFor[fluidFile]():    on((*linter).fluid),
		reflect.TypeFor[Row]():          on((*linter).row),
		reflect.TypeFor[Range]():        on((*linter).strength),
		reflect.TypeFor[Equation]():     on((*linter).equation),
		reflect.TypeFor[Bar]():          on((*linter).bar),
		reflect.TypeFor[Outlet]():       on((*linter).outlet),
		reflect.TypeFor[Material]():     on((*linter).material),
		reflect.TypeFor[Layer]():        on((*linter).layer),
		reflect.TypeFor[Derating]():     on((*linter).derating),
		reflect.TypeFor[Span]():         on((*linter).span),
		reflect.TypeFor[EndRating]():    on((*linter).endRating),
		reflect.TypeFor[SealNeed]():     on((*linter).sealNeed),
		reflect.TypeFor[Mate]():         on((*linter).mate),
		reflect.TypeFor[OutletNumber](): on((*linter).outletNumber),
		reflect.TypeFor[Seal]():         on((*linter).seal),
		reflect.TypeFor[Table]():        on((*linter).tableOf),
	}
}
