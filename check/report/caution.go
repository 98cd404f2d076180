package report

import "slices"

// StandingCautions are shown with every verdict, whatever the line carries.
func StandingCautions() []string {
	return []string{
		"This is a screening aid. It does not replace the manufacturer's data, local codes or the judgement of a licensed or otherwise competent person.",
		"United States federal law marked \"published\" was read in the 2015 annual edition of the code. Check the current code before you rely on it.",
	}
}

// cautions are those of the verdict and any standing one it lacks: they are never left off a report.
func cautions(v *Verdict) []string {
	out := slices.Clone(v.Cautions)
	for _, c := range StandingCautions() {
		if !slices.Contains(out, c) {
			out = append(out, c)
		}
	}
	return out
}
