package oracle

import (
	"encoding/json"
	"strconv"
	"unicode/utf8"
)

// append writes the answer as lineworthy batch does.
func (l *line) append(b []byte, at string) []byte {
	b = text(append(b, `{"at":`...), at)
	b = text(append(b, `,"line":`...), l.Line.ID)
	b = text(append(b, `,"verdict":`...), l.verdict())
	b = append(b, `,"findings":[`...)
	for i, x := range l.found {
		if i > 0 {
			b = append(b, ',')
		}
		b = x.append(b)
	}
	b = append(b, `],"missing":[`...)
	for i, m := range l.missing {
		if i > 0 {
			b = append(b, ',')
		}
		b = text(append(b, `{"subject":`...), m.Subject)
		b = text(append(b, `,"fact":`...), m.Fact)
		b = text(append(b, `,"why":`...), m.Why)
		b = append(text(append(b, `,"ask":`...), m.Ask), '}')
	}
	return append(b, "]}"...)
}

func (x finding) append(b []byte) []byte {
	b = text(append(b, `{"rule":`...), x.rule.id)
	b = text(append(b, `,"severity":`...), x.rule.rank.String())
	b = text(append(b, `,"subject":`...), x.subject)
	if x.part != "" {
		b = text(append(b, `,"part":`...), x.part)
	}
	if x.kase != "" {
		b = text(append(b, `,"case":`...), x.kase)
	}
	for _, f := range x.figures {
		b = append(text(append(b, ','), f.key), ':')
		if f.isWord {
			b = text(b, f.word)
		} else {
			b = strconv.AppendInt(b, f.number, 10)
		}
	}
	return append(b, '}')
}

// text is a word of JSON. Plain ones need no encoder.
func text(b []byte, s string) []byte {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c == '"' || c == '\\' || c >= utf8.RuneSelf {
			quoted, err := json.Marshal(s)
			if err != nil {
				panic(err) // every string is JSON
			}
			return append(b, quoted...)
		}
	}
	return append(append(append(b, '"'), s...), '"')
}
