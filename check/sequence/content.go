package sequence

// Content is what stands in one stretch.
type Content struct {
	Step int    `json:"step"` // after it; one past the last for the end
	Run  string `json:"run"`
	From string `json:"from"` // what closes it towards the source
	To   string `json:"to"`
	Says string `json:"says"`
}

// shown writes down what stands in each stretch of a run that carries liquid.
func (p *play) shown(r *run) {
	if !r.liquid {
		return
	}
	for i, c := range r.cells {
		if len(c.parts) > 0 {
			from, to := r.between(i)
			p.out.Contents = append(p.out.Contents, Content{p.at, r.key, from, to, p.standing(r, c)})
		}
	}
}

// between names what bounds a cell.
func (r *run) between(i int) (from, to string) {
	from, to = "the source", "the destination"
	if r.source != nil {
		from = r.source.id
	}
	if r.to != nil {
		to = r.to.id
	}
	if i > 0 {
		from = name(r, r.devices[i-1])
	}
	if i < len(r.devices) {
		to = name(r, r.devices[i])
	}
	return from, to
}

func (p *play) stretch(r *run, i int) string {
	from, to := r.between(i)
	return from + " to " + to
}

func (p *play) standing(r *run, c *cell) string {
	open := ""
	if hose := r.parted(c); hose != "" {
		open = ", " + hose + " off"
	}
	switch {
	case c.liquid:
		return p.fluidName(c.holds) + open
	case c.blown != "" && c.wet == "":
		return "dry, blown out with " + p.fluidName(c.blown) + open
	case c.blown != "":
		return "blown out with " + p.fluidName(c.blown) + ", a film of " + p.fluidName(c.wet) + " stays" + open
	case c.wet != "":
		return "empty, wet with " + p.fluidName(c.wet) + open
	}
	return "never filled" + open
}

// fluidName is the catalog's name of a fluid of the sheet, with its role when that is not the product.
func (p *play) fluidName(key string) string {
	for _, f := range p.line.Fluids {
		if f.Key != key {
			continue
		}
		if f.Role == "flush" {
			return f.Cat.Name + " (flush)"
		}
		return f.Cat.Name
	}
	return key
}
