package check

// Number prints one integer of a finding by the unit its name ends in, e.g. have_kpa.
func (s Shown) Number(key string, n int64) string { return s.p.number(key, n) }
