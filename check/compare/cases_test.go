package compare_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestCases: on each investigated accident and its corrected twin exactly the change is named, and exactly the findings
// of the accident clear. What the accidents were is in the reports the lines name: NTSB HAZ-12-01-SUM, CSB January 2018,
// CSB 2008-02-I-IA.
func TestCases(t *testing.T) {
	for name, want := range map[string]struct {
		design, records []string
		because         []string
		findings        map[string][]string
	}{
		"ammonia-lpg-hose": {
			[]string{"hose H1 class: us-lpg-350 > us-ammonia-350", "hose H1 layers.reinforcement: PET-FIBRE > BRAID-AUS"},
			[]string{
				"the line line: AM-01 > AM-01-C", "hose H1 tag: TRAILER-7-A > TRAILER-3-B",
				"hose H1 marks: LPG, 350 psi, maker's name, 2024 > ANHYDROUS AMMONIA, 350 psi, maker's name, 2024",
				"hose H1 specified_for: propane, butane > ammonia",
			},
			[]string{"class", "material"},
			map[string][]string{
				"clears": {
					"identity/hose_not_the_assigned_one", "material/reinforcement_attacked_through_liner", "service/hose_not_for_ammonia",
				},
				"stays": {"service/passive_shutoff_acts_on_separation_only"},
			},
		},
		"acid-into-hypochlorite": {
			[]string{
				"the line safeguards.remote_stop: no > yes",
				"point fill of hypochlorite-tank standard: cam-groove-en-14420-7 > tank-truck-en-14420-6",
				"point fill of hypochlorite-tank padlocked: no > yes", "run liquid to.vessel: hypochlorite-tank > acid-tank",
				"added point in reach, fill of hypochlorite-tank", "removed point in reach, fill of acid-tank",
			},
			[]string{
				"the line line: AC-02 > AC-02-C",
				"the line title: Sulfuric acid from a road tanker, hose put on the hypochlorite point > Sulfuric acid from a road tanker to the acid tank",
				"point fill of hypochlorite-tank marked: none > sodium hypochlorite", "point fill of acid-tank marked: none > sulfuric acid 30 %",
			},
			[]string{"safeguard", "connection", "run"},
			map[string][]string{"clears": {
				"identity/point_holds_another_fluid", "isolation/no_remote_or_automatic_stop", "isolation/same_coupling_in_reach",
				"marking/point_unmarked_among_others", "marking/point_unmarked_among_others",
			}},
		},
		"ethyl-acetate-tote": {
			[]string{
				"point top of tote entry: splash > dip-pipe", "hose H1 size: -16 > DN 25", "hose H1 rated: 50 bar(g) > 10 bar(g)",
				"hose H1 highest: 80 °C > 65 °C", "hose H1 bonded: no > yes", "hose H1 class: sae-100r14b > en-12115-sd",
				"hose H1 edition:  > 2021", "hose H1 layers.reinforcement: S30403 > PET-FIBRE", "hose H1 layers.cover:  > EPDM",
				"hose H1 burst: 200 bar(g) > 40 bar(g)", "hose H1 electrical: M > M/T", "nozzle N1 bonded: no > yes", "weight W1 bonded: no > yes",
			},
			nil, nil, // the papers of another hose are in the list below
			map[string][]string{"clears": {
				"service/outside_hose_class", "static/isolated_conductor_at_open_point", "static/isolated_conductor_at_open_point",
				"static/isolated_conductor_at_open_point", "static/splash_filling",
			}},
		},
	} {
		t.Run(name, func(t *testing.T) {
			r := review(t, text(t, name), text(t, name+"-corrected"))
			design, records := told(r)
			assert.Equal(t, want.design, design)
			if want.records != nil {
				assert.Equal(t, want.records, records)
				assert.Equal(t, want.because, r.Kind.Because)
			}
			assert.Equal(t, want.findings, went(r))
			assert.Equal(t, "not in kind", r.Kind.Answer)
			assert.Equal(t, []string{"unfit", "conditional"}, []string{string(r.Old.Word), string(r.New.Word)})
			assert.Empty(t, r.Worse)
		})
	}
}
