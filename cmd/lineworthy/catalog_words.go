package main

import (
	"math"
	"strconv"
	"strings"

	"lineworthy/catalog"
)

// standingWords say how a value is known, for a person.
var standingWords = map[catalog.Standing]string{
	catalog.Site:      "site evidence",
	catalog.Published: "read in the document",
	catalog.Restated:  "read second hand",
	catalog.Computed:  "computed",
	catalog.Recalled:  "recalled",
	catalog.Practice:  "common practice, no source",
}

// sureWords say how sure the figure is, given its standing.
var sureWords = map[string]string{"high": "quite sure", "medium": "fairly sure", "low": "unsure"}

// viaWords say how the document itself was reached.
var viaWords = map[string]string{
	"law":      "the law was read",
	"abstract": "its scope or summary was read",
	"excerpt":  "part of it was read",
	"report":   "the report was read",
	"restated": "read in someone else's rendering",
	"dataset":  "read as an open data set",
	"memory":   "recalled, not looked up",
	"":         "not said how it was reached",
}

// number prints a figure without needless digits, thousands apart; only what is very large or small has an exponent.
func number(v float64) string {
	switch size := math.Abs(v); {
	case size >= 1e12 || size < 1e-4 && size > 0:
		return strconv.FormatFloat(v, 'g', 6, 64)
	case size >= 1e6:
		return apart(strconv.FormatFloat(v, 'f', 0, 64), "")
	}
	whole, rest, _ := strings.Cut(strconv.FormatFloat(v, 'g', 6, 64), ".")
	return apart(whole, rest)
}

// apart sets thousands apart from 10 000 on.
func apart(whole, rest string) string {
	if len(strings.TrimPrefix(whole, "-")) > 4 {
		for i := len(whole) - 3; i > 0 && whole[i-1] != '-'; i -= 3 {
			whole = whole[:i] + " " + whole[i:]
		}
	}
	if rest == "" {
		return whole
	}
	return whole + "." + rest
}

func celsius(v float64) string { return number(v) + " °C" }

// kelvin shows a temperature of the equations as a person knows it too.
func kelvin(v float64) string {
	return number(v) + " K (" + strconv.FormatFloat(v-273.15, 'f', 1, 64) + " °C)"
}

func barGauge(v float64) string { return number(v) + " bar gauge" }

func yes(v bool) string {
	if v {
		return "yes"
	}
	return "no"
}

// pageWidth is where running text is broken.
const pageWidth = 88

// folded breaks running text into lines.
func folded(text string) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" && len([]rune(line))+1+len([]rune(word)) > pageWidth {
			lines, line = append(lines, line), ""
		}
		if line != "" {
			line += " "
		}
		line += word
	}
	return append(lines, line)
}
