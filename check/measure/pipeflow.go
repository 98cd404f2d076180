package measure

import (
	"math"

	"lineworthy/check/units"
)

// Pipe is a run of one bore. Friction multiplies the wall friction: 1 for smooth rubber and PTFE, 2 to 4 for corrugated
// hose (practice), so ask twice and state the band.
type Pipe struct {
	Bore, Length units.Length
	Roughness    units.Length // height
	Losses       float64      // sum of K of fittings, entry and exit
	Friction     float64
}

// Flowing is the liquid in it.
type Flowing struct {
	Density   units.Density
	Viscosity units.Viscosity
}

// Area is the cross-section.
func (p Pipe) Area() units.Area { return circle(p.Bore) }

func circle(bore units.Length) units.Area {
	return units.Area(math.Pi / 4 * float64(bore) * float64(bore))
}

// Reynolds is the Reynolds number of the flow.
func (p Pipe) Reynolds(f Flowing, v units.Velocity) float64 {
	return float64(f.Density) * float64(v) * float64(p.Bore) / float64(f.Viscosity)
}

// PipeDrop is the pressure loss by Darcy and Weisbach: (f L/D + sum K) rho v^2/2.
func PipeDrop(p Pipe, f Flowing, v units.Velocity) units.PressureDifference {
	if v <= 0 {
		return 0
	}
	wall := 0.0
	if p.Length > 0 { // a valve or fitting has losses only
		wall = p.Friction * Friction(p.Reynolds(f, v), float64(p.Roughness/p.Bore)) * float64(p.Length/p.Bore)
	}
	return units.PressureDifference((wall + p.Losses) * float64(f.Density) * float64(v) * float64(v) / 2)
}

// PipeVelocity is the velocity that spends the pressure difference, by fixed-count bisection up to 100 m/s; a drop that
// needs more is an OutsideError.
func PipeVelocity(p Pipe, f Flowing, drop units.PressureDifference) (units.Velocity, error) {
	const top = 100
	if most := PipeDrop(p, f, top); drop > most {
		return 0, &OutsideError{"pipe flow", "Pa", float64(drop), 0, float64(most)}
	}
	v := bisect(0, top, func(v float64) float64 { return float64(PipeDrop(p, f, units.Velocity(v)) - drop) })
	return units.Velocity(v), nil
}

// Flow is the volume flow at a velocity.
func Flow(a units.Area, v units.Velocity) units.VolumeFlow {
	return units.VolumeFlow(float64(a) * float64(v))
}

// TransferTime is the time for a volume at a steady flow; infinite at none.
func TransferTime(volume units.Volume, q units.VolumeFlow) units.Time {
	return units.Time(float64(volume) / float64(q))
}

// DrainTime empties a tank of area tank from level high to low through a pipe of total loss k (wall friction included)
// under a constant pad: (A_tank/A_pipe) sqrt(K)/g [sqrt(2 (dp/rho + g h1)) - sqrt(2 (dp/rho + g h2))] (computed).
func DrainTime(tank, pipe units.Area, k float64, rho units.Density, pad units.PressureDifference, high, low units.Length) units.Time {
	at := func(h units.Length) float64 { return math.Sqrt(2 * (float64(pad)/float64(rho) + gravity*float64(h))) }
	return units.Time(float64(tank/pipe) * math.Sqrt(k) / gravity * (at(high) - at(low)))
}

// FlashingMargin is how far the pressure at a point lies above the vapour pressure there.
func FlashingMargin(p, vapour units.AbsolutePressure) units.PressureDifference {
	return p.Minus(vapour)
}

// SuctionHead is the net positive suction head available: (p - pv)/(rho g) - lift - loss.
func SuctionHead(p, vapour units.AbsolutePressure, rho units.Density, lift, loss units.Length) units.Length {
	return units.Length(float64(p-vapour)/(float64(rho)*gravity)) - lift - loss
}
