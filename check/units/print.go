package units

import (
	"math"
	"strconv"
	"strings"
)

// digits prints v to most significant digits, never cutting whole digits away, and
// drops trailing zeros until least significant digits are left.
func digits(v float64, most, least int) string {
	if v == 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return strconv.FormatFloat(math.Abs(v), 'f', least-1, 64)
	}
	size := int(math.Floor(math.Log10(math.Abs(v))))
	if size < -4 || size > 8 {
		return strconv.FormatFloat(v, 'g', most, 64)
	}
	text := strconv.FormatFloat(v, 'f', max(0, most-1-size), 64)
	return dropZeros(text, max(0, least-1-size))
}

// dropZeros takes trailing zeros off a decimal, leaving at least keep decimals.
func dropZeros(text string, keep int) string {
	point := strings.IndexByte(text, '.')
	if point < 0 {
		return text
	}
	end := len(text)
	for end > point+1+keep && text[end-1] == '0' {
		end--
	}
	return strings.TrimSuffix(text[:end], ".")
}
