package facts

// HoseOf is the class of a hose by the id of the part; empty for anything else, or when the class is not known.
func (f *Facts) HoseOf(part string) string {
	for _, h := range f.Hoses {
		if h.ID == part {
			return h.Class
		}
	}
	return ""
}
