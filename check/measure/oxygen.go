package measure

import (
	"math"

	"lineworthy/check/units"
)

// airOxygen is the oxygen of dry air in per cent by volume (restated: 20.95).
const airOxygen = 20.95

// SuddenRelease is the oxygen in per cent of a room that a gas release pushes air out of: 20.95 (Vr - Vg)/Vr, the form of
// the guidance on inert gases (published). Perfect mixing flatters the place of the leak and pits. No less than zero.
func SuddenRelease(room, gas units.Volume) float64 {
	return math.Max(airOxygen*float64(room-gas)/float64(room), 0)
}

// MixedRelease is the same when the gas mixes before air leaves: 20.95 exp(-Vg/Vr), less severe (computed).
func MixedRelease(room, gas units.Volume) float64 { return airOxygen * math.Exp(-float64(gas/room)) }

// ReleaseFor is the part of the room's volume whose release leaves oxygenPct, by SuddenRelease.
func ReleaseFor(oxygenPct float64) float64 { return 1 - oxygenPct/airOxygen }

// SteadyLeak is the oxygen in per cent after a time with a leak in a room with fresh air blown in:
// 20.95/(Q+R) [Q + R exp(-(Q+R) t/V)], the oxygen deficiency model of a US laboratory (equation recalled, limits checked).
// An infinite time gives the end state.
func SteadyLeak(room units.Volume, fresh, leak units.VolumeFlow, after units.Time) float64 {
	q, r := float64(fresh), float64(leak)
	if q+r == 0 {
		return airOxygen
	}
	return airOxygen / (q + r) * (q + r*math.Exp(-(q+r)*float64(after)/float64(room)))
}

// SteadyDepletion is the loss of oxygen in per cent points of a small constant leak in the long run: 21 L/(V n), guidance
// of a UK university (published). changesPerHour is n.
func SteadyDepletion(room units.Volume, leak units.VolumeFlow, changesPerHour float64) float64 {
	return 21 * float64(leak) * 3600 / (float64(room) * changesPerHour)
}
