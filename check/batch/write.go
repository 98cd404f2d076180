package batch

import (
	"encoding/json"
	"slices"
	"strconv"
	"unicode/utf8"

	"lineworthy/check/decide"
)

// appendBrief writes the answer on one line: {"at":...,"line":...,"verdict":...,"findings":[...],"missing":[...]}. A finding
// has its rule and severity, and then what the rule reports, under the names that the rule gives it.
func appendBrief(b []byte, at, line string, x decide.Brief, severity map[string]string) []byte {
	b = appendString(append(b, `{"at":`...), at)
	b = appendString(append(b, `,"line":`...), line)
	b = appendString(append(b, `,"verdict":`...), x.Word)
	b = append(b, `,"findings":[`...)
	for i, f := range x.Findings {
		if i > 0 {
			b = append(b, ',')
		}
		b = appendFinding(b, f, severity[f.Rule])
	}
	b = append(b, `],"missing":[`...)
	for i, m := range x.Missing {
		if i > 0 {
			b = append(b, ',')
		}
		b = appendString(append(b, `{"subject":`...), m.Subject)
		b = appendString(append(b, `,"fact":`...), m.Fact)
		b = appendString(append(b, `,"why":`...), m.Why)
		b = append(appendString(append(b, `,"ask":`...), m.Ask), '}')
	}
	return append(b, `]}`...)
}

func appendFinding(b []byte, f decide.Finding, severity string) []byte {
	b = appendString(append(b, `{"rule":`...), f.Rule)
	b = appendString(append(b, `,"severity":`...), severity)
	b = appendString(append(b, `,"subject":`...), f.Subject)
	if f.Part != "" {
		b = appendString(append(b, `,"part":`...), f.Part)
	}
	if f.Case != "" {
		b = appendString(append(b, `,"case":`...), f.Case)
	}
	var room [8]string // for the keys of nearly every finding
	for _, k := range sorted(room[:0], f.Numbers) {
		b = strconv.AppendInt(append(appendString(append(b, ','), k), ':'), f.Numbers[k], 10)
	}
	for _, k := range sorted(room[:0], f.Words) {
		b = appendString(append(appendString(append(b, ','), k), ':'), f.Words[k])
	}
	return append(b, '}')
}

func sorted[V any](keys []string, m map[string]V) []string {
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// appendBroken writes a line that could not be judged: {"at":...,"error":...}.
func appendBroken(b []byte, at string, err error) []byte {
	b = appendString(append(b, `{"at":`...), at)
	return append(appendString(append(b, `,"error":`...), err.Error()), '}')
}

// appendString writes a JSON string; only rare ones need the encoder.
func appendString(b []byte, s string) []byte {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c == '"' || c == '\\' || c >= utf8.RuneSelf {
			return appendRare(b, s)
		}
	}
	return append(append(append(b, '"'), s...), '"')
}

func appendRare(b []byte, s string) []byte {
	text, err := json.Marshal(s)
	if err != nil {
		panic(err) // no string is no JSON
	}
	return append(b, text...)
}
