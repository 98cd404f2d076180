package report

import (
	"strings"
	"unicode"
)

// symbols are drawn within 40 by 20. They follow the usual signs of flow diagrams (ISO 10628-2, recalled); the word of the
// kind stands in every box, so that nobody has to know them.
var symbols = map[string]string{
	"from":        "M8 17V6Q8 2 14 2H26Q32 2 32 6V17ZM8 10H32",
	"to":          "M8 17V6Q8 2 14 2H26Q32 2 32 6V17ZM8 10H32",
	"hose":        "M0 12C5 2 10 2 15 10S25 18 30 10S37 4 40 8",
	"pipe":        "M0 7H40M0 13H40",
	"fitting":     "M2 13H38M20 13V3M14 3H26",
	"valve":       "M8 4V18L32 4V18ZM20 11V2M15 2H25",
	"regulator":   "M8 8V20L32 8V20ZM20 14V8M13 8A7 7 0 0 1 27 8Z",
	"relief":      "M20 12L13 20H27ZM20 12L28 6V18ZM20 12V1M16 8L24 6M16 5L24 3",
	"check-valve": "M8 4V18M8 4L32 18V4M8 18L14 14",
	"excess-flow": "M4 11H34M28 6L34 11L28 16M37 4V18M12 4L8 18",
	"strainer":    "M8 3H32V18H8ZM12 18L28 3",
	"gauge":       "M30 10A10 10 0 1 1 10 10A10 10 0 0 1 30 10ZM20 10L26 5",
	"pump":        "M30 10A10 10 0 1 1 10 10A10 10 0 0 1 30 10ZM15 2L30 10L15 18",
	"coupling":    "M2 11H16M16 4V18M24 4V18M24 11H38",
	"breakaway":   "M2 11H14M14 4V18M26 4V18M26 11H38M18 18L22 4",
	"nozzle":      "M4 4H16L36 9V13L16 18H4Z",
	"closure":     "M4 11H26M26 3V19M31 5V17",
	"weight":      "M12 18L15 7H25L28 18ZM17 7A3 3 0 1 1 23 7",
}

func symbol(kind string) string {
	if path, ok := symbols[kind]; ok {
		return path
	}
	return "M8 3H32V18H8Z"
}

const (
	labelWide = 150 // tenths of a usual letter that fit a box
	labelHigh = 2
)

// breadth is about how wide a name is set in bold, in tenths of a usual letter.
func breadth(s string) int {
	sum := 0
	for _, r := range s {
		switch {
		case strings.ContainsRune("MWmw@%", r):
			sum += 18
		case r >= 0x1100: // the first script that is set twice as wide
			sum += 20
		case unicode.IsUpper(r):
			sum += 13
		default:
			sum += 10
		}
	}
	return sum
}

// labelLines is a name in at most two lines; the list in words has all of it.
func labelLines(name string) []string {
	var lines []string
	for _, word := range words(strings.ReplaceAll(name, "-", "- ")) {
		last := len(lines) - 1
		if last >= 0 && breadth(lines[last]+" "+word) <= labelWide {
			lines[last] += joint(lines[last]) + word
			continue
		}
		lines = append(lines, word)
	}
	if len(lines) > labelHigh {
		lines = append(lines[:labelHigh-1], lines[labelHigh-1]+"…")
	}
	for i := range lines {
		lines[i] = clipped(lines[i])
	}
	return lines
}

// joint is nothing behind a hyphen, which was no space before.
func joint(line string) string {
	if strings.HasSuffix(line, "-") {
		return ""
	}
	return " "
}

func clipped(s string) string {
	r := []rune(strings.TrimSuffix(s, "…"))
	if string(r) == s && breadth(s) <= labelWide {
		return s
	}
	for len(r) > 0 && breadth(string(r))+10 > labelWide {
		r = r[:len(r)-1]
	}
	return string(r) + "…"
}
