package measure

import (
	"fmt"
	"math"

	"lineworthy/check/units"
)

// energyAmbientPa is the ambient pressure of ASME PCC-2, 101 000 Pa (published).
const energyAmbientPa = 101000

// GasEnergy is the energy a gas would set free: p V/(k-1) [1 - (pa/p)^((k-1)/k)], ASME PCC-2:2008 Article 5.1, Appendix II
// (published). An ideal gas overstates that of a full cylinder.
func GasEnergy(p units.AbsolutePressure, v units.Volume, k float64) units.Energy {
	return gasEnergy(p, v, k, (k-1)/k)
}

// NitrogenEnergy is the rounded form for air and nitrogen, 2.5 p V [1 - (pa/p)^0.286] (published, same place).
func NitrogenEnergy(p units.AbsolutePressure, v units.Volume) units.Energy {
	return gasEnergy(p, v, 1.4, 0.286)
}

func gasEnergy(p units.AbsolutePressure, v units.Volume, k, exponent float64) units.Energy {
	if p <= energyAmbientPa {
		return 0
	}
	return units.Energy(float64(p) * float64(v) / (k - 1) * (1 - math.Pow(energyAmbientPa/float64(p), exponent)))
}

// LiquidEnergy is the energy of a liquid pressed into a section: (kappa + beta_c) V dp^2/2 (computed).
func LiquidEnergy(dp units.PressureDifference, v units.Volume, compressibility float64, c Container) units.Energy {
	return units.Energy((compressibility + c.Compliance) * float64(v) * float64(dp) * float64(dp) / 2)
}

// TNT is the mass of TNT of that energy: E/4 266 920, ASME PCC-2:2008 (published).
func TNT(e units.Energy) units.Mass { return units.Mass(float64(e) / 4266920) }

// DistanceEdition is the text of PCC-2 that a safe distance follows; they differ by a factor 2 in the mass of TNT.
type DistanceEdition string

// The editions known.
const (
	PCC2Of2008 DistanceEdition = "PCC-2 2008"  // TNT^(1/3) (published)
	PCC2Later  DistanceEdition = "PCC-2 later" // (2 TNT)^(1/3) (restated)
)

// ScaledDistance is scaled [TNT]^(1/3), scaled in m/kg^(1/3), 20 at least for people. An edition not named is an error.
func ScaledDistance(e units.Energy, edition DistanceEdition, scaled float64) (units.Length, error) {
	mass := float64(TNT(e))
	switch edition {
	case PCC2Of2008:
	case PCC2Later:
		mass *= 2
	default:
		return 0, fmt.Errorf("edition %q is not known: give %q or %q", edition, PCC2Of2008, PCC2Later)
	}
	return units.Length(scaled * math.Cbrt(mass)), nil
}

// SafeDistance is the greater of ScaledDistance and 30 m up to 135.5 MJ, 60 m up to 271 MJ: ASME PCC-2:2008 Article 5.1,
// Appendix III (published). Beyond 271 MJ only the scaled distance is known.
func SafeDistance(e units.Energy, edition DistanceEdition, scaled float64) (units.Length, error) {
	d, err := ScaledDistance(e, edition, scaled)
	switch {
	case e <= 135.5e6:
		d = max(d, 30)
	case e <= 271e6:
		d = max(d, 60)
	}
	return d, err
}
