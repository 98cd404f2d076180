package suggest

import (
	"fmt"
	"slices"
)

// needs is what the device still has to prove. The rules judge its numbers; they cannot judge that it is there.
func (d *device) needs(name string, bar, mm2 float64) []string {
	size := "the size of " + name + " by calculation of a competent person, back pressure and inlet loss with it"
	if mm2 > 0 {
		size += fmt.Sprintf(": area %s and coefficient %s are a place to start from", areaText(mm2), kdrAsked)
	}
	return []string{
		size,
		fmt.Sprintf("the certificate of %s for its set pressure of %s, its rating, materials and temperatures", name, barText(bar)),
		"the date and record of the first test of " + name + ", and its test interval",
		"the outlet of " + name + " led to a safe place for what it lets off",
		"nothing that can close between " + name + " and what it protects",
	}
}

// asNeighbours is what the new parts have to be because their neighbours are.
func asNeighbours(d *device, written []string) (out []string) {
	if slices.Contains(written, "bonded") {
		out = append(out, d.tee+" and "+d.id+" bonded, and the bond measured")
	}
	if slices.Contains(written, "oxygen_clean") {
		out = append(out, "the certificate that "+d.tee+" and "+d.id+" are cleaned for oxygen")
	}
	return out
}
