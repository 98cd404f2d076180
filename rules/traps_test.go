package rules

import (
	"context"
	"maps"
	"slices"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

type object = map[string]any

// judge says which rules find something in made-up facts: law is the regime the sheet names.
func judge(t *testing.T) func(law string, given object) []string {
	t.Helper()
	modules, err := read(here)
	require.NoError(t, err)
	c, err := compile(modules, false)
	require.NoError(t, err)
	q, err := rego.New(rego.Query("found := data.verdict.findings"), rego.Compiler(c), rego.SetRegoVersion(ast.RegoV1)).
		PrepareForEval(context.Background())
	require.NoError(t, err)
	return func(law string, given object) []string {
		in := object{"line": object{"regimes": []string{law}}}
		maps.Copy(in, given)
		rs, err := q.Eval(context.Background(), rego.EvalInput(in))
		require.NoError(t, err)
		var out []string
		for area, faults := range rs[0].Bindings["found"].(object) {
			for fault := range faults.(object) {
				out = append(out, area+"/"+fault)
			}
		}
		return slices.Sorted(slices.Values(out))
	}
}

func hose(more object) object {
	h := object{
		"id": "H1", "run": "r", "medium": "liquid", "assigned_stated": true, "life_stated": true, "marks_stated": true, "edition_matters": false, "carries_oxygen": false,
		"carries_ammonia": false, "carries_lpg": false, "carries_gas": false, "carries_flammable": false, "carries_liquefied_gas": false,
		"carries_toxic": false, "alloy_on_paper_only": false, "defects": []string{},
	}
	maps.Copy(h, more)
	return object{"hoses": []object{h}}
}

func demand(kpa int, given object) object {
	given["capacities"] = []object{{"id": "c", "part": "H1", "what": "hose", "case": "duty", "is_hose": true, "demand_kpa": kpa, "rated_kpa": 5000}}
	return given
}

// TestTraps are ten things that are commonly said of these laws and are not what the text says. CFR 2015 annual edition
// (published), paragraph beside each.
func TestTraps(t *testing.T) {
	found := judge(t)
	ammonia, lpg, oil, gas, road := "29 CFR 1910.111", "29 CFR 1910.110", "33 CFR 154.500", "33 CFR 127.1102", "49 CFR 178.337-9"

	t.Run("ammonia relief has no set pressure in law, (b)(9)(ix)", func(t *testing.T) {
		section := func(more object) object {
			s := object{"id": "s", "run": "r", "from": "V1", "to": "V2", "liquid": true, "has_hose": true, "carries_ammonia": true, "carries_lpg": false, "relieved": true, "drained": false, "warmed": true, "weakest": "H1"}
			maps.Copy(s, more)
			return object{"sections": []object{s}}
		}
		for _, set := range []int{100, 2413, 2757, 9000} { // 350 and 400 psig are no limits
			assert.NotContains(t, found(ammonia, section(object{"relief_set_kpa": set})), "expansion/ammonia_section_without_relief")
		}
		assert.Contains(t, found(ammonia, section(object{"relieved": false})), "expansion/ammonia_section_without_relief")
	})
	t.Run("125 psig is a burst pressure of low-side hose, no working pressure, (b)(8)(iii)", func(t *testing.T) {
		h := hose(object{"carries_ammonia": true, "marked_ammonia": true, "rated_kpa": 862, "burst_kpa": 12065})
		assert.Contains(t, found(ammonia, h), "pressure/below_ammonia_law", "862 kPa is 125 psig and not enough as working pressure")
		h = hose(object{"carries_ammonia": true, "marked_ammonia": true, "rated_kpa": 172, "burst_kpa": 861, "low_side": true, "low_side_relief_kpa": 172})
		assert.Empty(t, found(ammonia, h), "125 psig of burst are enough behind a regulator whose relief device opens at 25")
	})
	t.Run("120 % is for new and repaired road hose, 180.416(e)-(f)", func(t *testing.T) {
		h := hose(object{"carries_liquefied_gas": true, "rated_kpa": 2413, "test_pressure_kpa": 2413, "marked_pressure": true, "days_since_test": 90, "test_interval_days": 365, "days_since_inspection": 0})
		assert.Empty(t, found("49 CFR 180.416", merge(h, object{"line": object{"regimes": []string{"49 CFR 180.416"}, "as_of_day": 20000}})))
	})
	t.Run("no fixed 600 and 150 psi in 154.500", func(t *testing.T) {
		h := object{"rated_kpa": 500, "burst_kpa": 1600, "marked_pressure": true, "marked_year": true}
		assert.NotContains(t, found(oil, demand(400, hose(h))), "pressure/burst_below_marine_law")
		h["burst_kpa"] = 1594 // below four times 400 kPa by more than rounding can hide
		assert.Contains(t, found(oil, demand(400, hose(h))), "pressure/burst_below_marine_law")
		given := demand(5000, hose(h))
		assert.Contains(t, found(oil, given), "pressure/not_above_demand_by_marine_law", "equal is not above")
	})
	t.Run("not always five to one", func(t *testing.T) {
		h := object{"carries_liquefied_gas": true, "medium": "liquid", "rated_kpa": 2000, "burst_kpa": 8000, "burst_ratio_permille": 4000}
		assert.Empty(t, found(road, demand(2000, hose(h))), "178.337-9(b)(1): four")
		assert.Contains(t, found(gas, hose(h)), "pressure/burst_ratio_below_waterfront_gas_law", "127.1102(a): five")
	})
	t.Run("LP-gas law asks for burst 1250 psig, not for 350 and 1750, (b)(9)(iii)", func(t *testing.T) {
		h := object{"carries_lpg": true, "marked_lpg": true, "rated_kpa": 1500, "burst_kpa": 8618}
		assert.Empty(t, found(lpg, hose(h)))
		h["burst_kpa"] = 8617
		assert.Equal(t, []string{"pressure/burst_below_lpg_law"}, found(lpg, hose(h)))
	})
	t.Run("the coupling is stronger than the hose, 178.337-9(b)(3)", func(t *testing.T) {
		given := hose(object{"rated_kpa": 1000})
		given["capacities"] = []object{{"id": "H1 inlet", "part": "H1", "what": "end", "is_hose": false, "rated_kpa": 1000}}
		assert.Contains(t, found(road, given), "pressure/hose_end_below_road_gas_law", "the same rating is not enough")
	})
	t.Run("an excess-flow valve is no emergency stop, (b)(6)(iii)", func(t *testing.T) {
		x := object{"id": "XF1", "run": "r", "credited": true, "bypass_stated": true, "closing_flow_mlps": 3000, "broken_flow_mlps": 3000}
		assert.Contains(t, found(ammonia, object{"excess_flows": []object{x}}), "isolation/excess_flow_never_closes", "as much is not more")
		x["broken_flow_mlps"] = 3001
		assert.NotContains(t, found(ammonia, object{"excess_flows": []object{x}}), "isolation/excess_flow_never_closes")
	})
	t.Run("no relief device on a zone A cylinder, 173.301(f)(6)", func(t *testing.T) {
		r := object{"id": "RV", "run": "", "on_vessel": true, "zone_a_cylinder": true, "weakest": "", "weakest_is_hose": false, "on_lpg_liquid": false, "isolatable_stated": true}
		assert.Contains(t, found("49 CFR 173.301", object{"reliefs": []object{r}}), "relief/on_zone_a_cylinder")
		r["zone_a_cylinder"] = false
		assert.NotContains(t, found("49 CFR 173.301", object{"reliefs": []object{r}}), "relief/on_zone_a_cylinder")
	})
	t.Run("a passive shut-off is blind to a split, 173.315(n)(2)", func(t *testing.T) {
		given := object{
			"parts": []object{{"id": "XF", "run": "r", "kind": "breakaway", "acts_on_separation_only": true, "carries_flammable": false, "carries_oxygen": false, "at_open_point": false}},
			"line":  object{"regimes": []string{}, "passive_shutoff": true, "hazard_in_reach": true, "remote_stop": false, "automatic_stop": false},
		}
		assert.Equal(t, []string{"isolation/no_remote_or_automatic_stop", "service/passive_shutoff_acts_on_separation_only"}, found("", given), "it does not count as a stop")
	})
}

func merge(a, b object) object {
	out := maps.Clone(a)
	maps.Copy(out, b)
	return out
}
