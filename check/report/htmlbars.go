package report

// bars compare what the governing part holds with what it can see, in parts of a hundred of the larger one.
type bars struct {
	Text, Have, Need, Margin string
	HavePercent, NeedPercent int
}

func newBars(g *Governing) *bars {
	if g == nil {
		return nil
	}
	most := max(g.HaveKPa, g.NeedKPa)
	return &bars{governing(g) + ".", g.Have, g.Need, g.Margin, percent(g.HaveKPa, most), percent(g.NeedKPa, most)}
}
