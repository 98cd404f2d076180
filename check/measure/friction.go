package measure

import "math"

// All friction factors here are Darcy's, four times Fanning's. roughness is relative, height over bore.

// LaminarFriction is 64/Re.
func LaminarFriction(reynolds float64) float64 { return 64 / reynolds }

// Colebrook is the friction factor of turbulent flow: Colebrook, J. Inst. Civ. Eng. 11 (1939) 133 (restated), for
// 4000 < Re < 1e8 and roughness up to 0.05; outside the error is an OutsideError.
func Colebrook(reynolds, roughness float64) (float64, error) {
	if err := outside("turbulent friction", "(Reynolds number)", reynolds, 4000, 1e8); err != nil {
		return 0, err
	}
	if err := outside("turbulent friction", "(relative roughness)", roughness, 0, 0.05); err != nil {
		return 0, err
	}
	return colebrook(reynolds, roughness), nil
}

// colebrook repeats x = -2 log10(eps/3.7 + 2.51 x/Re), x = 1/sqrt(f), which draws in by a factor of ten or so each time.
func colebrook(reynolds, roughness float64) float64 {
	x, last := 8.0, 0.0
	for step := 0; step < 20 && x != last; step++ { // what comes out as it went in stays for good
		x, last = -2*math.Log10(roughness/3.7+2.51*x/reynolds), x
	}
	return 1 / (x * x)
}

// Churchill is the friction factor for every Reynolds number: Churchill, Chem. Eng. 84 (24) (1977) 91 (restated). Between
// 2000 and 4000, where the flow itself is uncertain, it is no more than a bridge.
func Churchill(reynolds, roughness float64) float64 {
	a := math.Pow(2.457*math.Log(1/(math.Pow(7/reynolds, 0.9)+0.27*roughness)), 16)
	b := math.Pow(37530/reynolds, 16)
	return 8 * math.Pow(math.Pow(8/reynolds, 12)+math.Pow(a+b, -1.5), 1.0/12)
}

// Friction is the friction factor: laminar below a Reynolds number of 2000, Colebrook above 4000, Churchill between and
// where the roughness is beyond Colebrook's range.
func Friction(reynolds, roughness float64) float64 {
	if reynolds < 2000 {
		return LaminarFriction(reynolds)
	}
	if f, err := Colebrook(reynolds, roughness); err == nil {
		return f
	}
	return Churchill(reynolds, roughness)
}

// CorrugatedFriction is the band of a corrugated hose: NASA Tech Brief 66-10662 (published) says it is far above smooth
// tube, without numbers here. Low is a smooth bore, high takes the height of the convolutions as roughness (practice).
// Never report one number of it.
func CorrugatedFriction(reynolds, heightOverBore float64) (low, high float64) {
	return Friction(reynolds, 0), colebrook(reynolds, heightOverBore)
}
