package window_test

import (
	"bytes"
	"encoding/binary"
	"encoding/json"
	"encoding/xml"
	"errors"
	"image"
	"image/png"
	"io"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
	"lineworthy/check/window"
)

func ofLine(t testing.TB, name string) *window.Result {
	line, err := sheet.Read(filepath.Join("..", "..", "testdata", "lines", name, "line.yaml"))
	require.NoError(t, err)
	r, err := window.Of(line, catalog.Open(), units.Date{Days: 20782})
	require.NoError(t, err)
	return r
}

func allLines(t *testing.T, do func(t *testing.T, name string)) {
	paths, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(paths), 9)
	for _, p := range paths {
		name := filepath.Base(filepath.Dir(p))
		t.Run(name, func(t *testing.T) { do(t, name) })
	}
}

// Every picture of every shipped line says in words what it shows, and is the same bytes twice.
func TestSVG(t *testing.T) {
	allLines(t, func(t *testing.T, name string) {
		for _, s := range ofLine(t, name).Scopes {
			r := ofLine(t, name)
			require.NoError(t, r.Only(s.ID))
			var a, b bytes.Buffer
			require.NoError(t, window.SVG(&a, r))
			require.NoError(t, window.SVG(&b, r))
			require.Equal(t, a.String(), b.String())
			wellFormed(t, a.String())
			require.Contains(t, a.String(), `role="img" aria-labelledby="window-title window-desc"`)
			require.Contains(t, a.String(), "<desc id=\"window-desc\">Allowed pressure against temperature of "+r.Line)
			require.Contains(t, a.String(), ">Temperature, "+r.Units.Temperature+"<")
			require.Contains(t, a.String(), ">Pressure, "+r.Units.Pressure+"<")
		}
	})
}

func wellFormed(t *testing.T, text string) {
	for d := xml.NewDecoder(strings.NewReader(text)); ; {
		_, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		require.NoError(t, err)
	}
}

// The PNG is a sound grey picture with its title and description in text chunks (ISO/IEC 15948, recalled).
func TestPNG(t *testing.T) {
	var b bytes.Buffer
	r := ofLine(t, "ammonia-lpg-hose")
	require.NoError(t, window.PNG(&b, r))
	img, err := png.Decode(bytes.NewReader(b.Bytes()))
	require.NoError(t, err)
	require.IsType(t, &image.Gray{}, img)
	texts := map[string]string{}
	for data := b.Bytes()[8:]; len(data) > 0; {
		n := binary.BigEndian.Uint32(data)
		if string(data[4:8]) == "tEXt" {
			key, text, _ := strings.Cut(string(data[8:8+n]), "\x00")
			texts[key] = text
		}
		data = data[12+n:]
	}
	require.Equal(t, "Allowed pressure and temperature: AM-01, the whole line", texts["Title"])
	require.Contains(t, texts["Description"], "The vapour pressure of Ammonia, anhydrous reaches the limit at ")
}

// The keys of the document are a contract: a new one is added here, none is renamed.
func TestKeys(t *testing.T) {
	text, err := json.Marshal(ofLine(t, "ammonia-lpg-hose"))
	require.NoError(t, err)
	var doc map[string]any
	require.NoError(t, json.Unmarshal(text, &doc))
	require.ElementsMatch(t, []string{"schema", "line", "title", "sheet", "units", "scopes", "vapour_pressures", "cautions"}, keys(doc))
	require.Equal(t, "lineworthy/window/1", doc["schema"])
	s := doc["scopes"].([]any)[0].(map[string]any)
	require.ElementsMatch(t, []string{"id", "kind", "known", "lowest", "highest", "pieces", "breakpoints", "points", "unknown", "materials", "vapour_meets_limit", "items"}, keys(s))
	for list, want := range map[string][]string{
		"pieces":      {"from_c", "to_c", "from_kpa", "to_kpa", "shape", "weakest"},
		"breakpoints": {"temperature_c", "temperature", "allowed_kpa", "allowed", "weakest"},
		"points":      {"case", "run", "cause", "temperature_c", "pressure_kpa", "text", "held", "least", "have_kpa", "margin"},
	} {
		require.Subset(t, keys(s[list].([]any)[0].(map[string]any)), want, list)
	}
}

func keys(m map[string]any) (out []string) {
	for k := range m {
		out = append(out, k)
	}
	return out
}

// Ammonia boils at 239.82 K at one atmosphere (NIST Chemistry WebBook, restated) and at 20 °C has a vapour pressure of
// 857.5 kPa absolute (Tillner-Roth and others 1993, as tabulated by NIST, restated).
func TestVapour(t *testing.T) {
	v := ofLine(t, "ammonia-lpg-hose").Vapours[0]
	require.InDelta(t, -33.33, *v.BoilsC, 0.15)
	for _, p := range v.Points {
		if p.C == 20 {
			require.InEpsilon(t, 857.5, p.KPa+101.325, 0.005)
			return
		}
	}
	require.Fail(t, "no point at 20 °C")
}

func BenchmarkWindow(b *testing.B) {
	line, err := sheet.Read("../../testdata/lines/butanone-day-tank/line.yaml")
	require.NoError(b, err)
	for b.Loop() {
		r, err := window.Of(line, catalog.Open(), units.Date{Days: 20782})
		require.NoError(b, err)
		require.NoError(b, window.PNG(io.Discard, r))
	}
}
