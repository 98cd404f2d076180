package sheet

import "testing"

func TestText(t *testing.T) {
	checkFaults(t, []faultCase{
		{"NUL", "T-1", "T\x00", []string{
			"1:8: not a text file: it holds a NUL byte; save it as plain UTF-8 text",
		}},
		{"latin1", "T-1", "T\xb0", []string{
			"1:8: not a text file: its bytes are not UTF-8; save it as plain UTF-8 text",
		}},
		{"escape", "T-1", "T\x1b[2J", []string{
			"1:8: the hidden control character U+001B; delete it",
		}},
		{"bidi", "T-1", "T\u202e1", []string{
			"1:8: the hidden control character U+202E; delete it",
		}},
	})
}
