package check

import (
	"fmt"
	"maps"
	"math"
	"regexp"
	"slices"
	"strings"
	"time"

	"lineworthy/check/decide"
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
	"lineworthy/rules"
)

// printer turns the integers of a finding into the sheet's own units and words.
type printer struct {
	sys units.System
	at  map[string]sheet.Pos
}

func (p *printer) units() report.Units {
	return report.Units{Pressure: string(p.sys.Pressure), Temperature: string(p.sys.Temperature), Length: string(p.sys.Length)}
}

// gap is one named gap in a rule's message.
var gap = regexp.MustCompile(`\{([a-z0-9_]+)\}`)

func (p *printer) finding(x decide.Finding, r rules.Rule) report.Finding {
	out := report.Finding{
		Rule: r.ID, Severity: r.Severity, Title: r.Title, Subject: x.Subject, Part: x.Part, Case: words(x.Case), Action: r.Action,
		Numbers: x.Numbers, Words: x.Words, Basis: []report.Basis{}, Message: p.message(r.Message, x),
	}
	for _, b := range r.Basis {
		out.Basis = append(out.Basis, report.Basis{Document: b.Document, Edition: b.Edition, Clause: b.Clause, Standing: b.Standing})
	}
	p.compare(&out, x)
	if at, ok := p.place(x); ok {
		out.Position = &report.Position{Line: at.Line, Col: at.Col}
	}
	return out
}

func (p *printer) message(text string, x decide.Finding) string {
	return gap.ReplaceAllStringFunc(text, func(m string) string {
		key := m[1 : len(m)-1]
		switch key {
		case "part":
			return x.Part
		case "case":
			return words(x.Case)
		case "subject":
			return x.Subject
		}
		if n, ok := x.Numbers[key]; ok {
			return p.number(key, n)
		}
		return x.Words[key]
	})
}

// caseWords are the cases as a technician would say them.
var caseWords = map[string]string{
	"duty":                  "duty",
	"as-filled":             "the cylinder as filled",
	"lock-up":               "the regulator with the flow stopped",
	"regulator-failed-open": "a regulator stuck open",
	"vapour-pressure":       "the vapour pressure when hot",
	"pump-shut-in":          "the pump against a closed outlet",
	"heated-vessel":         "the vessel shut in and warmed",
	"steam-out":             "the steam that cleans the line",
	"pressure-test":         "the pressure test",
}

// words turns a case name such as regulator-failed-open into words.
func words(s string) string {
	if w, ok := caseWords[s]; ok {
		return w
	}
	return strings.ReplaceAll(s, "-", " ")
}

// number prints one integer by the unit in its name.
func (p *printer) number(key string, n int64) string {
	switch {
	case strings.HasSuffix(key, "_kpa"):
		return p.pressure(units.GaugePressure(n * 1000))
	case strings.HasSuffix(key, "_ck"):
		return p.sys.Degrees(units.Temperature(float64(n) / 100))
	case strings.HasSuffix(key, "_mm"):
		return p.sys.Distance(units.Length(float64(n) / 1000))
	case strings.HasSuffix(key, "_days"):
		return plural(int(n), "day", "days")
	case strings.HasSuffix(key, "_day"):
		return time.Unix(n*86400, 0).UTC().Format(time.DateOnly)
	case strings.HasSuffix(key, "_ratio_permille"):
		return fmt.Sprintf("%.4g", float64(n)/1000)
	case strings.HasSuffix(key, "_permille"):
		return fmt.Sprintf("%.4g %%", float64(n)/10)
	case strings.HasSuffix(key, "_ohm"):
		return fmt.Sprintf("%d ohm", n)
	case strings.HasSuffix(key, "_mmps"):
		return fmt.Sprintf("%.3g m/s", float64(n)/1000)
	case strings.HasSuffix(key, "_mm2ps"):
		return fmt.Sprintf("%.3g m2/s", float64(n)/1e6)
	case strings.HasSuffix(key, "_um"):
		return fmt.Sprintf("%.4g mm", float64(n)/1000)
	case strings.HasSuffix(key, "_mlps"):
		return flowText(float64(n) * 3600 / 1e6)
	case strings.HasSuffix(key, "_kpac"):
		return fmt.Sprintf("%.4g bar °C", float64(n)/100)
	case strings.HasSuffix(key, "_ms"):
		return fmt.Sprintf("%.3g s", float64(n)/1000)
	case strings.HasSuffix(key, "_minutes"):
		return fmt.Sprintf("%d min", n)
	case strings.HasSuffix(key, "_n"):
		return fmt.Sprintf("%d N", n)
	}
	return fmt.Sprint(n)
}

