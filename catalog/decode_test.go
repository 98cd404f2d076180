package catalog

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestDecodeFaults(t *testing.T) {
	for _, test := range []struct{ name, text, want string }{
		{"unknown key", "id: x\nname: X\nstandrad: STD\n", "catalog hoses/x.yaml:3: unknown key \"standrad\"; nearest: standard; all keys here: also, "},
		{"unknown key below", "id: x\nrating: {bar: 1, standing: practice, clase: 2}\n", "catalog hoses/x.yaml:2: unknown key \"clase\"; nearest: clause; all keys here: bar, "},
		{"unknown key in a list", "id: x\nlayers:\n  - {roll: liner}\n", "catalog hoses/x.yaml:3: unknown key \"roll\"; nearest: role; "},
		{"wrong type", "id: x\n\nrating: {bar: much}\n", "catalog hoses/x.yaml:3: cannot unmarshal !!str `much` into float64"},
		{"two faults", "id: x\nfoo: 1\nbaz: 2\n", "catalog hoses/x.yaml:3: unknown key \"baz\""},
		{"twice", "id: x\nid: x\n", "catalog hoses/x.yaml:2: mapping key \"id\" already defined at line 1"},
		{"no yaml", "id: x\nname: [\n", "catalog hoses/x.yaml:"},
		{"empty", "", "catalog hoses/x.yaml: the file is empty"},
		{"two documents", "id: x\n---\nid: x\n", "catalog hoses/x.yaml: want one YAML document in the file, found more"},
		{"other id", "# first\nid: y\n", "catalog hoses/x.yaml:2: id is \"y\", but the file name says \"x\": make them equal"},
		{"no id", "name: X\n", "catalog hoses/x.yaml: id is \"\", but the file name says \"x\": make them equal"},
		{"a list", "- 1\n", "catalog hoses/x.yaml:1: cannot unmarshal !!seq into Hose"},
	} {
		err := decode("hoses/x.yaml", []byte(test.text), new(Hose))
		assert.ErrorContains(t, err, test.want, test.name)
	}
}

func TestDecodeFluidKeepsLineNumbers(t *testing.T) {
	text := "id: x\ncompatibility:\n  metals:\n    - {m: S31600}\nhazards:\n  flamable: {value: true}\n"
	err := decode("fluids/x.yaml", []byte(text), new(Fluid))
	assert.ErrorContains(t, err, "catalog fluids/x.yaml:6: unknown key \"flamable\"; nearest: flammable")
}

func TestKeysOfUnknownType(t *testing.T) {
	assert.Nil(t, keysOf(shapes[Hoses], "Nothing"))
}
