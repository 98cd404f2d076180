package suggest

import (
	"fmt"
	"slices"
	"strconv"

	"gopkg.in/yaml.v3"

	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

const byReliefPaper = "to be shown by its certificate"

// kdrAsked is the certified coefficient of discharge that is asked for (practice, no source).
const kdrAsked = "0.7"

// vesselDevice writes the device that protects a vessel.
func (s *search) vesselDevice(sp *spot, d *device, bar, mm2 float64, cost int) change {
	path, area := "vessels."+d.id+".relief", areaText(mm2)
	return change{
		spot: sp.id, kind: "relief", where: d.id, parts: []string{sp.id}, cost: 4 + cost,
		after: fmt.Sprintf("added: %s, set %s, area %s, kdr %s", d.why, barText(bar), area, kdrAsked),
		edits: []edit{put(path, "set", barText(bar), byReliefPaper), put(path, "area", area, byReliefPaper), put(path, "kdr", kdrAsked, byReliefPaper)},
		needs: append(d.needs("the relief device of "+d.id, bar, mm2), "the owner of "+d.id+" and its inspector to accept the device"),
	}
}

// branch is a tee put into the joint, and the device on its branch.
func (s *search) branch(sp *spot, d *device, j *resolve.Joint, bar, mm2 float64, cost int) (change, bool) {
	body := s.choose(s.metals(), d.run, bodyOf(j), 1)
	seat := s.choose([]string{"PTFE", "FFKM", "FKM", "EPDM"}, d.run, seatOf(j), 1)
	if len(body) == 0 || len(seat) == 0 {
		return change{}, false
	}
	tee := append(s.newPart(d, d.tee, "fitting", "tee for "+d.id, body[0]), s.common(d, j)...)
	valve := append(s.newPart(d, d.id, "relief", d.why, body[0]), "wetted", "["+seat[0]+"]", "set", barText(bar))
	if mm2 > 0 {
		valve = append(valve, "area", areaText(mm2), "kdr", kdrAsked)
	}
	valve = append(valve, "isolatable", "no", "tested", s.line.AsOf.String(), "test_interval", "12 months")
	valve = append(valve, s.common(d, j)...)
	a, b := j.A.Path, j.B.Path
	parts := &yaml.Node{Kind: yaml.SequenceNode, Content: []*yaml.Node{
		withEnds(noted(tee), "inlet", endCopy{b, "", body[0]}, "outlet", endCopy{a, "", body[0]}),
		withEnds(noted(valve), "mount", endCopy{b, a, body[0]}, "inlet", endCopy{a, "-", body[0]}),
	}}
	c := change{
		spot: sp.id, kind: "relief", where: d.id, parts: []string{d.tee, d.id}, cost: 4 + cost,
		uses: []string{"materials/" + body[0], "materials/" + seat[0]}, edits: []edit{insert(d.run.Key, place(j), parts)},
		after: fmt.Sprintf("added between %s and %s: tee %s and %s, %s, set %s", j.A.Owner, j.B.Owner, d.tee, d.id, d.why, barText(bar)),
		needs: append(d.needs(d.id, bar, mm2), "the plate or certificate of the tee "+d.tee+", and the data sheets of the new seals at "+d.tee+" and "+d.id),
	}
	c.needs = append(c.needs, asNeighbours(d, valve)...)
	if mm2 > 0 {
		c.after += ", area " + areaText(mm2) + ", kdr " + kdrAsked
	}
	c.after += fmt.Sprintf(", body %s, seat %s", body[0], seat[0])
	return c, true
}

func areaText(mm2 float64) string { return strconv.FormatFloat(mm2, 'f', -1, 64) + " mm2" }

func place(j *resolve.Joint) int {
	if j.B.Part != nil {
		return j.B.Part.Index
	}
	return len(j.Run.Parts)
}

func bodyOf(j *resolve.Joint) string {
	for _, e := range []*resolve.End{j.B, j.A} {
		if e.Material != nil {
			return e.Material.ID
		}
	}
	return ""
}

func seatOf(j *resolve.Joint) string {
	if len(j.Seals) > 0 && j.Seals[0].Material != nil {
		return j.Seals[0].Material.ID
	}
	return ""
}

// newPart is what every new part has to state, as strong as the weakest part it stands for at least.
func (s *search) newPart(d *device, id, kind, name, body string) []string {
	rated := roundUp(max(gauge(d.bounds.weakestKPa), units.GaugePressure(float64(gauge(d.bounds.operatingKPa))*tenth)))
	return []string{"id", id, "kind", kind, "name", name, "material", body, "rated", fmt.Sprintf("%g bar(g)", rated), "evidence", "certificate of the new part"}
}

// common are the temperature limits and what the neighbours are, so the new part has to be: bonded, clean for oxygen.
func (s *search) common(d *device, j *resolve.Joint) (out []string) {
	if cold, hot := s.cold(d.run), s.hot(d.run); cold != nil && hot != nil {
		out = append(out, "lowest", outward(*cold, -1), "highest", outward(max(*hot, sunHot), 1))
	}
	for _, p := range []*resolve.Part{j.A.Part, j.B.Part} {
		if p != nil && p.Sheet.Bonded.V && !slices.Contains(out, "bonded") {
			out = append(out, "bonded", "yes")
		}
		if p != nil && p.Sheet.OxyClean.V && !slices.Contains(out, "oxygen_clean") {
			out = append(out, "oxygen_clean", "yes")
		}
	}
	return out
}

// sunHot is what a bare part can come to in the sun (API Std 521 5.14.4.1 c, ADR 4.3.3.2.2, as the pressure cases count).
var sunHot = units.Celsius(65)
