package measure

import (
	"math"

	"lineworthy/check/units"
)

// WaveSpeed is the speed of a pressure wave: 1/sqrt(rho (kappa + beta_c)), Korteweg; Wylie & Streeter, Fluid Transients
// (recalled). A zero Container gives the speed of sound of the liquid, the safe side for a hose of unknown compliance.
func WaveSpeed(rho units.Density, compressibility float64, c Container) units.Velocity {
	return units.Velocity(1 / math.Sqrt(float64(rho)*(compressibility+c.Compliance)))
}

// Joukowsky is the surge of a closure faster than the wave's return: rho a dv (recalled, same book).
func Joukowsky(rho units.Density, wave, stopped units.Velocity) units.PressureDifference {
	return units.PressureDifference(float64(rho) * float64(wave) * float64(stopped))
}

// WaveReturn is the time of a wave to the far end and back, 2 L/a.
func WaveReturn(length units.Length, wave units.Velocity) units.Time {
	return units.Time(2 * float64(length) / float64(wave))
}

// Michaud is the bound of the surge of a slow linear closure: 2 rho L v/tc (recalled, same book). closing is the effective
// time: for a ball valve the last quarter of its stroke (practice). It is infinite for a time of zero.
func Michaud(rho units.Density, length units.Length, stopped units.Velocity, closing units.Time) units.PressureDifference {
	return units.PressureDifference(2 * float64(rho) * float64(length) * float64(stopped) / float64(closing))
}

// Surge is the rise at the valve that closes: Joukowsky, and Michaud where the closure is slow enough for it to be less.
// Single phase, no column separation. Without a length of line there is no column to stop, and no rise.
func Surge(rho units.Density, wave, stopped units.Velocity, length units.Length, closing units.Time) units.PressureDifference {
	if length == 0 {
		return 0
	}
	return min(Joukowsky(rho, wave, stopped), Michaud(rho, length, stopped, closing))
}

// RigidColumn is the surge of a slow closure against the steady pressure p0, liquid and pipe rigid:
// p0 (N/2 + sqrt(N^2/4 + N)), N = (rho L v/(p0 tc))^2; Parmakian, Waterhammer Analysis (recalled).
func RigidColumn(rho units.Density, length units.Length, stopped units.Velocity, closing units.Time, p0 units.PressureDifference) units.PressureDifference {
	n := math.Pow(float64(rho)*float64(length)*float64(stopped)/(float64(p0)*float64(closing)), 2)
	return units.PressureDifference(float64(p0) * (n/2 + math.Sqrt(n*n/4+n)))
}
