package units

// pipeSizes pairs DN with NPS, 1/8 to 24 (ISO 6708:1995 and ASME B36.10M-2018; recalled).
var pipeSizes = []struct {
	dn  int
	nps string
}{
	{6, "1/8"}, {8, "1/4"}, {10, "3/8"}, {15, "1/2"}, {20, "3/4"}, {25, "1"},
	{32, "1 1/4"}, {40, "1 1/2"}, {50, "2"}, {65, "2 1/2"}, {80, "3"}, {90, "3 1/2"},
	{100, "4"}, {125, "5"}, {150, "6"}, {200, "8"}, {250, "10"}, {300, "12"},
	{350, "14"}, {400, "16"}, {450, "18"}, {500, "20"}, {550, "22"}, {600, "24"},
}

// NPSOfDN is the NPS that names the same pipe as a DN, DN 6 to DN 600.
func NPSOfDN(dn int) (string, bool) {
	for _, pair := range pipeSizes {
		if pair.dn == dn {
			return pair.nps, true
		}
	}
	return "", false
}

// DNOfNPS is the DN that names the same pipe as an NPS written like "1 1/2".
func DNOfNPS(nps string) (int, bool) {
	for _, pair := range pipeSizes {
		if pair.nps == nps {
			return pair.dn, true
		}
	}
	return 0, false
}