// flowText has three figures, and none of them in powers of ten.
func flowText(m3ph float64) string {
	if math.Abs(m3ph) >= 1000 {
		return fmt.Sprintf("%.0f m3/h", m3ph)
	}
	return fmt.Sprintf("%.3g m3/h", m3ph)
}

// pressure prints whole psi from ten on: a kilopascal is a seventh of a psi, so more figures would be false ones.
func (p *printer) pressure(g units.GaugePressure) string {
	unit := string(p.sys.Pressure)
	psi, err := g.In(p.sys.Pressure)
	if !strings.HasPrefix(unit, "psi") || err != nil || math.Abs(psi) < 10 {
		return p.sys.Gauge(g)
	}
	return fmt.Sprintf("%.0f %s", psi, unit)
}

// compare fills need, have and margin from the pair of numbers a rule reports.
func (p *printer) compare(out *report.Finding, x decide.Finding) {
	for _, key := range slices.Sorted(maps.Keys(x.Numbers)) {
		have := x.Numbers[key]
		unit, ok := strings.CutPrefix(key, "have_")
		need, both := x.Numbers["need_"+unit]
		if !ok || !both {
			continue
		}
		out.Have, out.Need = p.number(key, have), p.number("need_"+unit, need)
		out.Margin = p.margin(unit, -abs(have-need)) // a finding is on the wrong side of its limit, whichever side that is
	}
}

func (p *printer) margin(unit string, n int64) string {
	switch unit {
	case "kpa":
		return signed(n, p.sys.Difference(units.PressureDifference(n*1000)))
	case "ck":
		return signed(n, p.sys.Step(units.TemperatureDifference(float64(n)/100)))
	}
	return signed(n, p.number("have_"+unit, n))
}

func abs(n int64) int64 { return max(n, -n) }

func signed(n int64, s string) string {
	if n > 0 {
		return "+" + s
	}
	return s
}

func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

func (p *printer) cases(f *facts.Facts) []report.Case {
	out := []report.Case{}
	for _, c := range f.Cases {
		rc := report.Case{Run: c.Run, From: c.Part, Case: words(c.Case), Cause: c.Cause, Pressure: "not known", KPa: c.KPa.V}
		if c.KPa.Known {
			rc.Pressure = p.number("_kpa", c.KPa.V)
		}
		if c.TempCK.Known {
			rc.Temperature = p.number("_ck", c.TempCK.V)
		}
		out = append(out, rc)
	}
	return out
}

// governing is the item with the least to spare of those whose strength and demand are both known.
func (p *printer) governing(f *facts.Facts) *report.Governing {
	var worst *facts.Capacity
	for i := range f.Capacities {
		c := &f.Capacities[i]
		if !c.RatedKPa.Known || !c.DemandKPa.Known || c.What == "outlet class" {
			continue // a cylinder is as a rule filled to the very class of its outlet
		}
		if worst == nil || c.RatedKPa.V-c.DemandKPa.V < worst.RatedKPa.V-worst.DemandKPa.V {
			worst = c
		}
	}
	if worst == nil {
		return nil
	}
	return &report.Governing{
		Part: worst.Part, What: worst.What, Case: words(worst.Case), HaveKPa: worst.RatedKPa.V, NeedKPa: worst.DemandKPa.V,
		Have: p.number("_kpa", worst.RatedKPa.V), Need: p.number("_kpa", worst.DemandKPa.V),
		Margin: p.margin("kpa", worst.RatedKPa.V-worst.DemandKPa.V),
	}
}
