package facts

import (
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// Tail is the tails and clamps of the ends of one hose against the hose they are fitted to.
type Tail struct {
	ID         string `json:"id"` // the hose
	TailUM     Int    `json:"tail_um,omitzero" ask:"parts.*.tail: the size of hose that the tails are made for, stamped on them"`
	HoseUM     Int    `json:"hose_um,omitzero" ask:"parts.*.size: the size printed on the hose"`
	Clamped    bool   `json:"clamp_stated"` // the sheet gives a clamp or the outside diameter
	OutsideUM  Int    `json:"outside_um,omitzero" ask:"parts.*.outside: the outside diameter measured with a tape before the clamp goes on"`
	ClampLeast Int    `json:"clamp_least_um,omitzero" ask:"parts.*.clamp_least: the smallest outside diameter stamped on the clamp"`
	ClampMost  Int    `json:"clamp_most_um,omitzero" ask:"parts.*.clamp_most: the largest outside diameter stamped on the clamp"`
}

// Ends that whoever owns the hose can put on, so that the wrong tail can come in.
var ownMade = map[string]bool{"screwed-ferrule": true, "clamp-shells": true, "interlocking-clamp": true, "screw-together": true, "band": true, "worm-drive": true}

// tails are filed where the sheet says something of them, and where ends made up on site hold back a fluid that no band may.
func (b *builder) tails() {
	b.f.Tails = []Tail{}
	for _, r := range b.l.Runs {
		for _, p := range r.Parts {
			s := p.Sheet
			asked := ownMade[s.Retention.V] && b.bandBarred(p) != ""
			if s.Tail.Set || s.Outside.Set || s.ClampLeast.Set || s.ClampMost.Set || asked && s.Kind.V == "hose" {
				b.f.Tails = append(b.f.Tails, b.tail(p, asked))
			}
		}
	}
}

func (b *builder) tail(p *resolve.Part, asked bool) Tail {
	s := p.Sheet
	t := Tail{ID: p.ID, Clamped: s.Outside.Set || s.ClampLeast.Set || s.ClampMost.Set}
	if s.Size.Set {
		t.HoseUM = b.micrometre(hoseBore(s.Size.V))
	}
	switch {
	case s.Tail.Set:
		t.TailUM = b.micrometre(hoseBore(s.Tail.V))
	case !asked:
		t.TailUM = t.HoseUM // ends that a maker has put on are of the size of the hose
	}
	if s.Outside.Set {
		t.OutsideUM = b.micrometre(s.Outside.V)
	}
	if s.ClampLeast.Set {
		t.ClampLeast = b.micrometre(s.ClampLeast.V)
	}
	if s.ClampMost.Set {
		t.ClampMost = b.micrometre(s.ClampMost.V)
	}
	return t
}

func (b *builder) micrometre(l units.Length) Int {
	return b.keep(units.RoundDown(float64(l)*1e6 + 0.5))
}

// hoseSizes are the sizes of hose in mm by sixteenths of an inch: ISO 1307 (restated), with its inch names (recalled).
// 2 in is 51 and not 50, 3/4 in is 19 and not 20.
var hoseSizes = map[int]float64{
	2: 3.2, 3: 5, 4: 6.3, 5: 8, 6: 10, 8: 12.5, 10: 16, 12: 19, 16: 25, 20: 31.5, 24: 38, 32: 51, 40: 63, 48: 76, 56: 90, 64: 100, 80: 125, 96: 150, 128: 200,
}

// Whole numbers that are written for the halves of ISO 1307.
var wholeSizes = map[int]float64{6: 6.3, 12: 12.5, 13: 12.5, 31: 31.5, 32: 31.5}

// hoseBore is the size of the hose standard behind a DN, NPS, dash number or bore; one it does not list stays as it is.
func hoseBore(s units.Size) units.Length {
	inches := s.Inches()
	if inches == 0 {
		mm := float64(s.Nominal()) * 1000
		if listed, ok := wholeSizes[int(mm)]; ok && mm == float64(int(mm)) {
			mm = listed
		}
		return units.Length(mm / 1000)
	}
	if mm, ok := hoseSizes[int(inches*16)]; ok && inches*16 == float64(int(inches*16)) {
		return units.Length(mm / 1000)
	}
	return s.Nominal()
}
