package units

// VolumeFlow is in m3/s, zero or more.
type VolumeFlow float64

const (
	whichGallonFlow = "does not say which gallon: write US gal/min or imp gal/min"
	normalFlow      = "is gas counted at reference conditions: write the volume at line conditions, in m3/h"
)

var volumeFlows = table{
	quantity: "a volume flow", example: "3 m3/h", lowest: 0, highest: 1e4,
	scales: []scale{
		{"m3/h", 1.0 / 3600, 0, []string{"m3/hr"}},
		{"L/min", 1e-3 / 60, 0, []string{"lpm"}},
		{"L/s", 1e-3, 0, nil},
		{"L/h", 1e-3 / 3600, 0, nil},
		{"m3/s", 1, 0, nil},
		{"US gal/min", usGallonM3 / 60, 0, []string{"US gpm", "gpm (US)"}},
		{"imp gal/min", imperialGallonM3 / 60, 0, []string{"imp gpm", "gpm (imp)", "UK gpm"}},
		{"ft3/min", 1728 * inchM * inchM * inchM / 60, 0, nil},
	},
	hints: map[string]string{
		"gpm": whichGallonFlow, "gal/min": whichGallonFlow,
		"nm3/h": normalFlow, "sm3/h": normalFlow, "scfm": normalFlow, "scfh": normalFlow, "nl/min": normalFlow, "slpm": normalFlow,
		"cfm": "does not say free air or line volume: write ft3/min for the volume at line conditions",
	},
}

// ParseVolumeFlow reads "3 m3/h" or "13 US gal/min" at line conditions.
// Other units, values below zero and values beyond 1e4 m3/s are errors.
func ParseVolumeFlow(s string) (VolumeFlow, error) {
	si, _, err := volumeFlows.read(s)
	return keep[VolumeFlow](si, err)
}

// In is the number in the unit.
func (v VolumeFlow) In(unit Unit) (float64, error) { return volumeFlows.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as m3/h.
func (v VolumeFlow) Format(unit Unit) string { return volumeFlows.print(float64(v), unit) }

// String prints in m3/h.
func (v VolumeFlow) String() string { return v.Format("m3/h") }
