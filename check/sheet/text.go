package sheet

import (
	"bytes"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// notText finds the first sign of a file that is not plain UTF-8 text.
func notText(file string, data []byte) *Problem {
	const hint = "save it as plain UTF-8 text"
	for at := 0; at < len(data); {
		r, size := utf8.DecodeRune(data[at:])
		switch {
		case r == utf8.RuneError && size == 1:
			return faultAt(file, data, at, "not a text file: its bytes are not UTF-8", hint)
		case r == 0:
			return faultAt(file, data, at, "not a text file: it holds a NUL byte", hint)
		case hidden(r):
			return faultAt(file, data, at, fmt.Sprintf("the hidden control character U+%04X", r), "delete it")
		}
		at += size
	}
	return nil
}

// hidden says whether a character could change what a terminal or page shows: control characters,
// line breaks only YAML knows, and the marks that turn the direction of writing.
func hidden(r rune) bool {
	switch {
	case r == '\n', r == '\t', r == '\r':
		return false
	case r >= 0x202A && r <= 0x202E, r >= 0x2066 && r <= 0x2069, r == 0x2028, r == 0x2029, r == 0xFEFF:
		return true
	}
	return unicode.IsControl(r)
}

// faultAt is a problem at a byte of the file.
func faultAt(file string, data []byte, offset int, text, hint string) *Problem {
	before := data[:offset]
	start := bytes.LastIndexByte(before, '\n') + 1
	return &Problem{File: file, Line: bytes.Count(before, []byte("\n")) + 1,
		Col: utf8.RuneCount(before[start:]) + 1, Text: text, Hint: hint}
}

// shown makes typed text safe for one line of a message: short, and without hidden characters.
func shown(s string) string {
	const longest = 60
	s = strings.Map(func(r rune) rune {
		if hidden(r) || unicode.IsSpace(r) {
			return ' '
		}
		return r
	}, s)
	if r := []rune(s); len(r) > longest {
		return string(r[:longest]) + "..."
	}
	return s
}

func quote(s string) string { return `"` + shown(s) + `"` }
