package measure

import "lineworthy/check/units"

// Held is one item with what it holds and what it must hold, both gauge.
type Held struct {
	ID         string
	Have, Need units.GaugePressure
}

// Weakest is the item with the least to spare; of equals the first. It is -1 for no items.
// An assembly is as strong as its weakest item (SAE J517 scope, ISO 18752 scope; published).
func Weakest(items []Held) int {
	at := -1
	for i, it := range items {
		if at < 0 || it.Have-it.Need < items[at].Have-items[at].Need {
			at = i
		}
	}
	return at
}
