package measure

import "math"

// The equation of state of nitrogen: Span, Lemmon, Jacobsen, Wagner & Yokozeki, J. Phys. Chem. Ref. Data 29 (2000) 1361.
// The coefficients are recalled; the tests hold them against published check values.
const (
	nitrogenTc   = 126.192 // K
	nitrogenRhoc = 11183.9 // mol/m3
	nitrogenR    = 8.31451 // J/(mol K), the constant the equation was fitted with
	// nitrogenMolarMass is in kg/mol (same paper).
	nitrogenMolarMass = 0.02801348
)

// helmTerm is n delta^d tau^t exp(-delta^l), l = 0 for no exponential.
type helmTerm struct{ n, d, t, l float64 }

var nitrogenTerms = []helmTerm{
	{0.924803575275, 1, 0.25, 0}, {-0.492448489428, 1, 0.875, 0}, {0.661883336938, 2, 0.5, 0},
	{-1.92902649201, 2, 0.875, 0}, {-0.0622469309629, 3, 0.375, 0}, {0.349943957581, 3, 0.75, 0},
	{0.564857472498, 1, 0.5, 1}, {-1.61720005987, 1, 0.75, 1}, {-0.481395031883, 1, 2, 1},
	{0.421150636384, 3, 1.25, 1}, {-0.0161962230825, 3, 3.5, 1}, {0.172100994165, 4, 1, 1},
	{0.00735448924933, 6, 0.5, 1}, {0.0168077305479, 6, 3, 1}, {-0.00107626664179, 7, 0, 1},
	{-0.0137318088513, 7, 2.75, 1}, {0.000635466899859, 8, 0.75, 1}, {0.00304432279419, 8, 2.5, 1},
	{-0.0435762336045, 1, 4, 2}, {-0.0723174889316, 2, 6, 2}, {0.0389644315272, 3, 6, 2},
	{-0.021220136391, 4, 3, 2}, {0.00408822981509, 5, 3, 2}, {-5.51990017984e-05, 8, 6, 2},
	{-0.0462016716479, 4, 16, 3}, {-0.00300311716011, 5, 11, 3}, {0.0368825891208, 5, 15, 3},
	{-0.0025585684622, 8, 12, 3}, {0.00896915264558, 3, 12, 4}, {-0.0044151337035, 5, 7, 4},
	{0.00133722924858, 6, 4, 4}, {0.000264832491957, 9, 16, 4},
}

// bellTerm is n delta^d tau^t exp(-phi (delta-1)^2 - beta (tau-gamma)^2).
type bellTerm struct{ n, d, t, phi, beta, gamma float64 }

var nitrogenBells = []bellTerm{
	{19.6688194015, 1, 0, 20, 325, 1.16}, {-20.911560073, 1, 1, 20, 325, 1.16},
	{0.0167788306989, 3, 2, 15, 300, 1.13}, {2627.67566274, 2, 3, 25, 275, 1.25},
}

// beyond is where the exponent of a bell leaves less than the last digit of the sum, exp(-100) being 4e-44: warm gas lies there.
const beyond = 100

// residual is the residual Helmholtz energy over RT and its derivatives, each times delta or tau.
type residual struct{ a, d, dd, t, dt float64 }

// Every exponent of delta is a whole number up to 9, every exponent of tau a whole number of eighths up to 16, and every
// cut-off exp(-delta^l) has l up to 4, so each is worked out once.
const (
	deltaPowers = 10
	tauEighths  = 16*8 + 1
	cutOffs     = 5
)

type nitrogenPowers struct {
	at    float64 // tau
	delta [deltaPowers]float64
	tau   [tauEighths]float64
	cut   [cutOffs]float64 // 1 for l = 0
}

// warm sets the temperature: a search for the density keeps it, and its powers are most of the multiplications.
func (p *nitrogenPowers) warm(tau float64) {
	p.at, p.tau[0] = tau, 1
	eighth := math.Sqrt(math.Sqrt(math.Sqrt(tau)))
	for i := 1; i < tauEighths; i++ {
		p.tau[i] = p.tau[i-1] * eighth
	}
}

func (p *nitrogenPowers) pack(delta float64) {
	p.delta[0], p.cut[0] = 1, 1
	for i := 1; i < deltaPowers; i++ {
		p.delta[i] = p.delta[i-1] * delta
	}
	for l := 1; l < cutOffs; l++ {
		p.cut[l] = math.Exp(-p.delta[l])
	}
}

func nitrogenResidual(k, molPerM3 float64) residual {
	var p nitrogenPowers
	p.warm(nitrogenTc / k)
	return p.residual(molPerM3)
}

func (p *nitrogenPowers) residual(molPerM3 float64) (r residual) {
	delta, tau := molPerM3/nitrogenRhoc, p.at
	p.pack(delta)
	for i := range nitrogenTerms {
		c := &nitrogenTerms[i]
		u := 0.0
		if c.l > 0 {
			u = c.l * p.delta[int(c.l)]
		}
		d := c.d - u
		r.add(c.n*p.delta[int(c.d)]*p.tau[int(c.t*8)]*p.cut[int(c.l)], d, d*(d-1)-c.l*u, c.t)
	}
	for i := range nitrogenBells {
		c := &nitrogenBells[i]
		x, y := delta-1, tau-c.gamma
		away := -c.phi*x*x - c.beta*y*y
		if away < -beyond {
			continue
		}
		base := c.n * p.delta[int(c.d)] * p.tau[int(c.t*8)] * math.Exp(away)
		d := c.d - 2*c.phi*delta*x
		r.add(base, d, d*d-c.d-2*c.phi*delta*delta, c.t-2*c.beta*tau*y)
	}
	return r
}

func (r *residual) add(base, d, dd, t float64) {
	r.a += base
	r.d += base * d
	r.dd += base * dd
	r.t += base * t
	r.dt += base * d * t
}
