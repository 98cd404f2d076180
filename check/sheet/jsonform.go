package sheet

import (
	"reflect"
	"strings"
	"unicode"

	"lineworthy/check/units"
)

// jsonForm says in which JSON types a value can come out of a YAML file, and what its text looks like. The patterns are
// looser than the reader: they must never refuse what it takes.
type jsonForm struct {
	types   []string
	pattern string
}

const (
	someText = `\S`
	fullDate = `^\s*[0-9]{4}-[0-9]{2}-[0-9]{2}\s*$`
	anyDate  = `^\s*[0-9]{4}-[0-9]{2}(-[0-9]{2})?\s*$`
	// quantity starts like a number, or a fraction of an inch, and goes on with a unit.
	quantity = `^\s*[-+−–‑]?[0-9.½¼¾⅛⅜⅝⅞].*[A-Za-zµμΩ%‰"'″”“′’°].*$`
	size     = `^\s*([dD][nN] ?[0-9]{1,4}|[nN][pP][sS] ?\S.*|-[0-9]{1,2}|[dD][aA][sS][hH].*[0-9]|[0-9.½¼¾⅛⅜⅝⅞].*[A-Za-z"'″”“′’].*)\s*$`
)

// leafForms are the forms of every type of value. A date is text to every YAML reader that follows the JSON schema.
var leafForms = map[reflect.Type]jsonForm{
	reflect.TypeFor[string]():                {[]string{"string", "number", "boolean"}, someText},
	reflect.TypeFor[bool]():                  {[]string{"boolean", "string"}, ""},
	reflect.TypeFor[int]():                   {[]string{"integer", "string"}, `^\s*(0|[1-9][0-9]{0,8})\s*$`},
	reflect.TypeFor[float64]():               {[]string{"number", "string"}, `^\s*(0|[1-9][0-9]{0,8})(\.[0-9]{1,9})?\s*$`},
	reflect.TypeFor[units.Date]():            {[]string{"string"}, anyDate},
	reflect.TypeFor[units.Temperature]():     {[]string{"string"}, `^\s*` + plainNumber + `\s*([°º˚℃℉]|[dD][eE][gG])?.*[CcFfKkSsTtNn℃℉]\s*$`},
	reflect.TypeFor[units.Length]():          {[]string{"string"}, quantity},
	reflect.TypeFor[units.Volume]():          {[]string{"string"}, quantity},
	reflect.TypeFor[units.Fraction]():        {[]string{"string", "number"}, `^\s*` + plainNumber + `.*$`},
	reflect.TypeFor[units.Conductivity]():    {[]string{"string"}, quantity},
	reflect.TypeFor[units.Pressure]():        {[]string{"string"}, pressurePattern()},
	reflect.TypeFor[units.Area]():            {[]string{"string"}, quantity},
	reflect.TypeFor[units.VolumeFlow]():      {[]string{"string"}, quantity},
	reflect.TypeFor[units.Size]():            {[]string{"string"}, size},
	reflect.TypeFor[units.Months]():          {[]string{"string"}, quantity},
	reflect.TypeFor[units.Resistance]():      {[]string{"string"}, quantity},
	reflect.TypeFor[units.FlowCoefficient](): {[]string{"string"}, `^.*[CcKk][vV].*$`},
	reflect.TypeFor[units.Duration]():        {[]string{"string"}, quantity},
	reflect.TypeFor[units.Force]():           {[]string{"string"}, quantity},
}

// plainNumber is a decimal number; text processors turn its sign into a dash.
const plainNumber = `[-+−–‑]?([0-9]+\.?[0-9]*|\.[0-9]+)([eE][-+]?[0-9]+)?`

// pressureStems are the units of pressure without the mark that says from where it counts.
var pressureStems = []string{
	"bar", "psi", "lbf/in2", "lb/in2", "kpa", "mpa", "n/mm2", "kgf/cm2", "kg/cm2", "kp/cm2", "mbar", "hpa", "pa", "ksi", "atm",
	"inh2o", "mmh2o", "inhg", "mmhg",
}

// pressurePattern wants a unit of pressure with its mark, gauge or absolute: without it the sheet says nothing.
func pressurePattern() string {
	var stems []string
	for _, s := range pressureStems {
		stems = append(stems, anyCase(s))
	}
	marks := `[-_, ]*[(\[]?\s*(` + anyCase("absolute") + "|" + anyCase("gauge") + "|" + anyCase("gage") + "|" + anyCase("abs") + `|[gGaA])\s*[)\]]?`
	return `^\s*` + plainNumber + `\s*(` + strings.Join(stems, "|") + `)` + marks + `\s*$`
}

// anyCase matches a word in capitals and small letters, with what a unit may hold between them and raised figures.
func anyCase(word string) string {
	var b strings.Builder
	for i, r := range word {
		if i > 0 {
			b.WriteString(`[ .·⋅*^]*`)
		}
		switch {
		case unicode.IsLetter(r):
			b.WriteString("[" + string(r) + string(unicode.ToUpper(r)) + "]")
		case r == '2':
			b.WriteString("[2²]")
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}
