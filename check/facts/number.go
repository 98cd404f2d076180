package facts

import (
	"encoding/json"
	"errors"
)

// Int is an integer that may be unknown. The zero Int is unknown, so a forgotten field is never a number.
type Int struct {
	V     int64
	Known bool
}

// Bool is a yes or no that may be unknown.
type Bool struct {
	V     bool
	Known bool
}

// Know returns a known integer.
func Know(v int64) Int { return Int{v, true} }

// Yes returns a known answer.
func Yes(v bool) Bool { return Bool{v, true} }

// IsZero lets the JSON encoder leave an unknown number out.
func (i Int) IsZero() bool { return !i.Known }

// IsZero lets the JSON encoder leave an unknown answer out.
func (b Bool) IsZero() bool { return !b.Known }

// MarshalJSON writes the bare number.
func (i Int) MarshalJSON() ([]byte, error) { return json.Marshal(i.V) }

// MarshalJSON writes the bare answer.
func (b Bool) MarshalJSON() ([]byte, error) { return json.Marshal(b.V) }

// UnmarshalJSON reads a bare integer; a quoted number, a fraction or null is refused, because Rego orders strings above numbers.
func (i *Int) UnmarshalJSON(data []byte) error {
	if err := refuseNull(data); err != nil {
		return err
	}
	i.Known = true
	return json.Unmarshal(data, &i.V)
}

// UnmarshalJSON reads a bare true or false.
func (b *Bool) UnmarshalJSON(data []byte) error {
	if err := refuseNull(data); err != nil {
		return err
	}
	b.Known = true
	return json.Unmarshal(data, &b.V)
}

// refuseNull keeps null from becoming a known zero.
func refuseNull(data []byte) error {
	if string(data) == "null" {
		return errors.New("null is not a fact: leave the key out if it is unknown")
	}
	return nil
}
