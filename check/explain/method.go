package explain

import (
	"slices"
	"strings"

	"lineworthy/check/report"
	"lineworthy/rules"
)

// Method is how a number was worked out, and on whose word.
type Method struct {
	How      string `json:"how"`
	Source   string `json:"source"`
	Standing string `json:"standing"`
}

// byCase says how the pressure of a case is worked out, by the words a verdict uses for it.
var byCase = map[string]Method{
	"duty":                                {"the set pressure or the supply, and the height of the liquid above: density times gravity times height", "hydrostatics", "computed"},
	"the regulator with the flow stopped": {"the set pressure and its rise at no flow; 30 % where the sheet states none", "ISO 2503", "recalled"},
	"a regulator stuck open":              {"the full pressure before the regulator, or what a relief device behind it holds it to: flow through the stuck valve against the relief capacity", "IEC 60534-2-1:2011 and API 520-1", "restated"},
	"the vapour pressure when hot":        {"the vapour-pressure curve of the fluid at the hottest the line can get", "the curve in the catalog, see its row", "restated"},
	"the pump against a closed outlet":    {"what stands before the pump and its highest pressure with the outlet closed, from its data sheet", "the pump's data sheet", "stated"},
	"the steam that cleans the line":      {"the saturation line of water: the pressure of the supply gives the heat, or the heat the pressure", "IAPWS-IF97 region 4", "recalled"},
	"the pressure test":                   {"the test pressure of the sheet, by itself: nothing of the transfer is added", "the sheet", "stated"},
	"the vessel shut in and warmed":       {"the pad squeezed by the liquid that expands, its own warming and the vapour, in a rigid shell", "Dalton's law", "computed"},
}

// bySubject says how what a rule looks at is worked out.
var bySubject = map[string]Method{
	"capacities":   {"what each thing holds at the hottest temperature, less what can reach it; the part with the least to spare governs", "SAE J517 and ISO 18752, scope", "published"},
	"limits":       {"the permitted range of the class, part or material against the coldest and hottest of fluid and place", "comparison", "computed"},
	"pairs":        {"of all rows for this strength and temperature the worst counts; a row for hotter service is no help", "comparison", "computed"},
	"bars":         {"what the law names is held against what the material contains", "comparison", "computed"},
	"hoses":        {"what is stated of the hose against what is asked of it; days are counted to the day the line is judged for", "comparison", "computed"},
	"services":     {"the words for the fluid's service against those its class is and is not for", "comparison", "computed"},
	"joints":       {"the two ends are looked up as a pair, then size, gender, hand, class and facing are compared", "comparison", "computed"},
	"seals":        {"the kinds the connection takes against the kind in the joint", "comparison", "computed"},
	"sections":     {"pressure of liquid shut in full that warms: its expansion over its compressibility and the give of what holds it", "API 521 (ISO 23251) 5.14.4, 5th ed. 2007", "published"},
	"surges":       {"rise at a valve that closes: density times wave speed times velocity, less for a slow closure", "Wylie and Streeter, Fluid Transients", "recalled"},
	"reliefs":      {"the set pressure and its accumulation against the weakest part it protects", "ASME Section VIII Div. 1 UG-125(c), 1992 text", "published"},
	"flows":        {"velocity in the narrowest bore; loss by Darcy and Weisbach with the friction factor of Colebrook", "J. Inst. Civ. Eng. 11 (1939) 133", "restated"},
	"labels":       {"case, blanks and punctuation left out, the two are compared character by character", "practice", "practice"},
	"closures":     {"what closes the end against what can push on it", "comparison", "computed"},
	"tails":        {"sizes are read as sizes of hose, 2 in as 51 mm, and compared", "ISO 1307", "restated"},
	"excess_flows": {"the flow that spends the whole duty pressure over the parts up to the end of the last hose, by Darcy and Weisbach, for a liquid that does not boil in the air; otherwise as stated", "J. Inst. Civ. Eng. 11 (1939) 133", "restated"},
	"releases":     {"oxygen of the room after the gas is let out: 20.95 % times the air left over", "guidance on inert gases", "published"},
	"vessels":      {"level, pad and expansion of the liquid against what the vessel is rated and allowed for", "comparison", "computed"},
	"points":       {"coupling, label, lock and contents of every point the same hose can reach", "comparison", "computed"},
	"meetings":     {"the reaction groups of the two fluids are looked up as a pair", "comparison", "computed"},
	"gauges":       {"the duty pressure as a share of the full scale", "comparison", "computed"},
	"line":         {"what the sheet says of the line as a whole against what the fluids it carries ask for", "comparison", "computed"},
	"parts":        {"what is stated of the part against what the fluid asks for", "comparison", "computed"},
	"fluids":       {"what the fluid is and does on this line against what it allows", "comparison", "computed"},
	"values":       {"how each value is known", "comparison", "computed"},
	"regulators":   {"the pressure before the regulator against its rated inlet pressure", "comparison", "computed"},
	"tests":        {"the test of the sheet against what its medium stores, freezes at and leaves behind", "ASME PCC-2:2008 Article 5.1", "published"},
	"test_items":   {"what each thing is rated for, times what a test may add to it, against the test pressure", "ASME B31.3 345.4.2 and 345.5, RMA IP-2 chapter 9", "recalled"},
	"steams":       {"the saturation line of water at the pressure of the supply against the heat the sheet states", "IAPWS-IF97 region 4", "recalled"},
}

// methods are those behind the case of a finding and behind what its rule looks at.
func (in Input) methods(f report.Finding, r rules.Rule) []Method {
	out := []Method{}
	if m, ok := byCase[f.Case]; ok {
		if cause := in.cause(f); cause != "" {
			m.How = cause + ": " + m.How
		}
		out = append(out, m)
	}
	if f.Case == "the vapour pressure when hot" {
		out = append(out, in.curves()...)
	}
	if m, ok := bySubject[r.Subject]; ok {
		out = append(out, m)
	}
	return out
}

// cause is what brings the case about, as the verdict says it of the run the part is in.
func (in Input) cause(f report.Finding) string {
	for _, c := range in.Verdict.Cases {
		if c.Case == f.Case && (f.Numbers["need_kpa"] == 0 || c.KPa == f.Numbers["need_kpa"]) {
			return c.Cause
		}
	}
	for _, c := range in.Verdict.Cases {
		if c.Case == f.Case {
			return c.Cause
		}
	}
	return ""
}

// curves are the vapour-pressure curves of the line's fluids.
func (in Input) curves() []Method {
	var out []Method
	for _, fl := range in.Facts.Fluids {
		cat, err := in.Catalog.Fluid(fl.Fluid)
		if err != nil || cat.VapourP == nil || !slices.Contains([]string{"liquid", "liquefied-gas"}, fl.Form) {
			continue
		}
		v := in.value("fluids/"+cat.ID, "", cat.VapourP.Origin)
		out = append(out, Method{"vapour pressure of " + cat.Name + " by the equation " + cat.VapourP.Equation,
			strings.TrimSuffix(v.Source+", "+v.Clause, ", "), v.Standing})
	}
	return out
}
