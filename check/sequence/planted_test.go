package sequence_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// planted is every planted fault with all that it brings along. The order rules are practice, but for those whose source the fault
// itself names: 29 CFR 1910.111(b)(9)(ix), 49 CFR 174.67(h), 49 CFR 177.837(b), ASTM G88.
var planted = map[string][]string{
	"pump/blocked_in":          {sequence.BlockedIn},
	"pump/pump_against_closed": {sequence.DeadPump, sequence.DryPump},
	"pump/overfill":            {sequence.Overfill, sequence.RunDry},
	"pump/no_way":              {sequence.NoWay},
	"flush/not_flushed":        {sequence.NotFlushed},
	"flush/into_source":        {sequence.FlushIntoSource, sequence.NotFlushed},
	"flush/astray":             {sequence.FlushAstray},
	"flush/product_to_drain":   {sequence.BlockedIn, sequence.FlushedProduct},
	"flush/too_small":          {sequence.FlushShort},
	"flush/flush_left":         {sequence.FlushLeft},
	"flush/no_way_out":         {sequence.NoWay},
	"reacts/water_on_acid":     {sequence.FlushReacts},
	"reacts/water_after_gas":   {sequence.FlushReacts},
	"reacts/acid_on_water":     {sequence.FlushReacts},
	"closed/no_gas":            {sequence.Vacuum},
	"closed/gas_shut_early":    {sequence.Vacuum},
	"closed/emptied":           {sequence.RunDry},
	"pad/regulator_left":       {sequence.RegulatorLeft},
	"pad/source_left":          {sequence.SourceLeft},
	"pad/set_too_high":         {sequence.SetTooHigh},
	"pump/reverse_start":       {sequence.ReverseOrder},
	"pump/reverse_stop":        {sequence.ReverseOrder, sequence.BlockedIn},
	"pump/not_connected":       {sequence.NotConnected, sequence.OpenBack},
	"pump/with_liquid":         {sequence.BlockedIn, sequence.WithLiquid},
	"pump/open_end":            {sequence.OpenEnd},
	"pad/not_bonded":           {sequence.ConnectedUnbound},
	"pad/under_pressure":       {sequence.UnderPressure},
	"pad/backflow":             {sequence.Backflow, sequence.Stalls},
	"pad/pad_left":             {sequence.PadLeft, sequence.GasLeft},
	"pad/stalls":               {sequence.Stalls},
	"return/return_shut":       {sequence.Squeezed, sequence.Backflow},
	"oxygen/quick_cylinder":    {sequence.QuickOxygen},
	"pump/dry_start":           {sequence.DryPump},
	"pump/dry_stop":            {sequence.DryPump},
	"pump/opened_after":        {sequence.OpenBack},
	"pad/set_early":            {sequence.SetEarly},
	"pad/gas_left":             {sequence.GasLeft},
	"pad/connected_late":       {sequence.NotConnected},
	"pad/blown_through":        {sequence.RunDry},
	"pad/vented_full":          {sequence.VentsLiquid, sequence.VentedLive},
	"oxygen/quick_regulator":   {sequence.SetEarly, sequence.QuickOxygen},
	"toxic/into_the_open":      {sequence.VentsToxic},
	"oxygen/regulator_alone":   {sequence.SourceLeft, sequence.GasLeft},
	"toxic/full_hose":          {sequence.VentsLiquid},
	"oxygen/vented_live":       {sequence.VentedLive, sequence.GasLeft},
}

func TestPlanted(t *testing.T) {
	require.Len(t, planted, 45)
	for name, want := range planted {
		t.Run(name, func(t *testing.T) {
			require.ElementsMatch(t, want, names(played(t, name)))
			require.Empty(t, played(t, name+"_corrected").Faults)
			require.Empty(t, played(t, name+"_corrected").Open)
		})
	}
}

func played(t *testing.T, name string) *sequence.Outcome {
	t.Helper()
	path := filepath.Join("../../testdata/sequences", name+".yaml")
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	s, err := sequence.Read(text)
	require.NoError(t, err)
	out, err := model(t, filepath.Join(filepath.Dir(path), "line.yaml")).Play(s.Steps)
	require.NoError(t, err)
	return out
}

func names(o *sequence.Outcome) []string {
	out := []string{}
	for _, f := range o.Faults {
		out = append(out, f.Name)
	}
	return out
}
