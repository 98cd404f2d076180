package suggest

import (
	"fmt"

	"lineworthy/check/units"
)

// devices are the ways to fit one: at each place, at each set pressure, from the smallest area up.
func (s *search) devices(sp *spot, d *device) (out []change) {
	for _, bar := range d.bounds.sets() {
		for i, mm2 := range d.areas() {
			if d.vessel != nil {
				out = append(out, s.vesselDevice(sp, d, bar, mm2, i))
				continue
			}
			for at, j := range d.gaps {
				if c, ok := s.branch(sp, d, j, bar, mm2, 4*at+i); ok {
					out = append(out, c)
				}
			}
		}
	}
	return out
}

// areasMM2 are the flow areas asked for, mm2 (practice, no source): the rules judge which is enough.
var areasMM2 = []float64{10, 20, 50, 100, 200, 500, 1000}

func (d *device) areas() []float64 {
	if d.forFlow {
		return areasMM2
	}
	return []float64{0}
}

func barText(bar float64) string { return fmt.Sprintf("%.4g bar(g)", bar) }

func gauge(kPa int64) units.GaugePressure { return units.GaugePressure(kPa * 1000) }
