package report

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// wrap sets text in lines of at most width characters (runes, so ° counts one). The first line starts with
// first, the others with rest. A word is never broken: one that is longer than the width overhangs.
func wrap(first, rest, text string, width int) []string {
	var lines []string
	line, empty := first, true
	for _, word := range words(text) {
		switch {
		case empty:
			line += word
		case runes(line)+1+runes(word) <= width:
			line += " " + word
		default:
			lines = append(lines, line)
			line = rest + word
		}
		empty = false
	}
	return append(lines, strings.TrimRight(line, " "))
}

// words splits at plain spaces only: a no-break space keeps a number and its unit together.
func words(s string) []string {
	return strings.FieldsFunc(s, func(r rune) bool { return r == ' ' })
}

func runes(s string) int { return utf8.RuneCountInString(s) }

func pad(s string, width int) string { return s + strings.Repeat(" ", max(0, width-runes(s))) }

// clean makes text from a sheet safe to print: line breaks become spaces, and control or direction marks,
// which could repaint a terminal or turn "unfit" around, become a visible mark.
func clean(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\u00a0' || r == '\u202f':
			return r
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsGraphic(r):
			return r
		}
		return '\ufffd'
	}, s)
}
