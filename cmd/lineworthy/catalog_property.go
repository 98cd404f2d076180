package main

import (
	"errors"
	"fmt"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// in gives a figure its unit.
func in(unit string) func(float64) string {
	return func(v float64) string { return number(v) + " " + unit }
}

func (p *page) properties(f *catalog.Fluid) error {
	from := f
	if f.PropertiesOf != "" {
		var err error
		if from, err = p.cat.Fluid(f.PropertiesOf); err != nil {
			return err
		}
	}
	p.section("Properties", func() {
		if from != f {
			p.plain("taken from", from.ID)
		}
		k := from.Constants
		p.number1("molar mass", k.MolarMassGMol, in("g/mol"))
		p.number1("boiling point", k.BoilingPointK, kelvin)
		p.number1("melting point", k.MeltingPointK, kelvin)
		p.number1("critical temperature", k.CriticalTemperatureK, kelvin)
		p.number1("critical pressure", k.CriticalPressurePa, func(v float64) string { return number(v/1e5) + " bar absolute" })
		p.number1("acentric factor", k.AcentricFactor, number)
		p.equations(from)
	})
	return nil
}

func (p *page) equations(f *catalog.Fluid) {
	p.equation("vapour pressure", f.VapourP, func(e measure.Equation, t units.Temperature) (string, error) {
		v, err := measure.VapourPressure(e, t)
		return number(signif(float64(v)/1e5)) + " bar absolute", err
	})
	p.equation("liquid density", f.Density, func(e measure.Equation, t units.Temperature) (string, error) {
		mass := 0.0
		if m := f.Constants.MolarMassGMol; m != nil {
			mass = m.Value
		}
		v, err := measure.LiquidDensity(e, mass, t)
		return number(signif(float64(v))) + " kg/m³", err
	})
	p.equation("liquid viscosity", f.Viscosity, nil)
	p.equation("liquid compressibility", f.Compress, nil)
}

// equation shows an equation by what it gives at 20 and 50 °C, and where it may be used.
func (p *page) equation(label string, e *catalog.Equation, at func(measure.Equation, units.Temperature) (string, error)) {
	if e == nil {
		return
	}
	p.value(label, "from "+celsius(round1(e.FromK-273.15))+" to "+celsius(round1(e.ToK-273.15)), e.Origin)
	if e.UnderstatesPct > 0 {
		p.below(fmt.Sprintf("lies up to %s %% below the highest other source", number(e.UnderstatesPct)))
	}
	for _, c := range []float64{20, 50} {
		if at == nil {
			return
		}
		m := measure.Equation{Name: e.Equation, C: e.C, From: units.Temperature(e.FromK), To: units.Temperature(e.ToK)}
		text, err := at(m, units.Temperature(c+273.15))
		if outside := (*measure.OutsideError)(nil); errors.As(err, &outside) {
			text = "outside the range of the equation"
		} else if err != nil {
			text = err.Error()
		}
		p.plain("  at "+celsius(c), text)
	}
}
