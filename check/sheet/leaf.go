package sheet

import (
	"errors"
	"fmt"
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"lineworthy/check/units"
)

// leaf is a value that is read from text.
type leaf interface {
	read(text string, pos Pos, f *field) error
}

// named is one entry of a mapping whose keys the author chooses; entry gives the value to fill.
type named interface {
	entry(key string, pos Pos) any
}

func (n *Named[T]) entry(key string, pos Pos) any {
	n.Key, n.Pos = key, pos
	return &n.V
}

func (o *Of[T]) read(text string, pos Pos, f *field) error {
	how := valueTypes[reflect.TypeFor[T]()]
	if f.signed {
		how = signedLength
	}
	v, err := how.parse(strings.TrimSpace(text))
	if err != nil {
		return err
	}
	*o = Of[T]{V: v.(T), Set: true, Pos: pos, Text: text}
	return nil
}

// valueType is how one type of value is read, and an example of it for messages.
type valueType struct {
	parse   func(string) (any, error)
	example string
}

func of[T any](parse func(string) (T, error), example string) valueType {
	return valueType{func(s string) (any, error) { return parse(s) }, example}
}

// signedLength is for heights, which may lie below sea level.
var signedLength = of(units.ParseElevation, "120 m")

var valueTypes = map[reflect.Type]valueType{
	reflect.TypeFor[string]():                of(parseText, "..."),
	reflect.TypeFor[bool]():                  of(parseYes, "yes"),
	reflect.TypeFor[int]():                   of(parseWhole, "2"),
	reflect.TypeFor[float64]():               of(parseDecimal, "0.7"),
	reflect.TypeFor[units.Date]():            of(units.ParseDate, "2026-11-25"),
	reflect.TypeFor[units.Temperature]():     of(parseTemperature, "20 °C"),
	reflect.TypeFor[units.Length]():          of(units.ParseLength, "3 m"),
	reflect.TypeFor[units.Volume]():          of(units.ParseVolume, "1000 L"),
	reflect.TypeFor[units.Fraction]():        of(units.ParseFraction, "85 %"),
	reflect.TypeFor[units.Conductivity]():    of(units.ParseConductivity, "100 pS/m"),
	reflect.TypeFor[units.Pressure]():        of(units.ParsePressure, "6 bar(g)"),
	reflect.TypeFor[units.Area]():            of(units.ParseArea, "50 mm2"),
	reflect.TypeFor[units.Force]():           of(units.ParseForce, "2 kN"),
	reflect.TypeFor[units.VolumeFlow]():      of(units.ParseVolumeFlow, "3 m3/h"),
	reflect.TypeFor[units.Size]():            of(units.ParseSize, "DN 25"),
	reflect.TypeFor[units.Months]():          of(units.ParseMonths, "12 months"),
	reflect.TypeFor[units.Resistance]():      of(units.ParseResistance, "100 ohm"),
	reflect.TypeFor[units.FlowCoefficient](): of(units.ParseFlowCoefficient, "Cv 0.06"),
	reflect.TypeFor[units.Duration]():        of(units.ParseDuration, "2 s"),
}

func parseText(s string) (string, error) { return s, nil }

func parseTemperature(s string) (units.Temperature, error) {
	t, _, err := units.ParseTemperature(s)
	return t, err
}

func parseYes(s string) (bool, error) {
	switch s {
	case "yes", "true":
		return true, nil
	case "no", "false":
		return false, nil
	}
	return false, errors.New(quote(s) + " is neither yes nor no; write yes or no, in small letters")
}

var (
	wholeForm   = regexp.MustCompile(`^(0|[1-9][0-9]{0,8})$`)
	decimalForm = regexp.MustCompile(`^(0|[1-9][0-9]{0,8})(\.[0-9]{1,9})?$`)
)

func parseWhole(s string) (int, error) {
	if !wholeForm.MatchString(s) {
		return 0, fmt.Errorf("%s is not a plain whole number; write it like 2", quote(s))
	}
	return strconv.Atoi(s)
}

func parseDecimal(s string) (float64, error) {
	if !decimalForm.MatchString(s) {
		return 0, fmt.Errorf("%s is not a plain number; write it like 0.7", quote(s))
	}
	return strconv.ParseFloat(s, 64)
}
