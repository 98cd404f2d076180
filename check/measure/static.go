package measure

import "lineworthy/check/units"

// permittivityVacuum is in F/m (CODATA, recalled).
const permittivityVacuum = 8.854e-12

// RelaxationTime is how long a charged liquid takes to lose 63 % of its charge: eps0 eps_r/kappa. No conductivity gives an
// infinite time.
func RelaxationTime(relativePermittivity float64, c units.Conductivity) units.Time {
	return units.Time(permittivityVacuum * relativePermittivity / float64(c))
}

// VelocityBound is the velocity at which v d equals the product in m2/s, no more than ceiling. The values are those of a rule:
// API RP 2003 has 0.5 m2/s and 7 m/s for road tanks (recalled).
func VelocityBound(bore units.Length, productM2PerS float64, ceiling units.Velocity) units.Velocity {
	return min(ceiling, units.Velocity(productM2PerS/float64(bore)))
}

// BoreFlow is the volume flow of a velocity in a bore.
func BoreFlow(bore units.Length, v units.Velocity) units.VolumeFlow { return Flow(circle(bore), v) }

// BoreVelocity is the velocity of a volume flow in a bore.
func BoreVelocity(bore units.Length, q units.VolumeFlow) units.Velocity {
	return units.Velocity(float64(q) / float64(circle(bore)))
}
