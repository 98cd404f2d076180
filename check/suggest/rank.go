package suggest

import (
	"cmp"
	"slices"

	"lineworthy/check/report"
)

// worse orders verdict words from the one to be wished for.
var worse = []report.Word{report.Fit, report.Conditional, report.Unproven, report.Unfit}

func wordRank(w report.Word) int { return slices.Index(worse, w) }

// compare puts the better sheet first: by the verdict and how much stands against it, then by the worst margin, then by
// how little is changed, then by how well the values are known that it rests on. The rest only makes the order definite.
func compare(a, b *trial) int {
	return cmp.Or(
		cmp.Compare(wordRank(a.verdict.Word), wordRank(b.verdict.Word)),
		cmp.Compare(count(a.faults, "", "stop"), count(b.faults, "", "stop")),
		cmp.Compare(count(a.faults, "", "unknown"), count(b.faults, "", "unknown")),
		cmp.Compare(margin(b.verdict), margin(a.verdict)),
		cmp.Compare(replaced(a.changes), replaced(b.changes)),
		cmp.Compare(count(a.faults, "", "condition"), count(b.faults, "", "condition")),
		cmp.Compare(doubt(a.verdict), doubt(b.verdict)),
		cmp.Compare(cost(a.changes), cost(b.changes)),
		cmp.Compare(string(a.text), string(b.text)),
	)
}

// margin is the worst margin in kPa of all that holds pressure.
func margin(v *report.Verdict) int64 {
	if v.Governing == nil {
		return -1 << 40
	}
	return v.Governing.HaveKPa - v.Governing.NeedKPa
}

// doubt weighs the values to confirm: one without a document more than one from memory of a document, and that more than
// one that somebody has to state.
func doubt(v *report.Verdict) (n int) {
	for _, c := range v.Confirm {
		switch c.Standing {
		case "practice":
			n += 3
		case "recalled":
			n += 2
		default:
			n++
		}
	}
	return n
}

func cost(cs []change) (n int) {
	for _, c := range cs {
		n += c.cost + len(c.needs)
	}
	return n
}

// at compares two sheets that differ in one spot: by what stands against that spot first.
func at(spot string) func(a, b *trial) int {
	return func(a, b *trial) int {
		return cmp.Or(
			cmp.Compare(count(a.faults, spot, "stop"), count(b.faults, spot, "stop")),
			cmp.Compare(count(a.faults, spot, "unknown"), count(b.faults, spot, "unknown")),
			cmp.Compare(count(a.faults, "", "stop"), count(b.faults, "", "stop")),
			cmp.Compare(count(a.faults, "", "unknown"), count(b.faults, "", "unknown")),
			cmp.Compare(count(a.faults, spot, "condition"), count(b.faults, spot, "condition")),
			cmp.Compare(cost(a.changes), cost(b.changes)),
			cmp.Compare(margin(b.verdict), margin(a.verdict)),
			cmp.Compare(doubt(a.verdict), doubt(b.verdict)),
			cmp.Compare(string(a.text), string(b.text)),
		)
	}
}

// sound drops sheets without a verdict and sorts the rest.
func sound(ts []*trial, by func(a, b *trial) int) []*trial {
	ts = slices.DeleteFunc(slices.Clone(ts), func(t *trial) bool { return t.err != nil || t.verdict == nil })
	slices.SortStableFunc(ts, by)
	return ts
}
