package measure

import (
	"math"

	"lineworthy/check/units"
)

// The equation of liquid water: IAPWS-IF97, region 1 (International Association for the Properties of Water and Steam,
// R7-97). The coefficients are recalled; the tests hold them against the release's own check values.
// waterTerm is n (7.1 - pi)^i (tau - 1.222)^j.
type waterTerm struct{ i, j, n float64 }

var waterTerms = []waterTerm{
	{0, -2, 0.14632971213167}, {0, -1, -0.84548187169114}, {0, 0, -3.7563603672040}, {0, 1, 3.3855169168385},
	{0, 2, -0.95791963387872}, {0, 3, 0.15772038513228}, {0, 4, -0.16616417199501e-1}, {0, 5, 0.81214629983568e-3},
	{1, -9, 0.28319080123804e-3}, {1, -7, -0.60706301565874e-3}, {1, -1, -0.18990068218419e-1}, {1, 0, -0.32529748770505e-1},
	{1, 1, -0.21841717175414e-1}, {1, 3, -0.52838357969930e-4}, {2, -3, -0.47184321073267e-3}, {2, 0, -0.30001780793026e-3},
	{2, 1, 0.47661393906987e-4}, {2, 3, -0.44141845330846e-5}, {2, 17, -0.72694996297594e-15}, {3, -4, -0.31679644845054e-4},
	{3, 0, -0.28270797985312e-5}, {3, 6, -0.85205128120103e-9}, {4, -5, -0.22425281908000e-5}, {4, -2, -0.65171222895601e-6},
	{4, 10, -0.14341729937924e-12}, {5, -8, -0.40516996860117e-6}, {8, -11, -0.12734301741641e-8}, {8, -6, -0.17424871230634e-9},
	{21, -29, -0.68762131295531e-18}, {23, -31, 0.14478307828521e-19}, {29, -38, 0.26335781662795e-22},
	{30, -39, -0.11947622640071e-22}, {31, -40, 0.18228094581404e-23}, {32, -41, -0.93537087292458e-25},
}

const (
	waterR       = 461.526 // J/(kg K), IF97
	waterStarPa  = 16.53e6
	waterStarK   = 1386.0
	waterFromK   = 273.15
	waterToK     = 623.15
	waterToMPa   = 100.0
	waterLeastPa = 611.0
)

func waterRange(p units.AbsolutePressure, t units.Temperature) error {
	if err := outside("liquid water", "K", float64(t), waterFromK, waterToK); err != nil {
		return err
	}
	return outside("liquid water", "MPa", float64(p)/1e6, waterLeastPa/1e6, waterToMPa)
}

// WaterVolume is the specific volume of liquid water in m3/kg: IAPWS-IF97 (recalled, checked). From 273.15 to 623.15 K, up
// to 100 MPa; outside the error is an OutsideError. The caller sees to it that the water is liquid.
func WaterVolume(p units.AbsolutePressure, t units.Temperature) (float64, error) {
	return waterVolume(float64(p), float64(t)), waterRange(p, t)
}

func waterVolume(pa, k float64) float64 {
	pi, tau, sum := pa/waterStarPa, waterStarK/k, 0.0
	for _, c := range waterTerms {
		if c.i > 0 {
			sum -= c.n * c.i * math.Pow(7.1-pi, c.i-1) * math.Pow(tau-1.222, c.j)
		}
	}
	return waterR * k / waterStarPa * sum
}

// WaterEnthalpy is the specific enthalpy of liquid water in J/kg; source, range and errors as WaterVolume.
func WaterEnthalpy(p units.AbsolutePressure, t units.Temperature) (float64, error) {
	pi, tau, sum := float64(p)/waterStarPa, waterStarK/float64(t), 0.0
	for _, c := range waterTerms {
		sum += c.n * math.Pow(7.1-pi, c.i) * c.j * math.Pow(tau-1.222, c.j-1)
	}
	return waterR * waterStarK * sum, waterRange(p, t)
}
