package sequence

import (
	"fmt"
	"slices"
	"strings"
)

// total adds the steps up: first the time, then the gas of each run.
func (p *play) total() {
	gas, lacking := map[string]*Effort{}, map[string][]string{}
	for _, e := range p.out.Efforts {
		switch {
		case e.GasL != nil:
			gas[e.Run] = plus(gas[e.Run], e)
		case e.ofGas:
			lacking[e.Run] = append(lacking[e.Run], fmt.Sprintf("step %d: %s", e.Step, e.Says))
		}
	}
	p.time()
	for _, r := range p.runs {
		e, says := Effort{Run: r.key}, lacking[r.key]
		if known := gas[r.key]; known != nil {
			e, says = *known, slices.Insert(says, 0, known.gas())
		}
		if e.Says = strings.Join(says, "; "); e.Says != "" {
			p.out.Total = append(p.out.Total, e)
		}
	}
}

func (p *play) time() {
	minutes, moved, lacking := int64(0), false, []string(nil)
	for _, e := range p.out.Efforts {
		switch {
		case e.Minutes != nil:
			minutes, moved = minutes+*e.Minutes, true
		case e.GasL == nil && !e.ofGas:
			lacking = append(lacking, fmt.Sprintf("step %d: %s", e.Step, e.Says))
		}
	}
	word := "about"
	if len(lacking) > 0 {
		word = "at least"
	}
	if moved {
		says := fmt.Sprintf("%s %d min of moving liquid, without the work between", word, minutes)
		lacking = append([]string{says}, lacking...)
	}
	if len(lacking) > 0 {
		t := Effort{Says: strings.Join(lacking, "; ")}
		if moved {
			t.Minutes = &minutes
		}
		p.out.Total = append(p.out.Total, t)
	}
}

func plus(a *Effort, e Effort) *Effort {
	if a == nil {
		return &Effort{Run: e.Run, GasL: e.GasL, Cylinders: e.Cylinders}
	}
	l := *a.GasL + *e.GasL
	a.GasL = &l
	if a.Cylinders != nil && e.Cylinders != nil {
		n := *a.Cylinders + *e.Cylinders
		a.Cylinders = &n
	}
	return a
}
