package batch

import (
	"encoding/json"
	"math"
)

// space passes over white space, of which mostly there is none.
func (r *reader) space() {
	if r.at < len(r.text) && r.text[r.at] <= ' ' {
		r.spaces()
	}
}

func (r *reader) spaces() {
	for r.at < len(r.text) && (r.text[r.at] == ' ' || r.text[r.at] == '\t' || r.text[r.at] == '\r' || r.text[r.at] == '\n') {
		r.at++
	}
}

func (r *reader) take(c byte) bool {
	if r.at < len(r.text) && r.text[r.at] == c {
		r.at++
		return true
	}
	return false
}

// ends are the bytes at which a string ends, or is no plain one.
var ends = func() (out [256]bool) {
	for c := range ' ' {
		out[c] = true
	}
	out['"'], out['\\'] = true, true
	return out
}()

// quoted reads a string.
func (r *reader) quoted() (string, bool) {
	if !r.take('"') {
		return "", false
	}
	rest := r.text[r.at:]
	for i := range len(rest) {
		c := rest[i]
		if !ends[c] {
			continue
		}
		start := r.at
		r.at += i
		switch c {
		case '"':
			r.at++
			return rest[:i], true
		case '\\':
			return r.escaped(start)
		}
		return "", false
	}
	return "", false
}

// escaped reads a string with backslashes, which is rare.
func (r *reader) escaped(start int) (string, bool) {
	for ; r.at < len(r.text); r.at++ {
		switch r.text[r.at] {
		case '\\':
			r.at++
		case '"':
			r.at++
			var s string
			err := json.Unmarshal([]byte(r.text[start-1:r.at]), &s)
			return s, err == nil
		}
	}
	return "", false
}

func (r *reader) answer() (value, ok bool) {
	switch rest := r.text[r.at:]; {
	case len(rest) >= 4 && rest[:4] == "true":
		r.at += 4
		return true, true
	case len(rest) >= 5 && rest[:5] == "false":
		r.at += 5
		return false, true
	}
	return false, false
}

// number reads a whole number. A fraction or exponent is not taken.
func (r *reader) number() (int64, bool) {
	minus := r.take('-')
	start, n := r.at, uint64(0)
	for ; r.at < len(r.text) && r.text[r.at] >= '0' && r.text[r.at] <= '9'; r.at++ {
		if r.at-start == 18 {
			return 0, false // near the end of 64 bits
		}
		n = 10*n + uint64(r.text[r.at]-'0')
	}
	digits := r.at - start
	if digits == 0 || digits > 1 && r.text[start] == '0' || n > math.MaxInt64 {
		return 0, false
	}
	if minus {
		return -int64(n), true
	}
	return int64(n), true
}
