package catalog_test

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

// What people type on a drum tag or a purchase order. One meaning resolves, several are refused with the choices,
// none is never something else. The names are trade usage (practice, no source).
func TestEverydayNamesResolve(t *testing.T) {
	for _, test := range []struct{ kind, name, id string }{
		{catalog.Fluids, "acetone", "acetone"},
		{catalog.Fluids, "Acetone ", "acetone"},
		{catalog.Fluids, "MEK", "butanone"},
		{catalog.Fluids, "IPA", "propan-2-ol"},
		{catalog.Fluids, "isopropanol", "propan-2-ol"},
		{catalog.Fluids, "caustic soda", "sodium-hydroxide"},
		{catalog.Fluids, "NaOH", "sodium-hydroxide"},
		{catalog.Fluids, "caustic potash", "potassium-hydroxide"},
		{catalog.Fluids, "bleach", "sodium-hypochlorite"},
		{catalog.Fluids, "muriatic acid", "hydrochloric-acid"},
		{catalog.Fluids, "hydrochloric acid", "hydrochloric-acid"},
		{catalog.Fluids, "vegetable oil", "vegetable-oil"},
		{catalog.Fluids, "LNG", "lng"},
		{catalog.Fluids, "LOX", "liquid-oxygen"},
		{catalog.Fluids, "LIN", "liquid-nitrogen"},
		{catalog.Fluids, "DMF", "dimethylformamide"},
		{catalog.Fluids, "THF", "tetrahydrofuran"},
		{catalog.Fluids, "methylene chloride", "dichloromethane"},
		{catalog.Fluids, "DCM", "dichloromethane"},
		{catalog.Fluids, "petrol", ""},
		{catalog.Fluids, "gasoline", ""},
		{catalog.Fluids, "diesel", "diesel"},
		{catalog.Fluids, "kerosene", "jet-fuel"},
		{catalog.Fluids, "styrene monomer", "styrene"},
		{catalog.Fluids, "VCM", "vinyl-chloride"},
		{catalog.Fluids, "EO", "ethylene-oxide"},
		{catalog.Fluids, "MMA", "methyl-methacrylate"},
		{catalog.Fluids, "white spirit", ""},
		{catalog.Materials, "nitrile", "NBR"},
		{catalog.Materials, "natural rubber", "NR"},
		{catalog.Materials, "EPDM", "EPDM"},
		{catalog.Materials, "silicone", "VMQ"},
		{catalog.Materials, "316L", "S31603"},
		{catalog.Materials, "1.4571", ""},
		{catalog.Materials, "galvanized steel", "ZN-STEEL"},
		{catalog.Materials, "PTFE", "PTFE"},
		{catalog.Hoses, "EN12115 SD", "en-12115-sd"},
		{catalog.Hoses, "EN 12115 SD", "en-12115-sd"},
		{catalog.Hoses, "EN 12115-SD", "en-12115-sd"},
		{catalog.Connections, "ASME B16.5", "flange-asme-b16-5"},
		{catalog.Connections, "ANSI flange", "flange-asme-b16-5"},
		{catalog.Connections, "BSPP", "thread-g"},
	} {
		id, err := shipped.ID(test.kind, test.name)
		if test.id == "" {
			assert.Error(t, err, "%s must not be taken for %s", test.name, id)
			continue
		}
		if assert.NoError(t, err, test.name) {
			assert.Equal(t, test.id, id, test.name)
		}
	}
}

func TestEverydayNamesOfSeveralAreRefused(t *testing.T) {
	for _, test := range []struct {
		kind, name string
		choices    []string
	}{
		{catalog.Fluids, "caustic", []string{"potassium-hydroxide", "sodium-hydroxide"}},
		{catalog.Fluids, "LPG", []string{"butane", "isobutane", "propane"}},
		{catalog.Fluids, "alcohol", []string{"ethanol", "methanol", "propan-2-ol"}},
		{catalog.Fluids, "MEA", []string{"ethanolamine", "ethylamine"}},
		{catalog.Fluids, "lye", []string{"potassium-hydroxide", "sodium-hydroxide"}},
		{catalog.Materials, "wire braid", []string{"BRAID-AUS", "STEEL-WIRE"}},
		{catalog.Fluids, "nitric acid", []string{"nitric-acid-30", "nitric-acid-60-70", "nitric-acid-anhydrous", "nitric-acid-fuming"}},
		{catalog.Fluids, "peroxide", []string{"hydrogen-peroxide-100", "hydrogen-peroxide-35-50", "hydrogen-peroxide-70"}},
		{catalog.Fluids, "butanol", []string{"butan-1-ol", "butan-2-ol", "isobutanol", "tert-butanol"}},
		{catalog.Fluids, "propanol", []string{"propan-1-ol", "propan-2-ol"}},
		{catalog.Fluids, "glycol", []string{"diethylene-glycol", "ethylene-glycol", "propylene-glycol", "triethylene-glycol"}},
		{catalog.Fluids, "ACN", []string{"acetonitrile", "acrylonitrile"}},
		{catalog.Fluids, "TCE", []string{"1-1-1-trichloroethane", "trichloroethene"}},
		{catalog.Fluids, "HF", []string{"hydrofluoric-acid", "hydrogen-fluoride"}},
		{catalog.Fluids, "HCl", []string{"hydrochloric-acid", "hydrogen-chloride"}},
		{catalog.Materials, "stainless 316", []string{"S31600", "S31603"}},
		{catalog.Materials, "stainless", []string{"S30400", "S30403", "S31600", "S31603", "S32100"}},
		{catalog.Materials, "fluoro rubber", []string{"FKM-1", "FKM-2", "FKM-3"}},
		{catalog.Materials, "brass", []string{"C36000", "C37700"}},
		{catalog.Materials, "PVC", []string{"PVC-P", "PVC-U"}},
		{catalog.Materials, "nylon", []string{"PA11", "PA12", "PA6", "PA66"}},
		{catalog.Hoses, "EN 12115", []string{"en-12115-d", "en-12115-sd"}},
		{catalog.Connections, "cam and groove", []string{"cam-groove-aa-59326", "cam-groove-en-14420-7"}},
	} {
		id, err := shipped.ID(test.kind, test.name)
		var several *catalog.Ambiguous
		if assert.True(t, errors.As(err, &several), "%s is taken for %s (%v)", test.name, id, err) {
			assert.Equal(t, test.choices, several.Choices, test.name)
		}
	}
}

// A slip of the finger suggests; it never resolves.
func TestMisspeltNamesSuggest(t *testing.T) {
	for typed, want := range map[string]string{"acetnoe": "acetone", "amonia": "ammonia", "tolune": "toluene", "propan": "propane",
		"metanol": "methanol", "cholrine": "chlorine", "caustik soda": "sodium-hydroxide"} {
		_, err := shipped.ID(catalog.Fluids, typed)
		var missing *catalog.NotFound
		require.True(t, errors.As(err, &missing), typed)
		assert.Contains(t, missing.Nearest, want, typed)
		found := shipped.Search(typed)
		require.NotEmpty(t, found, typed)
		assert.NotEqual(t, catalog.Exact, found[0].Rank, typed)
	}
}
