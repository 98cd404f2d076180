package sequence

import (
	"fmt"
	"strings"
)

// total adds the steps up: first the time, then the gas of each run.
func (p *play) total() {
	gas := map[string]*Effort{}
	for _, e := range p.out.Efforts {
		if e.GasL != nil {
			gas[e.Run] = plus(gas[e.Run], e)
		}
	}
	p.time()
	for _, r := range p.runs {
		if e := gas[r.key]; e != nil {
			e.Says = e.gas()
			p.out.Total = append(p.out.Total, *e)
		}
	}
}

func (p *play) time() {
	minutes, moved, lacking := int64(0), false, []string(nil)
	for _, e := range p.out.Efforts {
		switch {
		case e.Minutes != nil:
			minutes, moved = minutes+*e.Minutes, true
		case e.GasL == nil:
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
