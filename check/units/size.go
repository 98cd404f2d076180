package units

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

// Size is a nominal size as typed. It is one of: a DN, an NPS, a dash number, or a bore
// in mm or inches. DN and NPS name a pipe and not a measured bore, so their Bore is 0.
type Size struct {
	Text string // canonical, in the terms it was typed in
	DN   int    // 0 if not typed as DN
	NPS  string // like "1 1/2"; empty if not typed as NPS
	Dash int    // sixteenths of an inch of bore; 0 if not typed as a dash number
	Bore Length // of dash, mm and inch sizes; 0 for DN and NPS
}

const (
	largestDN   = 4000
	largestDash = 96
	largestBore = Length(4)
)

var (
	dnForm   = regexp.MustCompile(`(?i)^DN ?([0-9]{1,4})$`)
	dnLead   = regexp.MustCompile(`(?i)^DN`)
	npsForm  = regexp.MustCompile(`(?i)^NPS ?(.+)$`)
	dashForm = regexp.MustCompile(`(?i)^(?:dash ?-? ?|-)([0-9]{1,2})$`)
	bareForm = regexp.MustCompile(`^[0-9. /-]+$`)
)

// ParseSize reads "DN 25", "NPS 1 1/2", "-16", "25 mm" or "1 1/2 in". A bare number is refused,
// and so are an NPS that is not made, and bores above 4 m.
func ParseSize(s string) (Size, error) {
	text := tidy(s)
	if m := dnForm.FindStringSubmatch(text); m != nil {
		return sizeOfDN(s, m[1])
	}
	if dnLead.MatchString(text) {
		return Size{}, fmt.Errorf("%s is not a DN: write a whole number after it, like DN 25, or the bore in mm", quote(s))
	}
	if m := npsForm.FindStringSubmatch(text); m != nil {
		return sizeOfNPS(s, m[1])
	}
	if m := dashForm.FindStringSubmatch(text); m != nil {
		return sizeOfDash(s, m[1])
	}
	if bareForm.MatchString(text) {
		return Size{}, fmt.Errorf("%s does not say which kind of size: write DN %[2]s, NPS %[2]s, %[2]s in or %[2]s mm", quote(s), strings.TrimLeft(text, "-"))
	}
	return sizeOfBore(s)
}

func sizeOfDN(s, number string) (Size, error) {
	dn, _ := strconv.Atoi(number)
	if dn < 1 || dn > largestDN {
		return Size{}, fmt.Errorf("%s is outside DN 1 to DN %d", quote(s), largestDN)
	}
	return Size{Text: fmt.Sprintf("DN %d", dn), DN: dn}, nil
}

func sizeOfNPS(s, number string) (Size, error) {
	inches, rest, found, err := leadingFraction(number)
	if err == nil && !found {
		inches, rest, err = splitNumber(number, "NPS 1 1/2")
	}
	if err != nil {
		return Size{}, fmt.Errorf("%s: %w", quote(s), err)
	}
	nps := fractionText(inches)
	if _, made := DNOfNPS(nps); !made || rest != "" {
		return Size{}, fmt.Errorf("%s is not a known NPS (known: %s)", quote(s), knownNPS())
	}
	return Size{Text: "NPS " + nps, NPS: nps}, nil
}

func knownNPS() string {
	var names []string
	for _, pair := range pipeSizes {
		names = append(names, pair.nps)
	}
	return strings.Join(names, ", ")
}

// sizeOfDash reads sixteenths of the bore. Some hose series count the bore of the tube
// they replace instead; their catalog rows must give the bore.
func sizeOfDash(s, number string) (Size, error) {
	dash, _ := strconv.Atoi(number)
	if dash < 1 || dash > largestDash {
		return Size{}, fmt.Errorf("%s is outside dash -1 to -%d", quote(s), largestDash)
	}
	return Size{Text: fmt.Sprintf("-%d", dash), Dash: dash, Bore: Length(dash) * inchM / 16}, nil
}

func sizeOfBore(s string) (Size, error) {
	m, unit, err := readLength(s, &lengths)
	if err != nil {
		return Size{}, fmt.Errorf("not a size (write DN 25, NPS 1, -16, 25 mm or 1 in): %w", err)
	}
	bore := Length(m)
	if bore <= 0 || bore > largestBore {
		return Size{}, fmt.Errorf("%s is outside 0 to 4 m, which a bore must be", quote(s))
	}
	if unit.name == "in" || unit.name == "ft" {
		return Size{Text: fractionText(m/inchM) + " in", Bore: bore}, nil
	}
	return Size{Text: digits(m*1000, 9, 1) + " mm", Bore: bore}, nil
}
