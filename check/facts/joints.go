package facts

import (
	"fmt"
	"slices"
	"strings"
	"sync"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

func (b *builder) joints() {
	joints, seals := 0, 0
	for _, r := range b.l.Runs {
		joints += len(r.Joints)
		for _, j := range r.Joints {
			seals += len(j.Seals)
		}
	}
	b.f.Joints, b.f.Seals = make([]Joint, 0, joints), make([]Seal, 0, seals)
	for _, r := range b.l.Runs {
		for _, j := range r.Joints {
			b.f.Joints = append(b.f.Joints, b.joint(j))
			for _, s := range j.Seals {
				b.f.Seals = append(b.f.Seals, b.sealFacts(j, s))
			}
		}
	}
}

func (b *builder) joint(j *resolve.Joint) Joint {
	out := Joint{ID: j.ID, A: j.A.Owner, B: j.B.Owner, Excluded: []string{}, SealsSaid: j.Stated, Open: isOpen(j.B) && j.B == j.Run.TargetEnd}
	if out.Open {
		out.Mate = "fits"
		out.alike()
		out.NeedsSeal, out.SealCount = Yes(false), Know(0)
		return out
	}
	a, c := j.A.Family, j.B.Family
	if a == nil || c == nil {
		b.noEnd(j)
		return out
	}
	out.FamilyA, out.FamilyB = a.ID, c.ID
	b.mate(j, &out)
	if out.Mate == "stop" || out.Mate == "no-fit" {
		out.alike() // the pair itself is refused; what else differs would only say it again
	} else {
		b.fit(j, &out)
		b.outletNumber(j, &out)
	}
	out.Excluded = excluded(j)
	b.bolting(j, &out)
	out.NeedsLock = wantsLock(a) || wantsLock(c)
	out.Locked = locked(j)
	out.NeedsSeal = Yes(washered(j) || a.Seals.Required || c.Seals.Required)
	if j.Stated || !out.NeedsSeal.V {
		out.SealCount = Know(int64(len(j.Seals)))
	}
	return out
}

// alike leaves nothing to compare between the two ends.
func (j *Joint) alike() {
	j.Size, j.Gender, j.Hand, j.Class, j.Facing, j.Number, j.GasListed = "same", "none", "same", "none", "none", "none", Yes(true)
}

// washered says whether the cylinder outlet of either end takes a washer, which a metal nipple does not.
func washered(j *resolve.Joint) bool {
	for _, e := range []*resolve.End{j.A, j.B} {
		if n := outlet(e); n != nil && n.Washer != nil && *n.Washer {
			return true
		}
	}
	return false
}

func isOpen(e *resolve.End) bool { return e.Sheet != nil && e.Sheet.Open.V }

// noEnd names the end nothing was written about.
func (b *builder) noEnd(j *resolve.Joint) {
	for _, e := range []*resolve.End{j.A, j.B} {
		if e.Family != nil {
			continue
		}
		why := fmt.Sprintf("the sheet does not say what the %s of %s is", e.Name, e.Owner)
		for _, fact := range []string{"mate", "size", "gender", "hand", "class", "facing", "outlet_number", "needs_seal", "gas_listed", "locked"} {
			b.unknown(j.ID, "joints."+fact, why, e.Path+": standard, size, class, gender and material of the end")
		}
	}
}

// mate looks the pair up in the mating table. A pair in neither file is not a known pair, and never accepted.
func (b *builder) mate(j *resolve.Joint, out *Joint) {
	a, c := j.A.Family, j.B.Family
	m := worseMate(findMate(a, c.ID), findMate(c, a.ID))
	if m == nil {
		b.unknown(j.ID, "joints.mate", fmt.Sprintf("%s with %s is not a known pair", a.Name, c.Name), "a published statement that the two are a designed pair, or matching ends")
		return
	}
	out.Mate, out.Why = m.Verdict, m.Why
	out.LookAlike = m.Verdict == "stop"
	if m.Verdict == "fits" {
		if !b.known(j.ID, "mating ", a.ID, " ", c.ID) {
			b.rests("mating "+a.ID+" "+c.ID, "that "+a.Name+" joins "+c.Name, m.Origin, j.ID)
		}
	}
}

func findMate(c *catalog.Connection, with string) *catalog.Mate {
	var found *catalog.Mate
	for i := range c.Mates {
		if c.Mates[i].With == with {
			found = worseMate(found, &c.Mates[i])
		}
	}
	return found
}

// worseMate is the row that speaks more against the pair, so that it does not matter which end comes first.
func worseMate(a, c *catalog.Mate) *catalog.Mate {
	order := []string{"fits", "no-fit", "stop"}
	if a == nil || c != nil && slices.Index(order, c.Verdict) > slices.Index(order, a.Verdict) {
		return c
	}
	return a
}

// fit compares what must be equal or opposite on the two ends.
func (b *builder) fit(j *resolve.Joint, out *Joint) {
	x, y := j.A.Sheet, j.B.Sheet
	if x.Size.Set && y.Size.Set {
		if same, known := units.Same(x.Size.V, y.Size.V); known {
			out.Size = sameWord(same)
		} else {
			b.unknown(j.ID, "joints.size", fmt.Sprintf("%s and %s may or may not be one size", x.Size.Text, y.Size.Text), "the size of both ends in the terms of their standard")
		}
	}
	if j.A.Family.SizedBy == "number" && j.B.Family.SizedBy == "number" {
		out.Size = "same" // the outlet number is compared instead
	}
	out.Gender = gender(j)
	out.Hand = hand(j)
	out.Class = b.class(j)
	out.Facing = facing(j)
}

func sameWord(same bool) string {
	if same {
		return "same"
	}
	return "differs"
}

func gender(j *resolve.Joint) string {
	if !j.A.Family.Gendered && !j.B.Family.Gendered {
		return "none"
	}
	x, y := j.A.Sheet.Gender, j.B.Sheet.Gender
	switch {
	case !x.Set || !y.Set || x.V == "none" || y.V == "none":
		return "" // a standard with genders has no end without one
	case x.V == y.V:
		return "same"
	}
	return "opposite"
}

// hand compares the stated hands; a family that has one hand speaks for an end that does not state it.
func hand(j *resolve.Joint) string {
	x, y := handOf(j.A), handOf(j.B)
	if x == "" || y == "" {
		if x != "" || y != "" {
			return ""
		}
		return "same" // neither standard has a hand, or a number stands for it
	}
	return sameWord(x == y)
}

func handOf(e *resolve.End) string {
	if e.Sheet.Hand.Set {
		return e.Sheet.Hand.V
	}
	switch strings.ToLower(e.Family.Hand) {
	case "rh", "right":
		return "right"
	case "lh", "left":
		return "left"
	}
	return ""
}

// class compares class, PN or series; flanges of different class may still share their drilling.
func (b *builder) class(j *resolve.Joint) string {
	if j.A.Family.ClassedBy == "" && j.B.Family.ClassedBy == "" {
		return "none"
	}
	x, y := j.A.Sheet.Class, j.B.Sheet.Class
	switch {
	case !x.Set || !y.Set:
		return ""
	case x.V == y.V || classText(x.V) == classText(y.V):
		return "same"
	}
	p, q := drilling(j.A), drilling(j.B)
	if p != nil && q != nil && p.CircleMM == q.CircleMM && p.Holes == q.Holes && p.Bolt == q.Bolt {
		return "drilling-same"
	}
	return "differs"
}

// classText makes "PN16", "PN 16" and "pn 16", or "Class 150" and "150", one.
func classText(s string) string {
	if got, ok := classTexts.Load(s); ok {
		return got.(string)
	}
	got := strings.ToLower(strings.Join(strings.Fields(s), ""))
	got = strings.TrimPrefix(strings.TrimPrefix(got, "class"), "pn")
	classTexts.Store(s, got)
	return got
}

// The catalog writes few classes and sizes, and each is read again and again.
var classTexts, sizeTexts sync.Map

// sizeOf reads a size of the catalog; false for one that is no size.
func sizeOf(text string) (units.Size, bool) {
	if got, ok := sizeTexts.Load(text); ok {
		return got.(units.Size), got.(units.Size) != units.Size{}
	}
	size, _ := units.ParseSize(text)
	sizeTexts.Store(text, size)
	return size, size != units.Size{}
}

func drilling(e *resolve.End) *catalog.Drill {
	class := classText(e.Sheet.Class.V)
	for i, d := range e.Family.Drilling {
		size, ok := sizeOf(d.Size)
		if !ok || classText(d.Class) != class {
			continue
		}
		if same, known := units.Same(size, e.Sheet.Size.V); same && known {
			return &e.Family.Drilling[i]
		}
	}
	return nil
}

// Facings that are made for each other though their names differ, ASME B16.5 clause 6.4: male and female, tongue and
// groove; EN 1092-1 clause 5.7: tongue C and groove D, spigot E and recess F, O-ring spigot G and O-ring groove H (recalled).
var facingPairs = [][2]string{{"m", "f"}, {"t", "g"}, {"c", "d"}, {"e", "f"}, {"g", "h"}}

// facingsFit wants equal plain faces, or the two halves of one pair.
func facingsFit(p, q string) bool {
	half := false
	for _, pair := range facingPairs {
		if p == pair[0] && q == pair[1] || p == pair[1] && q == pair[0] {
			return true
		}
		half = half || slices.Contains(pair[:], p)
	}
	return p == q && !half
}

func facing(j *resolve.Joint) string {
	if j.A.Family.Kind != "flange" || j.B.Family.Kind != "flange" {
		return "none"
	}
	x, y := j.A.Sheet.Facing, j.B.Sheet.Facing
	if !x.Set || !y.Set {
		return ""
	}
	return sameWord(facingsFit(strings.ToLower(x.V), strings.ToLower(y.V)))
}

func wantsLock(c *catalog.Connection) bool { return c.Locking != nil && c.Locking.Value }

// locked is what either end says; an end that is said not to be locked decides.
func locked(j *resolve.Joint) Bool {
	out := Bool{}
	for _, e := range []*resolve.End{j.A, j.B} {
		if e.Sheet.Locked.Set {
			out = Yes(e.Sheet.Locked.V && (!out.Known || out.V))
		}
	}
	return out
}

// excluded are the services the run carries that either end's standard keeps out.
func excluded(j *resolve.Joint) []string {
	out := []string{}
	for _, c := range []*catalog.Connection{j.A.Family, j.B.Family} {
		for _, x := range c.Excludes {
			for _, f := range j.Run.Fluids {
				if slices.Contains(f.Services, x.Service) && !slices.Contains(out, x.Service) {
					out = append(out, x.Service)
				}
			}
		}
	}
	slices.Sort(out)
	return out
}
