package units

// Volume is in m3, zero or more.
type Volume float64

// Both gallons are exact (NIST SP 811, 2008, App. B.8; recalled).
const (
	usGallonM3       = 231 * inchM * inchM * inchM
	imperialGallonM3 = 4.54609e-3
	whichGallon      = "does not say which gallon: write US gal (3.785 L) or imp gal (4.546 L)"
)

var volumes = table{
	quantity: "a volume", example: "1000 L", lowest: 0, highest: 1e9,
	scales: []scale{
		{"L", 1e-3, 0, []string{"litre", "litres", "liter", "liters", "dm3"}},
		{"m3", 1, 0, []string{"cubic metre", "cu m"}},
		{"mL", 1e-6, 0, []string{"cm3"}},
		{"US gal", usGallonM3, 0, []string{"gal (US)", "US gallon", "US gallons"}},
		{"imp gal", imperialGallonM3, 0, []string{"gal (imp)", "UK gal", "imperial gallon", "imperial gallons"}},
		{"ft3", 1728 * inchM * inchM * inchM, 0, []string{"cu ft"}},
	},
	hints: map[string]string{
		"gal": whichGallon, "gals": whichGallon, "gallon": whichGallon, "gallons": whichGallon,
		"bbl": "is one of several barrels: write L or m3",
	},
}

// ParseVolume reads "1000 L" or "264 US gal"; a bare gallon is refused.
// Other units, values below zero and values beyond 1e9 m3 are errors.
func ParseVolume(s string) (Volume, error) {
	si, _, err := volumes.read(s)
	return keep[Volume](si, err)
}

// In is the number in the unit.
func (v Volume) In(unit Unit) (float64, error) { return volumes.in(float64(v), unit) }

// Format prints in the unit; an unknown unit prints as L.
func (v Volume) Format(unit Unit) string { return volumes.print(float64(v), unit) }

// String prints in L.
func (v Volume) String() string { return v.Format("L") }
