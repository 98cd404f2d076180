package check

import (
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Shown prints quantities in the units a sheet is written in, as its verdict does.
type Shown struct{ p *printer }

// ShownAs takes the units from the sheet: of each quantity the one used most.
func ShownAs(l *sheet.Line) Shown { return Shown{&printer{sys: systemOf(l)}} }

// Pressure is a gauge pressure with its unit.
func (s Shown) Pressure(p units.GaugePressure) string { return s.p.pressure(p) }

// Degrees is a temperature with its unit.
func (s Shown) Degrees(t units.Temperature) string { return s.p.sys.Degrees(t) }

// Difference is a signed pressure difference with its unit.
func (s Shown) Difference(d units.PressureDifference) string {
	return signed(int64(d), s.p.sys.Difference(d))
}

// Units are the names of the units.
func (s Shown) Units() report.Units { return s.p.units() }

// CaseWords is the name of a pressure case as a technician would say it.
func CaseWords(name string) string { return words(name) }
